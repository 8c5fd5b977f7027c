import { afterAll, beforeAll, expect, test } from 'vitest'
import { nurseryWithFewOrders } from '../../test/few-orders.ts'
import {
  discard,
  entryOf,
  newFolder,
  type ServedNursery,
  serveNursery,
  until,
} from '../../test/served-nursery.ts'
import type {
  BatchView,
  HoldRow,
  MotherRow,
  MotherView,
  OrderRow,
  PlanState,
  QueryRow,
  WorkList,
} from '../api/index.ts'
import { AffectedView } from '../api/index.ts'
import type { Plan } from '../planning/index.ts'
import { type BatchId, inEnglish, MotherId, OrderId } from '../trade/index.ts'

/**
 * One worked outbreak, from the laboratory's answer to the season planned anew: the mother tree Red Ledger 1 of the
 * invented nursery tests positive. Names and numbers are the demo's; that all of it agrees is what is tested.
 */
const TODAY = '2026-05-19'
const mother = MotherId.parse('M26')

let folder: string
let nursery: ServedNursery
let firstPlan: Plan
beforeAll(async () => {
  folder = newFolder()
  nursery = await serveNursery(folder, TODAY, nurseryWithFewOrders(TODAY, 1))
})
afterAll(async () => {
  await nursery.close()
  discard(folder)
})

