import type { Entry } from '../record/index.ts'
import { dayNumber, dayText } from '../science/index.ts'
import type { PersonId } from '../trade/index.ts'
import type { Teller } from './teller.ts'

/**
 * What goes wrong in every nursery: a count typed wrong and struck, one that does not close, a label lost. They are
 * here so that the screens that deal with them have something to deal with.
 */
export const tellOddThings = (teller: Teller, today: string, by: PersonId): void => {
  const now = dayNumber(today)
  const recent = teller.entries().filter((entry): entry is Entry => dayNumber(entry.on) > now - 60)
  const counts = recent.flatMap(entry =>
    entry.body.kind === 'counted/1' ? [{ entry, body: entry.body }] : [],
  )
  const [wrong, open] = counts
  if (wrong !== undefined) {
    const mistyped = teller.tell(wrong.entry.on, by, { ...wrong.body, dead: wrong.body.dead + 100 })
    if (mistyped !== null)
      teller.tell(wrong.entry.on, by, {
        kind: 'struck/1',
        entry: mistyped,
        why: 'Typed 1 too many in front.',
      })
  }
  if (open !== undefined && open.body.taken > 10)
    teller.tell(dayText(Math.min(now, dayNumber(open.entry.on) + 3)), by, {
      ...open.body,
      taken: open.body.taken - 7,
      dead: 0,
    })
}
