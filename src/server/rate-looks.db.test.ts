import { uuidv7 } from 'uuidv7'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { discard, entryOf, newFolder, type ServedNursery, serveNursery } from '../../test/served-nursery.ts'
import { makeDemoEntries } from '../demo/index.ts'
import type { BatchId } from '../trade/index.ts'
import { createApp } from './app.ts'
import { createRateLooks, type RateLooks } from './rate-looks.ts'
import { createUnderWay } from './under-way.ts'
import { type AskedOf, type Look, looks } from './views/looks.ts'
import { createWhatIfs } from './what-ifs.ts'

const TODAY = '2026-05-19'

let folder: string
let nursery: ServedNursery
/** As of a record too large to be looked through at once. */
let inThread: RateLooks
beforeAll(async () => {
  folder = newFolder()
  nursery = await serveNursery(folder, TODAY, makeDemoEntries({ seed: 1, today: TODAY }))
  inThread = createRateLooks(nursery.memory, nursery.thread, 0)
})
afterAll(async () => {
  inThread.close()
  await nursery.close()
  discard(folder)
})

const here = <L extends Look>(look: L, of: AskedOf<L>) =>
  (looks[look] as (...asked: unknown[]) => unknown)(nursery.memory.nursery(), TODAY, of)
const standing = () =>
  [...nursery.memory.nursery().batches.values()].find(batch =>
    batch.portions.some(({ number }) => number > 9),
  )!

/** What could be promised, which takes long. */
const promiseAsked = () => {
  const plan = { id: 'a plan', starts: [], bought: [], loads: [], firstWeek: '2026-W21' }
  const kind = [...nursery.memory.nursery().kinds.keys()][0]!
  return { plan, asked: { kind, number: 10, sure: 0.9 } }
}

test('what rests on rates is the same from the thread as from the thread that answers everybody', async () => {
  const { id } = standing()
  expect(await inThread.ask('rates', null, TODAY)).toEqual(here('rates', null))
  expect(await inThread.ask('ratesCompared', null, TODAY)).toEqual(here('ratesCompared', null))
  expect(await inThread.ask('needsLook', null, TODAY)).toEqual(here('needsLook', null))
  expect(await inThread.ask('band', id, TODAY)).toEqual(here('band', id))
  const full = { starts: [], weeks: 79 }
  expect(await inThread.ask('fullBenches', full, TODAY)).toEqual(here('fullBenches', full))
  const again = { batch: id, plan: { orders: [] } }
  expect(await inThread.ask('workAgain', again, TODAY)).toEqual(here('workAgain', again))
})

test('what could be promised tells how far it is from the thread, and given up it ends without an answer', async () => {
  const of = promiseAsked()
  const shares: number[] = []
  const told = { signal: new AbortController().signal, tell: (share: number) => void shares.push(share) }
  expect(await inThread.ask('promise', of, TODAY, told)).toEqual(here('promise', of))
  expect(shares.length).toBeGreaterThan(2)
  expect(shares).toEqual([...shares].sort((a, b) => a - b))

  const stopping = new AbortController()
  const waiting = inThread.ask('promise', of, TODAY, { signal: stopping.signal, tell: () => undefined })
  stopping.abort()
  await expect(waiting).rejects.toThrow('Nobody waits')
})

test('a look at the whole record is worked out once for all who ask in the same state, and anew after an entry or midnight', async () => {
  const first = inThread.ask('needsLook', null, TODAY)
  expect(inThread.ask('needsLook', null, TODAY)).toBe(first)
  const next = inThread.ask('needsLook', null, '2026-05-20')
  expect(next).not.toBe(first)
  await nursery.push([entryOf({ kind: 'noted/1', about: '', text: 'frost' })])
  const after = inThread.ask('needsLook', null, '2026-05-20')
  expect(after).not.toBe(next)
  expect(await after).toEqual(await next)
})

test('the server goes on answering while a look is worked out', async () => {
  let isThere = false
  const rates = inThread.ask('rates', null, TODAY).then(() => {
    isThere = true
  })
  expect((await nursery.ask('/api/nursery')).status).toBe(200)
  expect(isThere).toBe(false)
  await rates
})

test('a batch is answered while what takes is still being learnt: its band alone waits', async () => {
  const app = createApp({
    ...nursery,
    rateLooks: inThread,
    underWay: createUnderWay(),
    whatIfs: createWhatIfs(nursery.memory, nursery.thread, uuidv7),
    today: () => TODAY,
    now: () => `${TODAY}T06:00:00.000Z`,
    newId: uuidv7,
    writeBackup: () => Promise.reject(new Error('No backup is written here.')),
    putBack: () => Promise.reject(new Error('Nothing is put back here.')),
    putAside: () => Promise.reject(new Error('Nothing is put aside here.')),
    invent: () => undefined,
  })
  const ask = async (path: string) => (await app.request(`http://localhost/api/batches/${path}`)).json()
  const { id } = [...nursery.memory.nursery().batches.values()].find(batch => batch.outcomes.length > 1)!
  const answered: string[] = []
  const [expected] = await Promise.all([
    ask(`${id}/expected`).finally(() => answered.push('expected')),
    ask(id).finally(() => answered.push('batch')),
  ])
  expect(answered).toEqual(['batch', 'expected'])
  expect(expected).toEqual(here('band', id))
  expect(expected).not.toEqual([])
})

test('a band is known at once after a count, and follows it for the next who asks', async () => {
  const batch = standing()
  const before = await inThread.band(batch.id, TODAY)
  expect(before).toEqual(here('band', batch.id))
  const { step, number } = batch.portions.find(portion => portion.number > 9)!
  for (const like of nursery.memory.nursery().batches.values())
    if (like.protocol === batch.protocol)
      for (const portion of like.portions)
        if (portion.step === step && portion.number > 0)
          await nursery.push([
            entryOf({ kind: 'lost/1', batch: like.id, step, number: portion.number, cause: 'rot' }),
          ])
  expect(number).toBeGreaterThan(0)
  expect(await inThread.band(batch.id, TODAY)).toEqual(before)
  const after = here('band', batch.id)
  expect(after).not.toEqual(before)
  await expect.poll(() => inThread.band(batch.id, TODAY), { timeout: 30_000 }).toEqual(after)
})

test('a rate that the nursery sets is in the band at once', async () => {
  const { id, protocol, kind } = standing()
  const { steps } = nursery.memory.nursery().protocols.get(protocol)!
  await inThread.band(id, TODAY)
  const { json } = await nursery.push([
    entryOf({
      kind: 'rate-set/1',
      protocol,
      step: steps[0]!.id,
      kindOfTree: kind,
      survival: { low: 0.11, typical: 0.12, high: 0.13, basis: 'set by the nursery', sources: [] },
      why: 'seen here',
    }),
  ])
  expect((json as { refused: unknown[] }).refused).toEqual([])
  expect(await inThread.band(id, TODAY)).toEqual(here('band', id))
})

test('a batch that is not known has no band; a thread that ends says so to those who wait', async () => {
  expect(await inThread.band('no-such' as BatchId, TODAY)).toEqual([])
  // So many that the thread has not answered the last of them when it is ended.
  const waiting = Array.from({ length: 60 }, () => inThread.ask('promise', promiseAsked(), TODAY))
  const ended = expect(waiting.at(-1)).rejects.toThrow(/\w/)
  const all = Promise.allSettled(waiting)
  await nursery.thread.close()
  await ended
  for (const one of await all) expect(one.status === 'fulfilled' || /\w/.test(one.reason.message)).toBe(true)
})
