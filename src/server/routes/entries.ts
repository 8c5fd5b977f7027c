import type { OpenAPIHono } from '@hono/zod-openapi'
import { type EntriesPushed, refusal } from '../../api/index.ts'
import { routes } from '../../api/routes/index.ts'
import { type AnyEntry, entryLine, parseEntry } from '../../record/index.ts'
import type { Served } from '../served.ts'
import { shownEntries, shownEntry } from '../views/entries.ts'

type RefusedEntry = EntriesPushed['refused'][number]

const idIn = (said: unknown): string | null =>
  typeof said === 'object' && said !== null && 'id' in said ? String(said.id) : null

/** Entries in, once each, in order; entries out. */
export const entryRoutes = (app: OpenAPIHono, { memory, now }: Served): void => {
  app.openapi(routes.pullEntries, c => {
    const { after, limit } = c.req.valid('query')
    const entries = memory.after(after, limit).map(entry => shownEntry(memory, entry))
    return c.json({ entries, throughSeq: memory.throughSeq() }, 200)
  })

  app.openapi(routes.entriesShown, c => c.json(shownEntries(memory, c.req.valid('json').ids), 200))

  app.openapi(routes.pushEntries, c => {
    const said = c.req.valid('json').entries
    const good: { readonly index: number; readonly entry: AnyEntry }[] = []
    const refused: RefusedEntry[] = []
    for (const [index, one] of said.entries()) {
      const read = parseEntry(one)
      if (read.kind === 'entry') {
        good.push({ index, entry: read.entry })
        continue
      }
      const problem = read.problems[0]
      refused.push({
        index,
        id: idIn(one),
        refusal: refusal('not-an-entry', { field: problem?.where || 'entry' }, problem?.what),
      })
    }
    const { accepted, known, conflicting } = memory.append(
      good.map(({ entry }) => entry),
      now(),
    )
    const contested = new Set(conflicting)
    for (const { index, entry } of good) {
      const kept = contested.has(entry.id) ? memory.entry(entry.id) : undefined
      if (kept === undefined || entryLine(kept) === entryLine(entry)) continue
      refused.push({
        index,
        id: entry.id,
        refusal: refusal('id-taken', {}),
      })
    }
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
