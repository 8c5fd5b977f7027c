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
import {
  type OrderRow,
  type PlanJob,
  type PlanState,
  PlanState as PlanStateShape,
  rowsOf,
  type SeasonPlan,
  type ServerEvent,
  type WeekWork,
  type WorkList,
} from '../api/index.ts'
import { Prices } from '../record/index.ts'
import { inEnglish, phrase } from '../trade/index.ts'

const TODAY = '2026-05-19'

let folder: string
let nursery: ServedNursery
beforeAll(async () => {
  folder = newFolder()
  nursery = await serveNursery(folder, TODAY, nurseryWithFewOrders(TODAY, 4))
})
afterAll(async () => {
  await nursery.close()
  discard(folder)
})

const begin = () => nursery.ask('/api/plan', { method: 'POST' })
const stop = () => nursery.ask('/api/plan/job', { method: 'DELETE' })
const season = async (): Promise<SeasonPlan> => (await nursery.ask('/api/plan/season')).json
const state = async (): Promise<PlanState> => (await nursery.ask('/api/plan')).json
const accept = (plan: string, by: string | null = null) =>
  nursery.ask('/api/plan/accept', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ plan, by }),
  })
const ended = async (): Promise<PlanState> =>
  until('the end of the planning job', state, ({ job }) => job?.state !== 'running')

/** What the server tells on its own, as it comes. */
const listen = async (heard: (event: ServerEvent) => void): Promise<() => void> => {
  const quit = new AbortController()
  const answer = await nursery.app.request('http://localhost/api/events', { signal: quit.signal })
  const reader = answer.body!.getReader()
  const words = new TextDecoder()
  const read = async (): Promise<void> => {
    let text = ''
    for (;;) {
      const { done, value } = await reader.read()
      if (done) return
      const lines = (text + words.decode(value, { stream: true })).split('\n\n')
      text = lines.pop()!
      for (const line of lines) heard(JSON.parse(line.replace(/^data: /, '')) as ServerEvent)
    }
  }
  void read().catch(() => undefined)
  return () => {
    void reader.cancel()
    quit.abort()
  }
}

test('before the first plan there is none, nothing to stop, and no work', async () => {
  expect(await state()).toEqual({ plan: null, entriesSince: 0, accepted: null, acceptedBy: null, job: null })
  expect((await stop()).status).toBe(404)
  expect(rowsOf(((await nursery.ask('/api/work')).json as WeekWork).planned.tasks)).toEqual([])
  expect((await nursery.ask('/api/plan/season')).status).toBe(404)
})

test('a plan is made in the background, tells how it goes on without ever going back, and stands when it is done', async () => {
  const jobs: PlanJob[] = []
  const quit = await listen(event => void (event.event === 'job' && jobs.push(event.job)))
  const begun = await begin()
  expect(begun.status).toBe(202)
  expect((begun.json as PlanJob).state).toBe('running')
  expect((await begin()).status).toBe(409)

  const after = await ended()
  quit()
  expect(PlanStateShape.safeParse(after).error).toBeUndefined()
  expect(after.job).toMatchObject({ id: (begun.json as PlanJob).id, state: 'done', share: 1, why: null })
  expect((await season()).orders).toHaveLength(4)
  expect(after.plan?.throughSeq).toBe(nursery.memory.throughSeq())
  expect(after.entriesSince).toBe(0)

  const shares = jobs.map(({ share }) => share)
  expect(new Set(jobs.map(({ stage }) => stage)).size).toBeGreaterThan(2)
  expect(shares).toEqual([...shares].sort((a, b) => a - b))
  for (const { says } of jobs) expect(inEnglish(says)).toMatch(/^[A-Z].*\w/)
  expect(jobs.at(-1)?.state).toBe('done')
})

test('the plan shows in the work of its weeks and in the chance of each order', async () => {
  const plan = nursery.plans.latest()
  const week = plan!.tasks[0]!.week
  const { planned }: WeekWork = (await nursery.ask(`/api/work?week=${week}`)).json
  const tasks = rowsOf(planned.tasks)
  expect(tasks.length).toBeGreaterThan(0)
  expect(tasks).toEqual(plan!.tasks.filter(task => task.week === week))
  const orders: OrderRow[] = (await nursery.ask('/api/orders')).json
  for (const { order, chance } of orders)
    expect(chance).toBe(plan!.orders.find(one => one.order === order.id)?.chance)
})

test('the work of a week brings the starts and batches that its tasks are about, and no others', async () => {
  const { planned, ...work }: WeekWork = (await nursery.ask('/api/work')).json
  const { starts } = planned
  const tasks = rowsOf(planned.tasks)
  const batches = rowsOf(work.batches)
  const about = (ids: readonly (string | null)[]) => [...new Set(ids)].filter(id => id !== null).sort()
  expect(starts.map(({ id }) => id).sort()).toEqual(about(tasks.map(({ start }) => start)))
  const sent = tasks.flatMap(({ kindOfTask, kind }) => (kindOfTask === 'dispatch' ? [kind] : []))
  const named = batches.filter(({ kind, finished }) => !(finished > 0 && sent.includes(kind)))
  expect(named.map(({ id }) => id).every(id => tasks.some(({ batch }) => batch === id))).toBe(true)
})

