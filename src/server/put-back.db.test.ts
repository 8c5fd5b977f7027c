import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { uuidv7 } from 'uuidv7'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { discard, entryOf, newFolder } from '../../test/served-nursery.ts'
import type { KeptNursery, NurseryView, PutBack, Refusal } from '../api/index.ts'
import { openLog } from '../store/index.ts'
import { type ServedFolder, serveFolder } from './serve-folder.ts'

const note = (text: string) => entryOf({ kind: 'noted/1', about: '', text })
let second = 10
const now = () => `2026-05-19T06:00:${++second}.000Z`
const clock = { today: () => '2026-05-19', now, newId: uuidv7 }

let folder: string
let served: ServedFolder
beforeEach(async () => {
  folder = newFolder()
  served = await serveFolder(folder, clock)
})
afterEach(async () => {
  await served.close()
  discard(folder)
})

const ask = async (path: string, init?: RequestInit) =>
  await served.fetch(new Request(`http://localhost${path}`, init))
const putBack = (body: BodyInit) =>
  ask('/api/restore', {
    method: 'POST',
    headers: { 'content-type': 'application/octet-stream' },
    body,
  })
const notes = () =>
  served
    .memory()
    .after(0, 100)
    .map(({ body }) => ('text' in body ? body.text : ''))

const listen = async () => (await ask('/api/events')).body!.pipeThrough(new TextDecoderStream()).getReader()
/** Until those who listen are let go. */
const allOf = async (events: ReadableStreamDefaultReader<string>): Promise<string> => {
  let heard = ''
  for (let next = await events.read(); !next.done; next = await events.read()) heard += next.value
  return heard
}
const sharesOf = (heard: string): number[] =>
  [...heard.matchAll(/"of":"backup","share":([\d.]+)/g)].map(([, share]) => Number(share))

test('a backup put back is the nursery from then on, and what was there is kept as a backup of its own', async () => {
  served.memory().append([note('first')], clock.now())
  const backup = await (await ask('/api/backup')).arrayBuffer()
  served.memory().append([note('second')], clock.now())

  const answer = await putBack(backup)
  const { entries, keptAs } = (await answer.json()) as PutBack
  expect([answer.status, entries, notes()]).toEqual([200, 1, ['first']])
  expect((await ask('/api/nursery')).status).toBe(200)

  const added = note('third')
  const pushed = await ask('/api/entries', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ entries: [added] }),
  })
  expect([pushed.status, notes()]).toEqual([200, ['first', 'third']])

  expect((await putBack(readFileSync(keptAs))).status).toBe(200)
  expect(notes()).toEqual(['first', 'second'])
})

test('the nursery kept when a backup was put back is put back itself by its name, and what stood there is kept in its turn', async () => {
  served.memory().append([note('first')], clock.now())
  const backup = await (await ask('/api/backup')).arrayBuffer()
  served.memory().append([note('second')], clock.now())
  const { kept } = (await (await putBack(backup)).json()) as PutBack
  served.memory().append([note('third')], clock.now())

  const listed = (await (await ask('/api/kept')).json()) as KeptNursery[]
  expect(listed.map(({ name }) => name)).toEqual([kept])
  const back = await ask(`/api/kept/${kept}/restore`, { method: 'POST' })
  const put = (await back.json()) as PutBack
  expect([back.status, put.entries, notes()]).toEqual([200, 2, ['first', 'second']])
  expect((await ask(`/api/kept/${put.kept}/restore`, { method: 'POST' })).status).toBe(200)
  expect(notes()).toEqual(['first', 'third'])
  for (const name of ['before-1.budstick', 'nursery.sqlite', '..%2Fbefore-1.budstick'])
    expect((await ask(`/api/kept/${name}/restore`, { method: 'POST' })).status).toBe(404)
})

