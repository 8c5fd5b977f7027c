import type { PlanHead } from '../../api/index.ts'
import { dayAfter, mondayOf, weekAfter, weeksBetween } from '../text/format.ts'

export interface RulerWeek {
  readonly week: string
  /** Planned hours of all hands; 0 without a plan. */
  readonly hours: number
  /** Planned hours as a share of the busiest week's; 0 without a plan. */
  readonly share: number
  readonly isOver: boolean
  /** The week in which a month begins. */
  readonly opensMonth: boolean
}

const WEEKS = 52

/** The coming year by week: how full each is with planned work. */
export const rulerWeeks = (thisWeek: string, plan: PlanHead | null): readonly RulerWeek[] => {
  const offset = plan === null ? 0 : weeksBetween(plan.firstWeek, thisWeek)
  const at = (index: number) => plan?.hands[index + offset]
  const busiest = Math.max(0, ...Array.from({ length: WEEKS }, (_, index) => at(index)?.hours ?? 0))
  return Array.from({ length: WEEKS }, (_, index) => {
    const week = weekAfter(thisWeek, index)
    const monday = mondayOf(week)
    return {
      week,
      hours: at(index)?.hours ?? 0,
      share: busiest > 0 ? (at(index)?.hours ?? 0) / busiest : 0,
      isOver: at(index)?.isOver ?? false,
      opensMonth: monday.slice(0, 7) !== dayAfter(monday, 6).slice(0, 7) || monday.endsWith('-01'),
    }
  })
}