test('how an order is filled is told by the order, and of one that the plan does not know nothing is told', async () => {
  const forecast = nursery.plans.latest()!.orders[0]!
  const asked = await nursery.ask(`/api/plan/orders/${forecast.order}`)
  expect(asked.json).toEqual(JSON.parse(JSON.stringify(forecast)))
  expect(await nursery.ask('/api/plan/orders/nobody-asked')).toMatchObject({ status: 200, json: null })
})

test('the plan says how many entries it does not know of yet; that it was accepted is not one of them', async () => {
  const { plan } = await state()
  await nursery.push([entryOf({ kind: 'noted/1', about: '', text: 'frost' })])
  await accept(plan!.id)
  expect((await state()).entriesSince).toBe(1)
})

test('what is planned for a week is not sent again to whoever names its mark, and what is done is', async () => {
  const first: WeekWork = (await nursery.ask('/api/work')).json
  const task = rowsOf(first.planned.tasks)[0]!.id
  await nursery.push([entryOf({ kind: 'task-done/1', task, minutes: null })])
  const known = encodeURIComponent(first.mark)
  const second: WorkList = (await nursery.ask(`/api/work?known=${known}`)).json
  expect(second.planned).toBeNull()
  expect(second.done.map(one => one.task)).toEqual([task])
  const other: WorkList = (await nursery.ask(`/api/work?week=2026-W40&known=${known}`)).json
  expect(other.planned).not.toBeNull()
})

test('only the latest plan can be accepted, accepting it again says nothing new, and each order keeps its chance of that day', async () => {
  const { plan, accepted } = await state()
  expect(accepted).toBe(plan!.id)
  const before = nursery.memory.throughSeq()
  expect((await accept(plan!.id)).status).toBe(200)
  expect(nursery.memory.throughSeq()).toBe(before)
  expect(await accept('an older one')).toMatchObject({ status: 409, json: { mend: expect.any(String) } })
  expect((await accept(plan!.id, ' ')).status).toBe(400)
  const { orders: forecasts } = await season()
  const orders: OrderRow[] = (await nursery.ask('/api/orders')).json
  for (const { order, chanceAtAcceptance } of orders)
    expect(chanceAtAcceptance).toBe(forecasts.find(one => one.order === order.id)?.chance)
})

test('a job that is stopped ends with the best plan so far, which can be worked by', async () => {
  const { plan: before } = await state()
  // Dearer hours ask for a plan that is made anew, which takes its time.
  await nursery.push([entryOf({ kind: 'prices-set/1', prices: Prices.parse({ hour: 31 }) })])
  await begin()
  await until('the first stage of the plan', state, ({ job }) => job?.stage !== 'reading')
  const { status, json } = await stop()
  expect({ status, says: (json as PlanJob).says }).toEqual({
    status: 200,
    says: phrase('Stopping with the best plan so far.'),
  })
  const { job, plan } = await ended()
  expect(job).toMatchObject({
    state: 'stopped',
    says: phrase('Stopped with the best plan so far.'),
    why: null,
  })
  expect(plan!.id).not.toBe(before!.id)
  expect(plan!.outcome.kind).toBe('stopped early')
  expect((await season()).orders).toHaveLength(4)
})

test('a planning thread that dies is said to have ended without an answer; the plan before it stands and the next job runs', async () => {
  const { plan: before } = await state()
  await begin()
  await until('the first stage of the plan', state, ({ job }) => job?.stage !== 'reading')
  await nursery.thread.close()
  const { job, plan } = await ended()
  expect(job).toMatchObject({ state: 'failed', says: phrase('The planner ended without an answer.') })
  expect(job?.why).toMatch(/\w/)
  expect(plan).toEqual(before)
  expect((await begin()).status).toBe(202)
  await stop()
  expect((await ended()).job?.state).toBe('stopped')
})

test('after a restart the last plan is there, and so is which was accepted', async () => {
  const { plan, accepted } = await state()
  await nursery.close()
  nursery = await serveNursery(folder, TODAY)
  expect(await state()).toMatchObject({ plan: JSON.parse(JSON.stringify(plan)), accepted, job: null })
})

test('a kept plan that this version cannot read is no plan, and everything else answers', async () => {
  nursery.memory.log.remember('latest-plan', { id: 'from another version', tasks: 'many' })
  await nursery.close()
  nursery = await serveNursery(folder, TODAY)
  expect((await state()).plan).toBeNull()
  for (const path of ['orders', 'work', 'benches'])
    expect((await nursery.ask(`/api/${path}`)).status).toBe(200)
})
