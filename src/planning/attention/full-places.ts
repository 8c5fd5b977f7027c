import { dayNumber, weekNumber, weekOfDay, weekText } from '../../science/index.ts'
import { PlaceKind } from '../../trade/index.ts'
import type { Plan } from '../plan.ts'

/** A kind of place that holds less than a bad season may put there. */
export interface FullPlace {
  readonly place: PlaceKind
  readonly week: string
  readonly squareMetres: number
  readonly capacity: number
}

/** Warned of so many weeks ahead. Our choice. */
export const WEEKS_WARNED = 13
/** Rounding is no overflow. */
const HAIR = 1e-6

/** The first week of the next quarter in which a place overflows in one season of ten, for each such place. */
export const fullPlaces = (plan: Pick<Plan, 'loads' | 'firstWeek'>, today: string): readonly FullPlace[] => {
  const first = weekNumber(plan.firstWeek)
  const from = Math.max(0, weekOfDay(dayNumber(today)) - first)
  return plan.loads.flatMap(({ what, id, badYear, capacity }) => {
    const place = PlaceKind.safeParse(id)
    if (what !== 'place' || !place.success) return []
    const week = badYear.findIndex(
      (load, index) => index >= from && index < from + WEEKS_WARNED && load > capacity[index]! * (1 + HAIR),
    )
    return week < 0
      ? []
      : [
          {
            place: place.data,
            week: weekText(first + week),
            squareMetres: badYear[week]!,
            capacity: capacity[week]!,
          },
        ]
  })
}
