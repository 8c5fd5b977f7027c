import type { Season, SeasonStart } from '../season.ts'
import type { SeasonRule } from './season-draft.ts'

/** Beside the dearest tree and its start, what each plant fewer than was set weighs: more than anything that it may cost. */
const WEIGHT = 10

/**
 * A start that the nursery fixed is begun as it was said, whatever would be cheaper; only what is not to be had (room, hands,
 * wood, rootstocks) makes it less.
 *   start(r, t) ≤ set(r, t)
 *   less(r, t) ≥ set(r, t) − start(r, t)        cost of less: weighed, and not paid
 */
export const setByHand: SeasonRule = draft => {
  const { season, model } = draft
  const dearest = Math.max(1, ...season.kinds.map(({ price }) => price))
  for (const { way, week, number } of season.set ?? []) {
    const start = draft.startColumn[way * season.weeks + week]!
    if (start < 0) continue
    const about = season.ways[way]!.name
    const less = model.column({ name: `fewer/${about}/${week}`, part: 'set by hand', cost: WEIGHT * dearest })
    const row = model.row({ rule: 'setByHand', subject: way, about, week, lower: number, upper: number })
    model.put(row, start, 1)
    model.put(row, less, 1)
    draft.lessThanSet.push(less)
  }
}

/** The number that was set for a start; undefined where none was. */
export const numberSet = ({ set = [] }: Season, { way, week }: Omit<SeasonStart, 'number'>) =>
  set.find(start => start.way === way && start.week === week)?.number
