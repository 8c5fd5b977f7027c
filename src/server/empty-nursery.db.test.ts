import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import {
  discard,
  entryOf,
  newFolder,
  type ServedNursery,
  serveNursery,
  until,
} from '../../test/served-nursery.ts'
import type { NurseryView, PlanState, SeasonPlan, WorkList } from '../api/index.ts'

let folder: string
let nursery: ServedNursery
beforeEach(async () => {
  folder = newFolder()
  nursery = await serveNursery(folder, '2026-12-31')
})
afterEach(async () => {
  vi.useRealTimers()
  await nursery.close()
  discard(folder)
})

const looks = [
  '/api/nursery',
  '/api/orders',
  '/api/mothers',
  '/api/queries',
  '/api/rates',
  '/api/batches',
  '/api/work',
  '/api/benches',
  '/api/plan',
  '/api/entries',
]

test('an empty nursery answers everywhere, and knows its day and week', async () => {
  for (const path of looks) expect([path, (await nursery.ask(path)).status]).toEqual([path, 200])
  expect((await nursery.ask('/api/nursery')).json).toMatchObject({
    today: '2026-12-31',
    week: '2026-W53',
    site: null,
    counts: { batches: 0, plants: 0, openOrders: 0 },
  } satisfies Partial<Record<keyof NurseryView, unknown>>)
})

test('a plan asked for in an empty nursery ends at once and says that there is nothing to plan, and why', async () => {
  expect((await nursery.ask('/api/plan', { method: 'POST' })).status).toBe(202)
  const { job, plan } = await until(
    'the end of the planning job',
    async (): Promise<PlanState> => (await nursery.ask('/api/plan')).json,
    ({ job }) => job?.state !== 'running',
  )
  expect(job).toMatchObject({ state: 'done', why: null })
  expect(plan?.outcome).toEqual({
    kind: 'nothing to plan',
    why: { says: expect.stringMatching(/\w+ \w+/), of: {} },
  })
  const { starts }: SeasonPlan = (await nursery.ask('/api/plan/season')).json
  expect(starts).toEqual([])
  for (const path of looks) expect([path, (await nursery.ask(path)).status]).toEqual([path, 200])
})

test('after midnight every answer is of the new day, without a restart', async () => {
  const view = async (): Promise<NurseryView> => (await nursery.ask('/api/nursery')).json
  await view()
  nursery.today = '2027-01-04'
  expect(await view()).toMatchObject({ today: '2027-01-04', week: '2027-W01' })
  expect((await nursery.ask('/api/work')).json as WorkList).toMatchObject({
    week: '2027-W01',
    monday: '2027-01-04',
  })
})

test('whoever listens is told within a minute that a new day has begun', async () => {
  vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] })
  const answer = await nursery.app.request('http://localhost/api/events')
  const reader = answer.body!.getReader()
  const heard = async () => new TextDecoder().decode((await reader.read()).value)
  expect(await heard()).toContain('"event":"entries"')
  vi.advanceTimersByTime(60_000)
  nursery.today = '2027-01-01'
  vi.advanceTimersByTime(60_000)
  expect(await heard()).toBe('data: {"event":"day","today":"2027-01-01"}\n\n')
  await reader.cancel()
})

test('whoever listens hears of new entries by the number of the newest', async () => {
  const answer = await nursery.app.request('http://localhost/api/events')
  const reader = answer.body!.getReader()
  const heard = async () => new TextDecoder().decode((await reader.read()).value)
  expect(await heard()).toBe('data: {"event":"entries","throughSeq":0}\n\n')
  await nursery.push([entryOf({ kind: 'noted/1', about: '', text: 'one' })])
  expect(await heard()).toBe('data: {"event":"entries","throughSeq":1}\n\n')
  await reader.cancel()
})
