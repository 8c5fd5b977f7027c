import { OpenAPIHono } from '@hono/zod-openapi'
import { HTTPException } from 'hono/http-exception'
import { refusal } from '../api/index.ts'
import { LogTrouble } from '../store/index.ts'
import { backupRoutes } from './routes/backups.ts'
import { broughtRoutes } from './routes/brought.ts'
import { entryRoutes } from './routes/entries.ts'
import { eventRoutes } from './routes/events.ts'
import { exchangeRoutes } from './routes/exchange.ts'
import { journalRoutes } from './routes/journal.ts'
import { pictureRoutes } from './routes/pictures.ts'
import { planRoutes } from './routes/plan.ts'
import { readingRoutes } from './routes/reading.ts'
import { recordRoutes } from './routes/record.ts'
import type { Served } from './served.ts'

const isThisComputer = (host: string | undefined): boolean =>
  /^(localhost|127\.0\.0\.1|\[::1\])(:\d+)?$/.test(host ?? '')

/** The whole API as one function from request to answer; no port is needed to call it. */
export const createApp = (served: Served) => {
  const app = new OpenAPIHono({
    defaultHook: (result, c) => {
      if (result.success) return undefined
      const first = result.error.issues[0]
      return c.json(
        refusal('does-not-fit', { where: first?.path.join('.') || c.req.path }, first?.message),
        400,
      )
    },
  })

  app.use('/api/*', async (c, next) => {
    const origin = c.req.header('origin')
    const originHost = origin === undefined ? undefined : URL.canParse(origin) ? new URL(origin).host : ''
    if (
      !isThisComputer(c.req.header('host') ?? new URL(c.req.url).host) ||
      (originHost !== undefined && !isThisComputer(originHost))
    )
      return c.json(refusal('not-this-computer', {}), 403)
    return next()
  })

  readingRoutes(app, served)
  recordRoutes(app, served)
  entryRoutes(app, served)
  journalRoutes(app, served)
  planRoutes(app, served)
  exchangeRoutes(app, served)
  broughtRoutes(app, served)
  backupRoutes(app, served)
  pictureRoutes(app, served)

  eventRoutes(app, served)

  app.doc31('/api/openapi.json', {
    openapi: '3.1.0',
    info: {
      title: 'Budstick',
      version: '0.1.0',
      description: 'Season planning, bench records and lineage of a fruit-tree nursery.',
    },
  })
  app.notFound(c => c.json(refusal('nothing-here', { path: c.req.path }), 404))
  app.onError((problem, c) => {
    if (problem instanceof HTTPException)
      return c.json(refusal('does-not-fit', { where: c.req.path }, problem.message), problem.status)
    if (problem instanceof LogTrouble)
      return c.json(
        refusal('log-trouble', { trouble: problem.says }),
        problem.kind === 'disk-full' ? 507 : 503,
      )
    return c.json(refusal('failed', { path: c.req.path }, problem.message), 500)
  })
  return app
}
export type App = ReturnType<typeof createApp>
