import { afterAll, beforeAll, expect, test } from 'vitest'
import { discard, newFolder, type ServedNursery, serveNursery } from '../../test/served-nursery.ts'
import type { BenchStand, LineageView, MotherView, OrderRow, ShownEntry } from '../api/index.ts'
import { exampleRegisters } from '../record/example-registers.ts'
import { historyOfNursery } from '../record/fold/random-history.ts'
import type { Body, Entry } from '../record/index.ts'
import { type EntryId, inEnglish } from '../trade/index.ts'

const licence = { owner: 'a breeder', treesPerYear: 100, until: null, feePerTree: 1.5 }
const licensed = exampleRegisters.map(entry =>
  entry.body.kind === 'cultivar-set/1' ? { ...entry, body: licensedCultivar(entry.body) } : entry,
)
function licensedCultivar(body: Extract<Body, { kind: 'cultivar-set/1' }>): typeof body {
  return { ...body, cultivar: { ...body.cultivar, licence } } as typeof body
}
const entries = [...licensed, ...historyOfNursery(11, 400).map(entry => ({ ...entry, by: 'p1' }) as Entry)]
const byId = new Map<string, Entry>(entries.map(entry => [entry.id, entry]))

let folder: string
let nursery: ServedNursery
beforeAll(async () => {
  folder = newFolder()
  nursery = await serveNursery(folder, '2026-05-19', entries)
})
afterAll(async () => {
  await nursery.close()
  discard(folder)
})

const ask = async <T>(path: string): Promise<T> => (await nursery.ask(path)).json
const shown = async (ids: readonly string[]): Promise<ShownEntry[]> => {
  const { json } = await nursery.ask('/api/entries/shown', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ ids }),
  })
  return json
}
/** What the entries say went out of the nursery, less what came back. */
const sentIn = (ids: readonly EntryId[]): number =>
  ids.reduce((sum, id) => {
    const { body } = byId.get(id)!
    return sum + (body.kind === 'dispatched/1' ? body.number : body.kind === 'returned/1' ? -body.number : 0)
  }, 0)

test('entries asked for by their ids say who said what and when, in the order in which it happened', async () => {
  const asked = entries.slice(-9).map(({ id }) => id)
  const list = await shown([...asked].reverse())
  expect(new Set(list.map(({ id }) => id))).toEqual(new Set(asked))
  expect(list.map(({ on }) => on)).toEqual(list.map(({ on }) => on).sort())
  for (const { id, on, by, says } of list) {
    expect({ on, by }).toEqual({ on: byId.get(id)!.on, by: 'p1' })
    expect(inEnglish(says)).toMatch(/\w/)
  }
  expect(await shown(['01a00000-0000-7000-8000-00000000dead'])).toEqual([])
})

test('the trees sent for an order add up from the entries behind them', async () => {
  const orders = await ask<OrderRow[]>('/api/orders')
  expect(orders.some(({ dispatched }) => dispatched !== 0)).toBe(true)
  for (const { order, dispatched, sentBy, entries: all } of orders) {
    expect(sentIn(sentBy), order.id).toBe(dispatched)
    for (const id of sentBy) expect(all).toContain(id)
    expect(all.map(id => byId.get(id)!.body.kind)).toContain('order-placed/1')
  }
})

test('the trees begun and sent in a year of a licence add up from the entries behind them', async () => {
  const licences = (
    await Promise.all(
      [...nursery.memory.nursery().mothers.keys()].map(id => ask<MotherView>(`/api/mothers/${id}`)),
    )
  ).flatMap(view => view.licence ?? [])
  const years = licences.flatMap(row => row.years)
  expect(years.some(({ begun, sent }) => begun > 0 && sent !== 0)).toBe(true)
  for (const { begun, begunBy, sent, sentBy } of years) {
    const number = (id: EntryId) => (byId.get(id)!.body as { readonly number: number }).number
    expect(begunBy.reduce((sum, id) => sum + number(id), 0)).toBe(begun)
    expect(sentIn(sentBy)).toBe(sent)
  }
})

test('what stands on a bench names the entries that it comes from, each of that batch', async () => {
  const lines = (
    await Promise.all(
      [...nursery.memory.nursery().benches.keys()].map(id => ask<BenchStand>(`/api/benches/${id}`)),
    )
  ).flatMap(stand => stand.lines)
  expect(lines.length).toBeGreaterThan(3)
  for (const { batch, behind } of lines) {
    expect(behind.length).toBeGreaterThan(0)
    const own = new Set<string>(nursery.memory.nursery().batches.get(batch)!.entries)
    for (const id of behind) expect(own.has(id)).toBe(true)
  }
})

test('each link of a family adds up from the entries behind it', async () => {
  let links = 0
  for (const id of nursery.memory.nursery().batches.keys()) {
    const view = await ask<LineageView>(`/api/lineage/batch/${id}`)
    for (const { from, to, as, number, on, entries: behind } of view.links) {
      links += 1
      const said = behind.map(entry => byId.get(entry)!)
      expect(said.map(entry => entry.on).sort()[0]).toBe(on)
      const numbers = said.map(({ body }) =>
        'sources' in body
          ? body.sources.reduce(
              (sum, source) =>
                source.from === from.what && Object.values(source).includes(from.id) && partOf(source) === as
                  ? sum + source.number
                  : sum,
              0,
            )
          : (body as { readonly number: number }).number,
      )
      expect(
        numbers.reduce((a, b) => a + b, 0),
        `${from.id} → ${to.id} ${as}`,
      ).toBe(number)
    }
  }
  expect(links).toBeGreaterThan(20)
})

type Source = Extract<Body, { readonly sources: unknown }>['sources'][number]
const partOf = (source: Source): string =>
  source.from === 'batch' ? source.as : source.from === 'lot' ? 'lot' : source.material
