import type { PersonId, Skill } from '../../trade/index.ts'
import type { Season } from '../season.ts'

/** Hands out work to people who have the skill, within their hours and then their overtime. */
export interface Hands {
  give(skill: Skill, week: number, minutes: number): { readonly person: PersonId; readonly minutes: number }[]
}

/**
 * Those with the fewest skills are asked first, so that rare hands stay free for what only they can do; a job goes
 * to as few people as can be.
 */
export function hands(season: Season): Hands {
  const left = season.people.map(person => ({
    id: person.id,
    skills: person.skills,
    minutes: person.minutes.map((minutes, week) => minutes + person.overtimeMinutes[week]!),
  }))
  return {
    give(skill, week, minutes) {
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
    },
  }
}
