import type { OpenAPIHono } from '@hono/zod-openapi'
import { routes } from '../../api/routes/index.ts'
import type { Served } from '../served.ts'
import { deedsOf, journalPage } from '../views/journal.ts'

/** All that was said, and what of it belongs to one deed. */
export const journalRoutes = (app: OpenAPIHono, { memory, plans }: Served): void => {
  app.openapi(routes.journal, c =>
    c.json(journalPage(memory, plans.latest()?.tasks ?? [], c.req.valid('query')), 200),
  )
  app.openapi(routes.deedsOf, c => c.json(deedsOf(memory, c.req.valid('json').tasks), 200))
}
