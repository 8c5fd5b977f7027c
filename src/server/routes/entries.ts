import type { OpenAPIHono } from '@hono/zod-openapi'
import type { EntriesPushed } from '../../api/index.ts'
import { routes } from '../../api/routes/index.ts'
import { Entry } from '../../record/index.ts'
import { refusal, type Served } from '../served.ts'
import { shownEntry } from '../views/entries.ts'

/** Entries in, once each, in order; entries out. */
export const entryRoutes = (app: OpenAPIHono, { memory, now }: Served): void => {
  app.openapi(routes.pullEntries, c => {
    const { after, limit } = c.req.valid('query')
    return c.json(
      {
        entries: memory.after(after, limit).map(entry => shownEntry(memory, entry)),
        throughSeq: memory.throughSeq(),
      },
      200,
    )
  })

  app.openapi(routes.pushEntries, c => {
    const said = c.req.valid('json').entries
    const good: Entry[] = []
    const refused: EntriesPushed['refused'][number][] = []
    said.forEach((one, index) => {
      const read = Entry.safeParse(one)
      if (read.success) good.push(read.data as Entry)
      else {
        const issue = read.error.issues[0]
        const id = typeof one === 'object' && one !== null && 'id' in one ? String(one.id) : null
        refused.push({
          index,
          id,
          refusal: refusal(
            issue?.message ?? 'Not an entry',
            issue?.path.join('.') || 'entry',
            'Correct the field and send it again; nothing of this entry was kept.',
          ),
        })
      }
    })
    const { accepted, known } = memory.append(good, now())
    return c.json(
      {
        accepted: accepted.map(({ id, seq }) => ({ id, seq })),
        known: [...known],
        refused,
        throughSeq: memory.throughSeq(),
      },
      200,
    )
  })
}
