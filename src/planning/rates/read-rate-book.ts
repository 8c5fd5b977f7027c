import { type Nursery, type Observation, observations } from '../../record/index.ts'
import { dayNumber } from '../../science/index.ts'
import { type RateBook, rateBook, type SeenDays } from './rate-book.ts'
import type { SeenStep } from './seen-step.ts'

const books = new WeakMap<Nursery, { readonly today: string; readonly book: RateBook }>()

/**
 * The rates that a nursery plans with on a day: its protocols' figures, what its batches did, what it has set. A
 * nursery is never changed once folded, so that its book is written once for a day.
 */
export function readRateBook(nursery: Nursery, today: string): RateBook {
  const known = books.get(nursery)
  if (known?.today === today) return known.book
  const book = rateBook({
    steps: seenSteps(nursery, today),
    protocols: nursery.protocols,
    days: seenDays(nursery, today),
    set: nursery.rateSets.filter(set => set.on <= today),
  })
  books.set(nursery, { today, book })
  return book
}

/** Steps that are over, of batches begun by the day. */
export const seenSteps = (
  nursery: Nursery,
  today: string,
): readonly (SeenStep & Pick<Observation, 'batch'>)[] =>
  observations(nursery).flatMap(row => {
    const { protocol, method, step, species, kind, rootstock, grafter, batch, entered, survived } = row
    const begun = nursery.batches.get(batch)!.startedOn
    if (!row.closed || begun > today) return []
    const year = Number(begun.slice(0, 4))
    const month = Number(begun.slice(5, 7))
    const person = grafter
    const cultivars = (nursery.kinds.get(kind) ?? nursery.former.kinds.get(kind))?.cultivars
    const cultivar = cultivars?.length === 1 ? cultivars[0]! : null
    // Named one by one: a spread takes ten times as long, and there may be a hundred thousand rows.
    return {
      protocol,
      method,
      step,
      species,
      kind,
      rootstock,
      cultivar,
      year,
      month,
      person,
      batch,
      entered,
      survived,
    }
  })

const seenDays = (nursery: Nursery, today: string): readonly SeenDays[] =>
  [...nursery.batches.values()].flatMap(({ protocol, outcomes }) =>
    outcomes.flatMap(({ closed, entered, firstEntered, lastLeft, step }) =>
      closed && entered > 0 && lastLeft !== null && firstEntered <= today
        ? [{ protocol, step, days: dayNumber(lastLeft) - dayNumber(firstEntered) }]
        : [],
    ),
  )
