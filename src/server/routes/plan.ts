import type { OpenAPIHono } from '@hono/zod-openapi'
import { type PlanState, refusal } from '../../api/index.ts'
import { routes } from '../../api/routes/index.ts'
import type { Plan, PlanBeside } from '../../planning/index.ts'
import { Entry } from '../../record/index.ts'
import type { Served } from '../served.ts'
import { planHead, seasonPlan } from '../views/plan.ts'

const COUNTED_AT_MOST = 10_000

const besideIt = ({ id, starts, bought, loads, firstWeek }: Plan): PlanBeside => ({
  id,
  starts,
  bought,
  loads,
  firstWeek,
})

/** The season plan: begin, watch, stop, accept. */
export const planRoutes = (app: OpenAPIHono, served: Served): void => {
  const { memory, plans, whatIfs, rateLooks, underWay } = served
  /** Entries that the plan does not know of; that it was accepted itself is no news to it. */
  const entriesSince = (plan: Plan): number =>
    memory.after(plan.throughSeq, COUNTED_AT_MOST).filter(({ body }) => body.kind !== 'plan-accepted/1')
      .length

  const state = (): PlanState => {
    const plan = plans.latest()
    return {
      plan: plan && planHead(plan),
      entriesSince: plan === null ? 0 : entriesSince(plan),
      accepted: memory.nursery().acceptedPlan?.plan ?? null,
      acceptedBy: memory.nursery().acceptedPlan?.entry ?? null,
      job: plans.job(),
    }
  }

  const noPlan = refusal('no-plan', {})

  app.openapi(routes.plan, c => c.json(state(), 200))

  app.openapi(routes.seasonPlan, c => {
    const plan = plans.latest()
    return plan === null ? c.json(noPlan, 404) : c.json(seasonPlan(plan), 200)
  })

  app.openapi(routes.orderPlanned, c => {
    const { id } = c.req.valid('param')
    return c.json(plans.latest()?.orders.find(({ order }) => order === id) ?? null, 200)
  })

  app.openapi(routes.startPlan, c => {
    const job = plans.begin(served.today())
    return job === null ? c.json(refusal('planning-already', {}), 409) : c.json(job, 202)
  })

  app.openapi(routes.promise, async c => {
    const plan = plans.latest()
    if (plan === null) return c.json(noPlan, 404)
    const asked = c.req.valid('query')
    const of = { plan: besideIt(plan), asked }
    const said = await rateLooks.ask('promise', of, served.today(), {
      signal: c.req.raw.signal,
      tell: underWay.tell('promise'),
    })
    return said === null ? c.json(refusal('no-such-kind', { id: asked.kind }), 404) : c.json(said, 200)
  })

  app.openapi(routes.startMoved, async c => {
    const plan = plans.latest()
    const asked = c.req.valid('query')
    const of = plan && { plan: besideIt(plan), asked }
    const said =
      of &&
      (await rateLooks.ask('startMoved', of, served.today(), {
        signal: c.req.raw.signal,
        tell: underWay.tell('start moved'),
      }))
    return said === null ? c.json(refusal('no-such-start', { id: asked.start }), 404) : c.json(said, 200)
  })

  app.openapi(routes.whatIf, async c => {
    const plan = plans.latest()
    const { suppose } = c.req.valid('json')
    if (suppose.kind === 'order-changed/1' && !memory.nursery().orders.has(suppose.order.id))
      return c.json(refusal('no-such-order', { id: suppose.order.id }), 404)
    if (plans.job()?.state === 'running') return c.json(refusal('planning', {}), 409)
    if (plan === null) return c.json(refusal('no-plan', {}), 404)
    const said = await whatIfs.ask(suppose, plan, served.today(), c.req.raw.signal)
    switch (said.kind) {
      case 'answer':
        return c.json(said.answer, 200)
      case 'stopped':
        return c.json(refusal('given-up', {}), 409)
      case 'failed':
        return c.json(refusal('no-answer', {}, said.why), 503)
    }
  })

  app.openapi(routes.workAgain, async c => {
    const { id } = c.req.valid('param')
    if (!memory.nursery().batches.has(id)) return c.json(refusal('no-such-batch', { id }), 404)
    const orders = plans.latest()?.orders ?? []
    return c.json(await rateLooks.ask('workAgain', { batch: id, plan: { orders } }, served.today()), 200)
  })

  app.openapi(routes.stopPlan, c => {
    const job = plans.stop()
    return job === null ? c.json(refusal('not-planning', {}), 404) : c.json(job, 200)
  })

  app.openapi(routes.acceptPlan, c => {
    const { plan: id, by } = c.req.valid('json')
    const plan = plans.latest()
    if (plan === null || plan.id !== id) return c.json(refusal('not-the-latest-plan', { id }), 409)
    if (memory.nursery().acceptedPlan?.plan === id) return c.json(state(), 200)
    const entry = Entry.parse({
      id: served.newId(),
      on: served.today(),
      at: null,
      by,
      device: 'office',
      body: {
        kind: 'plan-accepted/1',
        plan: plan.id,
        starts: plan.starts.map(start => ({
          start: start.id,
          kindOfTree: start.kind,
          protocol: start.protocol,
          week: start.week,
          number: start.number,
          bench: start.bench,
        })),
        chances: Object.fromEntries(plan.orders.map(order => [order.order, order.chance])),
      },
    }) as Entry
    memory.append([entry], served.now())
    return c.json(state(), 200)
  })
}
