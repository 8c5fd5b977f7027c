import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { discard, entryOf, newFolder, type ServedNursery, serveNursery } from '../../test/served-nursery.ts'
import { AcceptedReading, BroughtRow, EmptySheet, Reading, TakenBack } from '../api/index.ts'
import { restoreLog } from '../store/index.ts'
import { OrderId } from '../trade/index.ts'

let folder: string
let nursery: ServedNursery
beforeAll(async () => {
  folder = newFolder()
  nursery = await serveNursery(folder, '2026-11-24')
})
afterAll(async () => {
  await nursery.close()
  discard(folder)
})

const fixture = (path: string): File => {
  const bytes = readFileSync(new URL(`../exchange/fixtures/${path}`, import.meta.url))
  return new File([new Uint8Array(bytes)], path.split('/').at(-1)!)
}
const send = (files: readonly File[], mapping?: object) => {
  const form = new FormData()
  for (const file of files) form.append('files', file)
  if (mapping) form.append('mapping', JSON.stringify(mapping))
  return nursery.ask('/api/exchange/read', { method: 'POST', body: form })
}
const post = (path: string, body: object) =>
  nursery.ask(path, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  })
const download = async (path: string) => {
  const answer = await nursery.app.request(`http://localhost${path}`)
  return { status: answer.status, headers: answer.headers, bytes: new Uint8Array(await answer.arrayBuffer()) }
}
const lines = (bytes: Uint8Array) => new TextDecoder().decode(bytes).trimEnd().split('\n')

test('files are read and shown, nothing is written, and only accepting writes, once', async () => {
  const reading = Reading.parse((await send([fixture('english/nursery.xlsx')])).json)
  expect(reading.ready).toBe(true)
  expect(nursery.memory.throughSeq()).toBe(0)

  const accepted = AcceptedReading.parse(
    (await post('/api/exchange/accept', { reading: reading.id, by: null })).json,
  )
  expect(accepted.written).toBe(reading.would.reduce((sum, { number }) => sum + number, 0))
  expect(nursery.memory.throughSeq()).toBe(accepted.written)
  expect(nursery.memory.nursery().orders.get(OrderId.parse('P-1'))?.order.number).toBe(120)

  expect((await post('/api/exchange/accept', { reading: reading.id, by: null })).status).toBe(404)
  const again = Reading.parse((await send([fixture('english/nursery.xlsx')])).json)
  expect([again.ready, again.would]).toEqual([false, []])
})

test('an open question refuses to be passed over; the same files are read again as answered, and it is remembered', async () => {
  const asked = Reading.parse((await send([fixture('american/orders-unclear.csv')])).json)
  expect(asked.questions.filter(({ needed }) => needed).map(({ id }) => id)).toEqual(['days: Date Required'])
  const refused = await post('/api/exchange/accept', { reading: asked.id, by: null })
  expect(refused).toMatchObject({ status: 409, json: { what: 'A question is open' } })

  const mapping = { 'orders-unclear.csv': { answers: { 'days: Date Required': 'month first' } } }
  const answered = Reading.parse((await post(`/api/exchange/read/${asked.id}`, { mapping })).json)
  expect(answered.ready).toBe(true)
  expect((await post('/api/exchange/accept', { reading: asked.id, by: null })).status).toBe(200)
  expect(nursery.memory.nursery().orders.get(OrderId.parse('1003'))?.order.due).toBe('2028-03-04')

  const later = Reading.parse((await send([fixture('american/orders-unclear.csv')])).json)
  expect(later.questions.filter(({ needed, answer }) => needed && answer === null)).toEqual([])
})

test('what cannot be read is refused, or said of the file, never a crash', async () => {
  expect((await send([])).status).toBe(400)
  expect((await send([fixture('german/Bestand.csv')], ['not', 'a', 'mapping'])).status).toBe(400)
  const odd = Reading.parse(
    (await send([new File([new Uint8Array([0x50, 0x4b, 1, 2])], 'broken.xlsx')])).json,
  )
  expect(odd.unread).toMatchObject([{ file: 'broken.xlsx' }])
  expect(odd.ready).toBe(false)
  expect((await post('/api/exchange/read/gone', { mapping: {} })).status).toBe(404)
})

