import type { PersonId, Skill } from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import type { PlannedStart, Task } from '../plan.ts'
import type { Season } from '../season.ts'
import type { ChosenStart, Planned } from './planned.ts'

/**
 * Who works the starts: in the weeks for which the work is given out by the day, those to whom it is given; later, those
 * who have the skill, within their hours and then their overtime.
 */
export function withPeople(
  { season, starts: chosen }: Planned,
  starts: readonly PlannedStart[],
  tasks: readonly Task[],
): PlannedStart[] {
  const begun = grouped(
    tasks.filter(({ kindOfTask }) => kindOfTask === 'start'),
    ({ start }) => start,
  )
  const hands = handsByWeek(season)
  return starts.map((start, s) => {
    const given = begun.get(start.id)
    if (!given) return { ...start, people: peopleOf(chosen[s]!, hands) }
    const byPerson = grouped(given, ({ person, skill }) => `${person} ${skill}`)
    return {
      ...start,
      people: [...byPerson.values()].flatMap(of => {
        const { person, skill } = of[0]!
        const minutes = of.reduce((sum, task) => sum + task.minutes, 0)
        return person === null || skill === null ? [] : [{ person, skill, minutes }]
      }),
    }
  })
}

type Hands = (skill: Skill, week: number, minutes: number) => { person: PersonId; minutes: number }[]

/** Those with the fewest skills are asked first, so that rare hands stay free; a job goes to as few people as can be. */
function handsByWeek(season: Season): Hands {
  const left = season.people.map(person => ({
    id: person.id,
    skills: person.skills,
    minutes: person.minutes.map((minutes, week) => minutes + person.overtimeMinutes[week]!),
  }))
  return (skill, week, minutes) => {
    const given: { person: PersonId; minutes: number }[] = []
    let wanted = minutes
    const able = left
      .filter(person => person.skills.includes(skill) && person.minutes[week]! > 0)
      .sort((a, b) => a.skills.length - b.skills.length || b.minutes[week]! - a.minutes[week]!)
    const alone = able.find(person => person.minutes[week]! >= wanted)
    for (const person of alone ? [alone] : able) {
      if (wanted <= 0) break
      const now = Math.min(wanted, person.minutes[week]!)
      person.minutes[week]! -= now
      wanted -= now
      given.push({ person: person.id, minutes: now })
    }
    return given
  }
}

function peopleOf({ week, number, course }: ChosenStart, give: Hands): PlannedStart['people'] {
  return course.labour.flatMap(({ skill, perPlant, perBatch }) => {
    const at = -course.firstOffset
    const minutes = number * (perPlant[at] ?? 0) + (perBatch[at] ?? 0)
    if (minutes < 0.5) return []
    return give(skill, week, minutes).map(given => ({
      person: given.person,
      skill,
      minutes: Math.round(given.minutes),
    }))
  })
}
