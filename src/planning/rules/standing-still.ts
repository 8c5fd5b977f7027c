import type { SeasonRule } from './season-draft.ts'

/**
 * Starts already accepted move only when moving saves more than a stated worth.
 *   less(r, t) ≥ accepted(r, t) − start(r, t)        cost of less: worth of moving a start ÷ its number
 * Beginning more than accepted costs nothing but itself.
 */
export const standingStill: SeasonRule = draft => {
  const { season, model } = draft
  if (season.worthOfMoving === 0) return
  for (const { way, week, number } of season.accepted) {
    const start = draft.startColumn[way * season.weeks + week]!
    if (start < 0 || number <= 0) continue
    const about = season.ways[way]!.name
    const column = model.column({
      name: `less/${about}/${week}`,
      part: 'moving',
      cost: season.worthOfMoving / number,
    })
    const row = model.row({ rule: 'standingStill', subject: way, about, week, lower: number })
    model.put(row, column, 1)
    model.put(row, start, 1)
    draft.lessThanAccepted.push({ way, week, accepted: number, column })
  }
}
