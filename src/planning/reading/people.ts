import type { Nursery } from '../../record/index.ts'
import type { SeasonPerson } from '../season.ts'
import { daysShared, type Weeks } from './weeks.ts'

const WORKING_DAYS = 5

/** People with their minutes by week at the protocol's own pace: Monday to Friday, less the days away. */
export function readPeople(nursery: Nursery, weeks: Weeks): SeasonPerson[] {
  return [...nursery.people.values()].map(person => {
    const present = Float64Array.from({ length: weeks.count }, (_, week) => {
      const away = person.away.reduce((sum, span) => sum + daysShared(weeks, week, span, WORKING_DAYS), 0)
      return Math.max(0, WORKING_DAYS - away) / WORKING_DAYS
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