test('putting back tells how far it is, to the end; given up before that, all is as it was, with no file left behind', async () => {
  served.memory().append([note('first')], clock.now())
  const backup = await (await ask('/api/backup')).arrayBuffer()
  served.memory().append([note('second')], clock.now())
  const before = readdirSync(folder)

  const giving = new AbortController()
  const given = ask('/api/restore', {
    ...{ method: 'POST', headers: { 'content-type': 'application/octet-stream' } },
    ...{ body: backup, signal: giving.signal },
  })
  // What comes is laid beside the nursery first.
  while (!readdirSync(folder).some(name => name.endsWith('.ready'))) await new Promise(setImmediate)
  giving.abort()
  expect((await given).status).toBe(500)
  expect(notes()).toEqual(['first', 'second'])
  expect(readdirSync(folder)).toEqual(before)

  const events = await listen()
  expect((await putBack(backup)).status).toBe(200)
  const heard = await allOf(events)
  const shares = sharesOf(heard)
  expect(shares.at(-1)).toBe(1)
  expect(shares).toEqual([...shares].sort((a, b) => a - b))
  expect(shares.length).toBeGreaterThan(2)
  expect(notes()).toEqual(['first'])
})

test('what is no whole backup is refused, and the nursery is as it was, with no file left behind', async () => {
  served.memory().append([note('first')], clock.now())
  const before = readdirSync(folder)
  const backup = new Uint8Array(await (await ask('/api/backup')).arrayBuffer())
  const cut = backup.slice(0, Math.floor(backup.length / 2))
  for (const wrong of [new Uint8Array(), new TextEncoder().encode('a spreadsheet'), cut]) {
    const answer = await putBack(wrong)
    const said = (await answer.json()) as Refusal
    expect([answer.status, said.what]).toEqual([422, 'The nursery is as it was: the backup was not put back'])
    expect(said.mend).not.toContain(folder)
  }
  expect(notes()).toEqual(['first'])
  expect(readdirSync(folder)).toEqual(before)
  served.memory().append([note('second')], clock.now())
  expect(notes()).toEqual(['first', 'second'])
})

test('who listens is let go when the nursery is changed for another, so that they listen anew', async () => {
  served.memory().append([note('first')], clock.now())
  const backup = await (await ask('/api/backup')).arrayBuffer()
  const events = (await ask('/api/events')).body!.getReader()
  await events.read()
  await putBack(backup)
  for (;;) if ((await events.read()).done) break
  const log = await openLog(join(folder))
  expect(log.lastSeq()).toBe(1)
  log.close()
})

test('the invented nursery is opened in an empty one, says that it is invented, and is put aside whole for one of one’s own, telling how far it is; given up, all is as it was', async () => {
  const nursery = async () => (await (await ask('/api/nursery')).json()) as NurseryView
  const post = (path: string) => ask(path, { method: 'POST' })
  expect((await nursery()).isInvented).toBe(false)
  expect((await post('/api/own-nursery')).status).toBe(409)

  expect((await post('/api/invented-nursery')).status).toBe(200)
  const invented = await nursery()
  expect(invented.isInvented).toBe(true)
  expect(invented.counts.batches).toBeGreaterThan(0)
  expect((await post('/api/invented-nursery')).status).toBe(409)
  served.memory().append([note('entered while looking around')], clock.now())
  const all = served.memory().throughSeq()

  const before = readdirSync(folder)
  const giving = new AbortController()
  const given = ask('/api/own-nursery', { method: 'POST', signal: giving.signal })
  giving.abort()
  expect((await given).status).toBe(500)
  expect(await nursery()).toMatchObject({ isInvented: true, throughSeq: all })
  expect(readdirSync(folder)).toEqual(before)

  const events = await listen()
  const { kept } = (await (await post('/api/own-nursery')).json()) as PutBack
  const shares = sharesOf(await allOf(events))
  expect([shares[0], shares.at(-1)]).toEqual([0, 1])
  expect(shares).toEqual([...shares].sort((a, b) => a - b))
  expect(await nursery()).toMatchObject({ isInvented: false, throughSeq: 0, site: null })
  served.memory().append([note('mine')], clock.now())
  expect(notes()).toEqual(['mine'])

  expect((await post(`/api/kept/${kept}/restore`)).status).toBe(200)
  expect(await nursery()).toMatchObject({ isInvented: true, throughSeq: all })
})
