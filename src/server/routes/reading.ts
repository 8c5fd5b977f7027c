import type { OpenAPIHono } from '@hono/zod-openapi'
import { type NurseryView, refusal } from '../../api/index.ts'
import { routes } from '../../api/routes/index.ts'
import { fullPlaces, WEEKS_WARNED } from '../../planning/index.ts'
import { isInvented } from '../invented.ts'
import type { Served } from '../served.ts'
import { batchView } from '../views/batch.ts'
import { batchTable } from '../views/batch-rows.ts'
import { benchViews } from '../views/benches.ts'
import { lineageView } from '../views/lineage.ts'
import { motherRows } from '../views/mothers.ts'
import { nurseryView } from '../views/nursery.ts'
import { orderRows } from '../views/orders.ts'
import { queryRows } from '../views/queries.ts'
import { weekOfDayText } from '../views/week.ts'
import { workList } from '../views/work.ts'

/** As far as the weeks of the benches can be looked at. */
const BENCH_WEEKS = 79

/** Everything that only looks. */
export const readingRoutes = (app: OpenAPIHono, { memory, plans, rateLooks, today }: Served): void => {
  /** All batches are gone through for it, and every device asks after every entry: once for each state. */
  let shown: { readonly of: string; readonly view: NurseryView } | null = null
  app.openapi(routes.nursery, c => {
    const of = `${memory.throughSeq()} ${today()}`
    if (shown?.of !== of) {
      const view = nurseryView(memory.nursery(), today(), {
        throughSeq: memory.throughSeq(),
        lastHash: memory.lastHash(),
        isInvented: isInvented(memory),
      })
      shown = { of, view }
    }
    return c.json(shown.view, 200)
  })
  app.openapi(routes.orders, c => c.json(orderRows(memory.nursery(), plans.latest()), 200))
  app.openapi(routes.mothers, c => c.json(motherRows(memory.nursery(), today()), 200))
  app.openapi(routes.queries, c => c.json(queryRows(memory), 200))
  app.openapi(routes.rates, async c => c.json(await rateLooks.ask('rates', null, today()), 200))
  app.openapi(routes.ratesCompared, async c =>
    c.json(await rateLooks.ask('ratesCompared', null, today()), 200),
  )
  app.openapi(routes.needsLook, async c => {
    const plan = plans.latest()
    const [inRecord, full] = await Promise.all([
      rateLooks.ask('needsLook', null, today()),
      rateLooks.ask('fullBenches', { starts: plan?.starts ?? [], weeks: WEEKS_WARNED }, today()),
    ])
    return c.json(
      {
        ...inRecord,
        full: plan === null ? [] : [...fullPlaces(plan, today())],
        fullBenches: [...full],
      },
      200,
    )
  })
  app.openapi(routes.protocol, c => {
    const { id } = c.req.valid('param')
    const protocol = memory.nursery().protocols.get(id)
    return protocol === undefined ? c.json(refusal('no-such-protocol', { id }), 404) : c.json(protocol, 200)
  })
  app.openapi(routes.batches, c => c.json(batchTable(memory.nursery(), c.req.valid('query')), 200))
  const noBatch = (id: string) => refusal('no-such-batch', { id })
  app.openapi(routes.batch, c => {
    const { id } = c.req.valid('param')
    const view = batchView(memory, plans.latest(), id, today())
    return view === null ? c.json(noBatch(id), 404) : c.json(view, 200)
  })
  app.openapi(routes.batchExpected, async c => {
    const { id } = c.req.valid('param')
    if (!memory.nursery().batches.has(id)) return c.json(noBatch(id), 404)
    return c.json([...(await rateLooks.band(id, today()))], 200)
  })
  app.openapi(routes.benches, c => {
    const week = c.req.valid('query').week ?? weekOfDayText(today())
    return c.json(benchViews(memory.nursery(), plans.latest(), week, today()), 200)
  })
  app.openapi(routes.fullBenches, async c => {
    const of = { starts: plans.latest()?.starts ?? [], weeks: BENCH_WEEKS }
    return c.json([...(await rateLooks.ask('fullBenches', of, today()))], 200)
  })
  app.openapi(routes.lineage, c => {
    const of = c.req.valid('param')
    const view = lineageView(memory.nursery(), of)
    return view === null ? c.json(refusal(`no-such-${of.what}`, { id: of.id }), 404) : c.json(view, 200)
  })
  app.openapi(routes.work, c =>
    c.json(workList(memory.nursery(), plans.latest(), c.req.valid('query'), today()), 200),
  )
}
