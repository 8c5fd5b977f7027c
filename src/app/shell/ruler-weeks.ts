import type { ShownPlan } from '../../api/index.ts'
import { dayAfter, mondayOf, weekAfter, weeksBetween } from '../text/format.ts'

export interface RulerWeek {
  readonly week: string
  /** Planned hours as a share of the busiest week's; 0 without a plan. */
  readonly share: number
  readonly isOver: boolean
  /** The week in which a month begins. */
  readonly opensMonth: boolean
}

const WEEKS = 52

/** The coming year by week: how full each is with planned work. */
export const rulerWeeks = (thisWeek: string, plan: ShownPlan | null): readonly RulerWeek[] => {
  const skills = plan?.loads.filter(({ what }) => what === 'skill') ?? []
  const offset = plan === null ? 0 : weeksBetween(plan.firstWeek, thisWeek)
  const hoursAt = (index: number) =>
    skills.reduce((sum, { expected }) => sum + (expected[index + offset] ?? 0), 0)
  const busiest = Math.max(0, ...Array.from({ length: WEEKS }, (_, index) => hoursAt(index)))
  return Array.from({ length: WEEKS }, (_, index) => {
    const week = weekAfter(thisWeek, index)
    const at = index + offset
    const monday = mondayOf(week)
    return {
      week,
      share: busiest > 0 ? hoursAt(index) / busiest : 0,
      isOver: skills.some(load => (load.expected[at] ?? 0) > (load.capacity[at] ?? 0) * 1.001),
      opensMonth: monday.slice(0, 7) !== dayAfter(monday, 6).slice(0, 7) || monday.endsWith('-01'),
    }
  })
}