test('what was brought in is struck as one, each entry by one that strikes; what a later entry rests on stays and says on what; and striking the strikes brings it all back', async () => {
  const entries = () => nursery.memory.after(0, 10_000)
  const bring = async () => {
    const reading = Reading.parse((await send([fixture('english/nursery.xlsx')])).json)
    return AcceptedReading.parse((await post('/api/exchange/accept', { reading: reading.id, by: null })).json)
  }
  const rows = async () => BroughtRow.array().parse((await nursery.ask('/api/exchange/brought')).json)
  const takeBack = async (id: string) =>
    TakenBack.parse((await post(`/api/exchange/brought/${id}/strike`, { by: null })).json)

  // What was brought in second rests on kinds that came first, so it goes first.
  const [second, first] = (await rows()) as [BroughtRow, BroughtRow]
  expect((await takeBack(second.id)).stay).toBe(0)
  const before = entries()
  const whole = await takeBack(first.id)
  expect([whole.strikes.length, whole.stay]).toEqual([first.written, 0])
  expect(entries().slice(0, before.length)).toEqual(before)
  expect(nursery.memory.nursery().orders.has(OrderId.parse('P-1'))).toBe(false)
  expect((await rows()).at(-1)!.standing).toBe(0)
  expect((await takeBack(first.id)).strikes).toEqual([])

  await nursery.push(
    whole.strikes.map(entry => entryOf({ kind: 'struck/1', entry, why: 'undo' }, '2026-11-24')),
  )
  expect((await rows()).at(-1)!.standing).toBe(first.written)
  expect(nursery.memory.nursery().orders.get(OrderId.parse('P-1'))?.order.number).toBe(120)

  const { order } = nursery.memory.nursery().orders.get(OrderId.parse('P-1'))!
  await nursery.push([
    entryOf({ kind: 'order-changed/1', order: { ...order, number: 90 }, why: 'fewer' }, '2026-11-24'),
  ])
  const partly = await takeBack(first.id)
  const stays = partly.reasons.map(({ entry }) => nursery.memory.entry(entry)!.body)
  expect(stays).toContainEqual({ kind: 'order-placed/1', order })
  expect(stays.map(({ kind }) => kind)).toContain('kind-set/1')
  expect(partly.strikes.length + partly.stay).toBe(first.written)
  expect(nursery.memory.nursery().orders.get(OrderId.parse('P-1'))?.order.number).toBe(90)
  expect(await bring()).toMatchObject({ written: expect.any(Number) })
  expect((await post('/api/exchange/brought/none/strike', { by: null })).status).toBe(404)
})

test('every empty sheet that is named can be saved', async () => {
  const sheets = EmptySheet.array().parse((await nursery.ask('/api/exchange/sheets')).json)
  expect(sheets.map(({ kind }) => kind)).toContain('orders')
  for (const file of ['all.xlsx', ...sheets.flatMap(({ kind }) => [`${kind}.csv`, `${kind}.xlsx`])]) {
    const { status, headers, bytes } = await download(`/api/exchange/sheets/${file}`)
    expect([status, headers.get('content-disposition')]).toEqual([200, `attachment; filename="${file}"`])
    expect(bytes.length).toBeGreaterThan(50)
  }
  expect((await download('/api/exchange/sheets/seeds.csv')).status).toBe(404)
})

test('the record can be carried away: all entries a line each, the tables by name, and a backup that restores', async () => {
  const seq = nursery.memory.throughSeq()
  expect(lines((await download('/api/exchange/export')).bytes)).toHaveLength(seq)
  const descriptor = JSON.parse(
    lines((await download('/api/exchange/export/datapackage.json')).bytes).join('\n'),
  )
  for (const { path } of descriptor.resources)
    expect((await download(`/api/exchange/export/${path}`)).status, path).toBe(200)
  expect((await download('/api/exchange/export/seeds.csv')).status).toBe(404)

  const { status, bytes } = await download('/api/backup')
  expect(status).toBe(200)
  const file = join(folder, 'carried.budstick')
  writeFileSync(file, bytes)
  expect(await restoreLog(file, join(folder, 'restored'))).toBe(seq)
})
