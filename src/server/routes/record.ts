import type { OpenAPIHono } from '@hono/zod-openapi'
import { routes } from '../../api/routes/index.ts'
import { refusal, type Served } from '../served.ts'
import { affectedView } from '../views/affected.ts'
import { benchStand } from '../views/bench-stand.ts'
import { familyTable } from '../views/family-tables.ts'
import { holdRows } from '../views/holds.ts'
import { motherView } from '../views/mother.ts'

const missing = (what: string, id: string) =>
  refusal(`No such ${what}`, `${what} ${id}`, 'Look for it by name in the list.')

/** One mother tree, one bench, holds, and where something found in a tree may have got to. */
export const recordRoutes = (app: OpenAPIHono, { memory, plans, today }: Served): void => {
  app.openapi(routes.mother, c => {
    const { id } = c.req.valid('param')
    const view = motherView(memory, id, today())
    return view === null ? c.json(missing('mother', id), 404) : c.json(view, 200)
  })
  app.openapi(routes.holds, c => c.json(holdRows(memory), 200))
  app.openapi(routes.benchStand, c => {
    const { id } = c.req.valid('param')
    const view = benchStand(memory, id)
    return view === null ? c.json(missing('bench', id), 404) : c.json(view, 200)
  })
  app.openapi(routes.affected, c => {
    const of = c.req.valid('param')
    const view = affectedView(memory, plans.latest(), of)
    return view === null ? c.json(missing(of.what, of.id), 404) : c.json(view, 200)
  })
  app.openapi(routes.familyTable, c => {
    const { table, ...of } = c.req.valid('param')
    const view = affectedView(memory, plans.latest(), of)
    if (view === null) return c.json(missing(of.what, of.id), 404)
    return c.body(familyTable(memory.nursery(), view, table), 200, {
      'content-type': 'text/csv; charset=utf-8',
      'content-disposition': `attachment; filename="${of.what}-${of.id.replace(/[^\w.-]+/g, '-')}-${table}"`,
    })
  })
}
