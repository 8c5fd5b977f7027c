import type { OpenAPIHono } from '@hono/zod-openapi'
import { streamSSE } from 'hono/streaming'
import type { ServerEvent } from '../../api/index.ts'
import { routes } from '../../api/routes/index.ts'
import type { Served } from '../served.ts'

const MINUTE_MS = 60_000

/** What the server tells on its own: the log has grown, the planner goes on, a new day has begun. */
export const eventRoutes = (app: OpenAPIHono, { memory, plans, whatIfs, underWay, today }: Served): void => {
  app.openapi(routes.events, c =>
    streamSSE(c, async stream => {
      const send = (event: ServerEvent): void => void stream.writeSSE({ data: JSON.stringify(event) })
      let day = today()
      const watch = setInterval(() => {
        if (today() === day) return
        day = today()
        send({ event: 'day', today: day })
      }, MINUTE_MS)
      const quit = [
        memory.onAppend(throughSeq => send({ event: 'entries', throughSeq })),
        plans.onChange(job => send({ event: 'job', job })),
        whatIfs.onProgress(progress => send({ event: 'under way', of: 'what if', ...progress })),
        underWay.onTold(told => send({ event: 'under way', ...told })),
        () => clearInterval(watch),
      ]
      const job = plans.job()
      send({ event: 'entries', throughSeq: memory.throughSeq() })
      if (job !== null) send({ event: 'job', job })
      await new Promise<void>(resolve => {
        stream.onAbort(resolve)
        quit.push(memory.onClose(resolve))
      })
      for (const stop of quit) stop()
    }),
  )
}
