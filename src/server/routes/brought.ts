import type { OpenAPIHono } from '@hono/zod-openapi'
import { refusal } from '../../api/index.ts'
import { routes } from '../../api/routes/index.ts'
import { type BroughtIn, broughtIn } from '../../exchange/index.ts'
import { Entry, entryPhrase, type LoggedEntry, restedOn } from '../../record/index.ts'
import { type EntryId, PersonId } from '../../trade/index.ts'
import type { Served } from '../served.ts'

/** So many reasons are told; the rest are counted. */
const MOST_REASONS = 50

/** What was brought in from spreadsheets, and taking it back as one: each entry struck, but for those that others rest on. */
export const broughtRoutes = (app: OpenAPIHono, { memory, today, now, newId }: Served): void => {
  /** Those of a stretch of the log that still count, entries that strike apart: nothing rests on less. */
  const counting = (entries: readonly LoggedEntry[]): readonly LoggedEntry[] => {
    const { struck } = memory.nursery()
    return entries.filter(({ id, body }) => body.kind !== 'struck/1' && !struck.has(id))
  }
  const writtenBy = ({ fromSeq, throughSeq }: BroughtIn) =>
    counting(memory.after(fromSeq - 1, throughSeq - fromSeq + 1))

  app.openapi(routes.broughtIn, c =>
    c.json(
      broughtIn(memory.log).map(one => ({
        ...{
          id: one.id,
          at: one.at,
          by: one.by === null ? null : PersonId.parse(one.by),
          files: [...one.files],
        },
        written: one.throughSeq - one.fromSeq + 1,
        standing: writtenBy(one).length,
      })),
      200,
    ),
  )

  app.openapi(routes.takeBack, c => {
    const { id } = c.req.valid('param')
    const one = broughtIn(memory.log).find(brought => brought.id === id)
    if (one === undefined) return c.json(refusal('not-brought-in', { id }), 404)
    const written = writtenBy(one)
    const rested = restedOn(written, counting(memory.after(one.throughSeq, Number.MAX_SAFE_INTEGER)), () =>
      counting(memory.after(0, one.fromSeq - 1)),
    )
    const nursery = memory.nursery()
    const reasons = written.flatMap(({ id: entry, body }) => {
      const why = rested.get(entry)
      return why === undefined
        ? []
        : [{ entry, says: entryPhrase(body, nursery), for: entryPhrase(why.body, nursery), on: why.on }]
    })
    const why = `Brought in from ${one.files.join(', ')}, and taken back`
    const strikes = written
      .filter(({ id: entry }) => !rested.has(entry))
      .map(
        ({ id: entry }) =>
          Entry.parse({
            ...{ id: newId(), on: today(), at: null, by: c.req.valid('json').by, device: 'office' },
            body: { kind: 'struck/1', entry, why },
          }) as Entry,
      )
    memory.append(strikes, now())
    return c.json(
      {
        strikes: strikes.map(strike => strike.id as EntryId),
        stay: reasons.length,
        reasons: reasons.slice(0, MOST_REASONS),
      },
      200,
    )
  })
}
