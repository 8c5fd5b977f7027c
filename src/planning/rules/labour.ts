import type { Skill } from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import type { Season } from '../season.ts'
import { courseOf, type SeasonRule } from './season-draft.ts'

/** What cannot be done for want of hands costs this many times an hour of overtime: it is only for what lives already. */
const UNDONE_TIMES_OVERTIME = 10

/** People who have exactly the same skills, taken together. */
export interface Crew {
  readonly skills: readonly Skill[]
  readonly people: readonly number[]
  readonly minutes: Float64Array
  readonly overtimeMinutes: Float64Array
}

export function crewsOf(season: Season): Crew[] {
  const bySkills = grouped(
    season.people.map((_, index) => index),
    index => [...season.people[index]!.skills].sort().join(' + '),
  )
  return [...bySkills.entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, people]) => {
      const sum = (of: (index: number) => Float64Array) =>
        Float64Array.from({ length: season.weeks }, (_, w) =>
          people.reduce((total, i) => total + of(i)[w]!, 0),
        )
      return {
        skills: [...season.people[people[0]!]!.skills].sort(),
        people,
        minutes: sum(i => season.people[i]!.minutes),
        overtimeMinutes: sum(i => season.people[i]!.overtimeMinutes),
      }
    })
}

/**
 * Minutes of each skill in a week are given by people who have it, and an hour of theirs is spent once.
 *   Σ minutes(r, skill, w − t) · start(r, t) + minutes for living batches ≤ Σ given(crew, skill, w)
 *   Σ given(crew, ·, w) − overtime(crew, w) ≤ minutes of the crew's people
 * Care of living batches that nobody has time for is left undone at a high price, so that a plan exists.
 * Said as: "{skill}, weeks {from} to {to}: one more hour is worth {worth}."
 */
export const labour: SeasonRule = draft => {
  const { season, model } = draft
  const { weeks, prices } = season
  const crews = crewsOf(season)
  const living = new Map<Skill, Float64Array>()
  for (const { labour: work } of season.batches)
    for (const { skill, minutes } of work) {
      const sum = living.get(skill) ?? new Float64Array(weeks)
      for (let w = 0; w < Math.min(weeks, minutes.length); w++) sum[w]! += minutes[w]!
      living.set(skill, sum)
    }

  const rowOf = draft.labourRows
  skillsOf(season).forEach((skill, s) => {
    const rows: number[] = []
    for (let week = 0; week < weeks; week++) {
      const upper = -(living.get(skill)?.[week] ?? 0)
      const row = model.row({ rule: 'labour', subject: s, about: skill, week, upper })
      if (upper < 0) {
        const name = `undone/${skill}/${week}`
        const cost = prices.overtimeMinute * UNDONE_TIMES_OVERTIME
        model.put(row, model.column({ name, part: 'undone', cost, upper: -upper }), -1)
      }
      rows.push(row)
    }
    rowOf.set(skill, rows)
  })

  crews.forEach((crew, c) => {
    const about = crew.people.map(i => season.people[i]!.id).join(' + ')
    const useful = crew.skills.filter(skill => rowOf.has(skill))
    if (useful.length === 0) return
    for (let week = 0; week < weeks; week++) {
      const upper = crew.minutes[week]!
      const overtime = crew.overtimeMinutes[week]!
      if (upper + overtime === 0) continue
      const row = model.row({ rule: 'hours', subject: c, about, week, upper })
      for (const skill of useful) {
        const column = model.column({
          name: `work/${about}/${skill}/${week}`,
          part: 'labour',
          cost: prices.minute,
        })
        model.put(row, column, 1)
        model.put(rowOf.get(skill)![week]!, column, -1)
        draft.work.push({ crew: c, skill, week, column })
      }
      if (overtime > 0) {
        const name = `overtime/${about}/${week}`
        const cost = Math.max(0, prices.overtimeMinute - prices.minute)
        model.put(row, model.column({ name, part: 'overtime', cost, upper: overtime }), -1)
      }
    }
  })

  for (const { way, week, column } of draft.starts) {
    const course = courseOf(season, way, week)
    for (const { skill, perPlant, perBatch } of course.labour) {
      const rows = rowOf.get(skill)!
      for (let k = 0; k < perPlant.length; k++) {
        const w = week + course.firstOffset + k
        const ofBatch = draft.isWhole ? 0 : perBatch[k]! / draft.largestStart[way]!
        if (w >= 0 && w < weeks) model.put(rows[w]!, column, perPlant[k]! + ofBatch)
      }
    }
  }
}

/** The skills that any work asks for, in the order of the rows. */
export function skillsOf(season: Season): readonly Skill[] {
  const skills = new Set<Skill>()
  for (const batch of season.batches) for (const { skill } of batch.labour) skills.add(skill)
  for (const way of season.ways)
    for (const course of way.courses) for (const { skill } of course.labour) skills.add(skill)
  return [...skills].sort()
}