const ask = async <T>(path: string): Promise<T> => {
  const { status, json } = await nursery.ask(path)
  expect(status, path).toBe(200)
  return json
}
const affected = async () => AffectedView.parse(await ask(`/api/lineage/mother/${mother}/affected`))
const table = async (name: string): Promise<string[][]> => {
  const answer = await nursery.app.request(`http://localhost/api/lineage/mother/${mother}/${name}`)
  expect(answer.headers.get('content-disposition')).toContain(name)
  const text = await answer.text()
  return text
    .replace(/^\uFEFF/, '')
    .trimEnd()
    .split('\r\n')
    .map(line => [...line.matchAll(/(?:"([^"]*)"|([^,]*))(?:,|$)/g)].map(cell => cell[1] ?? cell[2] ?? ''))
}
const column = (rows: readonly string[][], name: string): string[] => {
  const at = rows[0]!.indexOf(name)
  expect(at, name).toBeGreaterThanOrEqual(0)
  return rows.slice(1).map(row => row[at]!)
}
const sum = (numbers: Iterable<number>) => [...numbers].reduce((a, b) => a + b, 0)

async function planned(): Promise<Plan> {
  await nursery.ask('/api/plan', { method: 'POST' })
  const { job } = await until<PlanState>(
    'the end of the planning job',
    () => ask('/api/plan'),
    state => state.job?.state !== 'running',
  )
  expect(job?.state).toBe('done')
  return nursery.plans.latest()!
}

test('before anything is found, the season is planned with her wood and her trees', async () => {
  firstPlan = await planned()
  const { carriers, letters } = await affected()
  expect(carriers.some(({ onHold }) => onHold)).toBe(false)
  expect(letters.some(({ promised }) => promised > 0)).toBe(true)
})

test('the laboratory’s answer stands on the tree, with its number and how long it holds', async () => {
  const tested = entryOf({
    kind: 'mother-tested/1',
    mother,
    test: 'pomegranate decline',
    result: 'positive',
    laboratory: 'Laboratory of the Upper Ford',
    reference: 'UF-4711',
    validUntil: null,
  })
  await nursery.push([tested])
  const view: MotherView = await ask(`/api/mothers/${mother}`)
  expect(view.tests).toEqual([
    {
      entry: tested.id,
      on: TODAY,
      test: 'pomegranate decline',
      result: 'positive',
      laboratory: 'Laboratory of the Upper Ford',
      reference: 'UF-4711',
      validUntil: null,
      isOver: false,
    },
  ])
  expect(view.row.lastTest).toMatchObject({ result: 'positive' })
})

test('the trace finds every batch with her wood, where it stands, what went out, and apart from it what stood beside it', async () => {
  const { carriers, letters, sharedBenches } = await affected()
  const state = nursery.memory.nursery()
  /** The long way: a batch carries her wood if she, or a batch that carries it, is among its sources. */
  const carry = new Set<string>()
  for (let size = -1; size !== carry.size; ) {
    size = carry.size
    for (const batch of state.batches.values())
      if (batch.origins.some(({ id }) => id === mother || carry.has(id))) carry.add(batch.id)
  }
  expect(carry.size).toBeGreaterThan(5)
  expect(new Set(carriers.map(({ batch }) => batch as string))).toEqual(carry)
  for (const { batch, alive, finished, sent, benches } of carriers) {
    const own = state.batches.get(batch)!
    expect(alive).toBe(own.finished + sum(own.portions.map(({ number }) => number)))
    expect(finished).toBe(own.finished)
    expect(sent).toBe(sum(own.dispatched.map(({ number }) => number)))
    expect(alive === 0).toBe(benches.length === 0)
  }
  expect(sum(letters.map(({ sent }) => sent))).toBe(sum(carriers.map(({ sent }) => sent)))
  expect(sharedBenches.length).toBeGreaterThan(0)
  expect(sharedBenches.filter(({ batch }) => carry.has(batch))).toEqual([])
})

test('the letters name each order that has, is promised or waits for her trees, and each buyer who had them without one', async () => {
  const { carriers, letters } = await affected()
  const alive = new Set(carriers.filter(one => one.alive > 0).map(({ batch }) => batch as string))
  const promised = firstPlan.orders.filter(({ ladders }) =>
    ladders.some(({ batch }) => alive.has(batch ?? '')),
  )
  expect(promised.length).toBeGreaterThan(0)
  for (const { order } of promised) {
    const letter = letters.find(one => one.order === order)!
    expect(letter.promised).toBeGreaterThan(0)
    expect(letter.buyer).toBe(nursery.memory.nursery().orders.get(order)!.order.buyer)
  }
  const asksForHers = [...nursery.memory.nursery().orders.values()].filter(
    ({ order }) => order.kind === 'pomegranate-red-ledger',
  )
  expect(letters.flatMap(({ order }) => order ?? []).sort()).toEqual(asksForHers.map(({ order }) => order.id))
  expect(letters.some(({ order, sent }) => order === null && sent > 0)).toBe(true)

  const rows = await table('letters.csv')
  expect(rows).toHaveLength(letters.length + 1)
  expect(column(rows, 'buyer')).toEqual(letters.map(({ buyer }) => buyer))
  expect(sum(column(rows, 'sent out').map(Number))).toBe(sum(letters.map(({ sent }) => sent)))
})

test('the authority’s table has a line for each passing of her wood, with the name that follows from it', async () => {
  const rows = await table('family.csv')
  const { carriers } = await affected()
  expect(column(rows, 'way').every(way => way === 'came of it')).toBe(true)
  expect(new Set(column(rows, 'to name'))).toEqual(new Set(carriers.map(({ name }) => name)))
  expect(column(rows, 'from name')).toContain('Red Ledger 1')
  expect(column(rows, 'identity').every(identity => identity !== '')).toBe(true)
})

let hold: HoldRow
test('one hold on her whole lineage stops her and all of it, on every screen, with its reason', async () => {
  await nursery.push([
    entryOf({
      kind: 'hold-placed/1',
      on: { what: 'lineage', of: { mother } },
      why: 'decline found, UF-4711',
    }),
  ])
  const { carriers, holds } = await affected()
  expect(carriers.every(({ onHold }) => onHold)).toBe(true)
  expect(holds).toMatchObject([{ what: 'lineage', of: { id: mother }, why: 'decline found, UF-4711' }])
  hold = holds[0]!
  const mothers: MotherRow[] = await ask('/api/mothers')
  expect(mothers.filter(({ onHold }) => onHold).map(row => row.mother.id)).toEqual([mother])
  const batch = carriers.find(({ alive }) => alive > 0)!.batch
  const view: BatchView = await ask(`/api/batches/${batch}`)
  expect(view.row.onHold).toBe(true)
  expect(view.holds).toMatchObject([{ id: hold.id }])
})

test('the work list of the plan made before says that a hold stops sending out trees of which none is free', async () => {
  const leaves = firstPlan.tasks.filter(task => task.kindOfTask === 'dispatch')
  expect(leaves.length).toBeGreaterThan(0)
  for (const { id, week, kind } of leaves) {
    const list: WorkList = await ask(`/api/work?week=${week}`)
    expect(list.stopped.includes(id)).toBe(kind === 'pomegranate-red-ledger')
  }
})

test('the season planned anew leaves out all that is held: no tree of it is promised or sent, no wood of hers is taken', async () => {
  const { carriers } = await affected()
  const carry = new Set<BatchId | null>(carriers.map(({ batch }) => batch))
  const plan = await planned()
  expect(plan.id).not.toBe(firstPlan.id)
  expect(plan.orders.flatMap(({ ladders }) => ladders).filter(({ batch }) => carry.has(batch))).toEqual([])
  expect(plan.starts.filter(start => start.mothers.some(one => one.mother === mother))).toEqual([])
  expect(plan.tasks.filter(task => task.kindOfTask === 'dispatch' && carry.has(task.batch))).toEqual([])
  const orders: OrderRow[] = await ask('/api/orders')
  const before = new Map(firstPlan.orders.map(({ order, chance }) => [order, chance]))
  const hers = orders.filter(({ order }) => order.kind === 'pomegranate-red-ledger')
  for (const { order, chance } of hers) expect(chance!).toBeLessThanOrEqual(before.get(order.id)!)
  const { letters } = await affected()
  for (const { order, isWaiting } of letters) expect(isWaiting).toBe(order !== null)
})

test('what is sent out all the same is kept, and asked about, what was entered last first', async () => {
  const { carriers } = await affected()
  const { batch } =
    carriers.find(({ finished }) => finished >= 3) ?? carriers.find(({ alive }) => alive >= 3)!
  await nursery.push([
    entryOf({ kind: 'dispatched/1', batch, order: OrderId.parse('O-001'), number: 3, to: '' }),
  ])
  const queries: QueryRow[] = await ask('/api/queries')
  const days = queries.map(({ raisedBy }) => raisedBy?.on ?? '')
  expect(new Set(days).size).toBeGreaterThan(1)
  expect(days).toEqual([...days].sort().reverse())
  expect(
    queries
      .filter(query => query.batch === batch)
      .map(({ says }) => inEnglish(says))
      .join(),
  ).toMatch(/sent out 3 on 2026-05-19, while a hold of 2026-05-19 stood \(decline found, UF-4711\)/)
  const letter = (await affected()).letters.find(({ order }) => order === 'O-001')
  expect(letter).toMatchObject({ sent: 3, lastSent: TODAY })
})

test('released with a reason, everything goes on, and the hold stays in the history', async () => {
  await nursery.push([entryOf({ kind: 'hold-released/1', hold: hold.id, why: 'second sample clean' })])
  expect((await affected()).carriers.some(({ onHold }) => onHold)).toBe(false)
  const holds: HoldRow[] = await ask('/api/holds')
  expect(holds.find(({ id }) => id === hold.id)?.released).toMatchObject({ why: 'second sample clean' })
})
