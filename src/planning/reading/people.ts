import type { Nursery } from '../../record/index.ts'
import { dayNumber } from '../../science/index.ts'
import type { SeasonPerson } from '../season.ts'
import type { Weeks } from './weeks.ts'

const WORKING_DAYS = 5

/** People with their minutes by week at the protocol's own pace: Monday to Friday, less the days away. */
export function readPeople({ people }: Pick<Nursery, 'people'>, weeks: Weeks): SeasonPerson[] {
  return [...people.values()].map(person => {
    const away = person.away.map(({ from, to }) => ({ from: dayNumber(from), to: dayNumber(to) }))
    const present = Float64Array.from({ length: weeks.count }, (_, week) => {
      const days = Array.from({ length: WORKING_DAYS }, (_, day) => weeks.monday(week) + day)
      return days.filter(day => !away.some(({ from, to }) => from <= day && day <= to)).length / WORKING_DAYS
    })
    const minutes = (hours: number) => present.map(share => share * hours * 60 * person.pace)
    return {
      id: person.id,
      skills: person.skills,
      minutes: minutes(person.hoursPerWeek),
      overtimeMinutes: minutes(person.overtimeHoursPerWeek),
    }
  })
}
