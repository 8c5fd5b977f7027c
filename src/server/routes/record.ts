import type { OpenAPIHono } from '@hono/zod-openapi'
import { refusal } from '../../api/index.ts'
import { routes } from '../../api/routes/index.ts'
import type { Served } from '../served.ts'
import { affectedView } from '../views/affected.ts'
import { batchView } from '../views/batch.ts'
import { benchStand } from '../views/bench-stand.ts'
import { familyTable } from '../views/family-tables.ts'
import { holdRows } from '../views/holds.ts'
import { motherView } from '../views/mother.ts'

/** Lets others be answered in between, and leaves out what is not there. */
const oneByOne = async <Id, View>(
  ids: readonly Id[],
  viewOf: (id: Id) => View | null | Promise<View | null>,
): Promise<View[]> => {
  const views: View[] = []
  for (const id of ids) {
    const view = await viewOf(id)
    if (view !== null) views.push(view)
    await new Promise(setImmediate)
  }
  return views
}

/** One mother tree, one bench, holds, and where something found in a tree may have got to. */
export const recordRoutes = (app: OpenAPIHono, { memory, plans, rateLooks, today }: Served): void => {
  app.openapi(routes.mother, c => {
    const { id } = c.req.valid('param')
    const view = motherView(memory, id, today())
    return view === null ? c.json(refusal('no-such-mother', { id }), 404) : c.json(view, 200)
  })
  app.openapi(routes.ahead, async c => {
    const { batches, mothers, benches } = c.req.valid('json')
    const day = today()
    return c.json(
      {
        batches: await oneByOne(batches, id => batchView(memory, plans.latest(), id, day)),
        expected: await oneByOne(batches, async batch =>
          memory.nursery().batches.has(batch)
            ? { batch, band: [...(await rateLooks.band(batch, day))] }
            : null,
        ),
        mothers: await oneByOne(mothers, id => motherView(memory, id, day)),
        benches: await oneByOne(benches, id => benchStand(memory, id)),
      },
      200,
    )
  })
  app.openapi(routes.holds, c => c.json(holdRows(memory), 200))
  app.openapi(routes.benchStand, c => {
    const { id } = c.req.valid('param')
    const view = benchStand(memory, id)
    return view === null ? c.json(refusal('no-such-bench', { id }), 404) : c.json(view, 200)
  })
  app.openapi(routes.affected, c => {
    const of = c.req.valid('param')
    const view = affectedView(memory, plans.latest(), of)
    return view === null ? c.json(refusal(`no-such-${of.what}`, { id: of.id }), 404) : c.json(view, 200)
  })
  app.openapi(routes.familyTable, c => {
    const { table, ...of } = c.req.valid('param')
    const view = affectedView(memory, plans.latest(), of)
    if (view === null) return c.json(refusal(`no-such-${of.what}`, { id: of.id }), 404)
    return c.body(familyTable(memory.nursery(), view, table), 200, {
      'content-type': 'text/csv; charset=utf-8',
      'content-disposition': `attachment; filename="${of.what}-${of.id.replace(/[^\w.-]+/g, '-')}-${table}"`,
    })
  })
}
