import type { Season, SeasonStart } from '../season.ts'
import type { SeasonDraft, SeasonRule } from './season-draft.ts'

/** Moving a start that was only shown is worth this part of moving one that was accepted. Our choice. */
const SHOWN_BESIDE_ACCEPTED = 0.4

/**
 * Starts already accepted move only when moving saves more than a stated worth; those that people have only seen, in the
 * plan before, for a part of it.
 *   less(r, t) ≥ accepted(r, t) − start(r, t)        cost of less: worth of moving a start ÷ its number
 * Beginning more than accepted costs nothing but itself.
 */
export const standingStill: SeasonRule = draft => {
  const { season } = draft
  if (season.worthOfMoving === 0) return
  for (const start of season.accepted) {
    const column = stand(draft, start, season.worthOfMoving)
    if (column >= 0)
      draft.lessThanAccepted.push({ way: start.way, week: start.week, accepted: start.number, column })
  }
  const isAccepted = new Set(season.accepted.map(({ way, week }) => way * season.weeks + week))
  for (const start of season.shown ?? [])
    if (!isAccepted.has(start.way * season.weeks + start.week))
      stand(draft, start, worthOfMovingShown(season))
}

export const worthOfMovingShown = ({ worthOfMoving }: Pick<Season, 'worthOfMoving'>): number =>
  SHOWN_BESIDE_ACCEPTED * worthOfMoving

/** The column of how many fewer are begun; −1 where nothing can be begun then. */
function stand(draft: SeasonDraft, { way, week, number }: SeasonStart, worth: number): number {
  const { season, model } = draft
  const start = draft.startColumn[way * season.weeks + week]!
  if (start < 0 || number <= 0) return -1
  const about = season.ways[way]!.name
  const column = model.column({ name: `less/${about}/${week}`, part: 'moving', cost: worth / number })
  const row = model.row({ rule: 'standingStill', subject: way, about, week, lower: number })
  model.put(row, column, 1)
  model.put(row, start, 1)
  return column
}
