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
  /** The person's whole week. */
  readonly week: { given: number; readonly minutes: number }
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
    ({ id, skills, pace, hoursPerWeek, overtimeHoursPerWeek, away }) => {
      const minutes = (hours: number) => (hours * 60 * pace) / WORKING_DAYS
      const there = days.filter(
        day => !away.some(({ from, to }) => dayNumber(from) <= day && day <= dayNumber(to)),
      )
      const whole = { given: 0, minutes: there.length * minutes(hoursPerWeek) }
      return there.map(
        (day): PersonDay => ({
          person: id,
          skills,
          day,
          minutes: minutes(hoursPerWeek),
          overtimeMinutes: minutes(overtimeHoursPerWeek),
          given: 0,
          week: whole,
          benches: new Set(),
        }),
      )
    },
  )
  return { days, personDays }
}

/** Gives minutes of a person's day away. */
export function giveMinutes(own: PersonDay, minutes: number, bench: string | null): void {
  own.given += minutes
  own.week.given += minutes
  if (bench !== null) own.benches.add(bench)
}
