import type { Nursery } from '../../record/index.ts'
import { dayNumber, weekStart } from '../../science/index.ts'
import type { PersonId, Skill } from '../../trade/index.ts'

/** Monday to Friday: common practice, no source. */
const WORKING_DAYS = 5

/** One person's working day: minutes at the protocol's own pace, and how many of them are given away. */
export interface PersonDay {
  readonly person: PersonId
  readonly skills: readonly Skill[]
  /** Day number. */
  readonly day: number
  readonly minutes: number
  readonly overtimeMinutes: number
  given: number
  /** Benches at which work of this day stands. */
  readonly benches: Set<string>
}

/** Everyone's days of a week from a day on. */
export interface WorkWeek {
  /** Working days of the week that are not yet over, rising. */
  readonly days: readonly number[]
  readonly personDays: readonly PersonDay[]
}

/**
 * The working days that are left of a week, and who is there on them, as the nursery entered its people: hours of a week
 * spread evenly over Monday to Friday, none on days away.
 * @param week counted from the Monday of 1970-W01
 */
export function workWeek({ people }: Pick<Nursery, 'people'>, week: number, today: number): WorkWeek {
  const monday = weekStart(week)
  const days = Array.from({ length: WORKING_DAYS }, (_, d) => monday + d).filter(day => day >= today)
  const personDays = [...people.values()].flatMap(
    ({ id, skills, pace, hoursPerWeek, overtimeHoursPerWeek, away }) =>
      days
        .filter(day => !away.some(({ from, to }) => dayNumber(from) <= day && day <= dayNumber(to)))
        .map((day): PersonDay => {
          const minutes = (hours: number) => (hours * 60 * pace) / WORKING_DAYS
          return {
            person: id,
            skills,
            day,
            minutes: minutes(hoursPerWeek),
            overtimeMinutes: minutes(overtimeHoursPerWeek),
            given: 0,
            benches: new Set(),
          }
        }),
  )
  return { days, personDays }
}
