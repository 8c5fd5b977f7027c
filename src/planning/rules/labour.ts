import type { Skill } from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import { skillsOf } from '../reading/skills.ts'
import type { Season } from '../season.ts'
import { type Capacity, rowEntries, type Taken } from './capacity.ts'
import { courseOf, type SeasonDraft, type SeasonRule } from './season-draft.ts'

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
 * One person's hour is spent once. For every set of skills T and every week, the work that needs a skill of T is no
 * more than the minutes of the people who have any of them:
 *   Σ minutes(r, T, w − t) · start(r, t) − Σ overtime(crew, w) ≤ Σ minutes(crew, w) − minutes for living batches
 * These rows hold exactly when every minute of work can be given to someone with the skill (the condition of Hall for
 * assignments). Work is paid by the minute, overtime at its own price. Care of living batches comes first.
 * Said as: "{skills}, weeks {from} to {to}: one more hour is worth {worth}."
 * @source Hall 1935, J. London Math. Soc. 10:26-30; for amounts, Gale 1957, Pacific J. Math. 7:1073-1082
 */
export const labour: SeasonRule = draft => {
  const { season, model } = draft
  const crews = crewsOf(season)
  const overtime = crews.map(({ people, overtimeMinutes }) => {
    const about = people.map(i => season.people[i]!.id).join(' + ')
    return Array.from(overtimeMinutes, (upper, week) => {
      if (upper === 0) return -1
      const column = model.column({
        name: `overtime/${about}/${week}`,
        part: 'overtime',
        cost: Math.max(0, season.prices.overtimeMinute - season.prices.minute),
        upper,
      })
      draft.overtime.push({ people, week, column })
      return column
    })
  })
  for (const { way, week, column } of draft.starts) {
    let minutes = 0
    for (const { perPlant, perBatch } of courseOf(season, way, week).labour)
      for (let k = 0; k < perPlant.length; k++)
        minutes += perPlant[k]! + (draft.isWhole ? 0 : perBatch[k]! / draft.largestStart[way]!)
    model.addCost(column, minutes * season.prices.minute)
  }
  draft.capacities.push(labourCapacity(draft, crews, overtime))
}

/** Minutes of work that a column brings, by skill and week. */
export interface WorkOf {
  readonly column: number
  readonly skill: number
  readonly from: number
  readonly minutes: Float64Array
}

function labourCapacity(
  draft: SeasonDraft,
  crews: readonly Crew[],
  overtime: readonly (readonly number[])[],
): Capacity {
  const { season } = draft
  const { weeks } = season
  const skills = skillsOf(season)
  const index = new Map(skills.map((skill, s) => [skill, s]))
  const bitsOf = crews.map(crew =>
    crew.skills.reduce((bits, s) => bits | (index.has(s) ? 1 << index.get(s)! : 0), 0),
  )
  const minutesOf = (labour: Taken['labour']) => {
    const by = skills.map(() => new Float64Array(weeks))
    for (const { skill, minutes } of labour)
      for (let w = 0; w < Math.min(weeks, minutes.length); w++) by[index.get(skill)!]![w]! += minutes[w]!
    return by
  }
  const living = minutesOf(season.batches.flatMap(batch => batch.labour))
  const taken = minutesOf(season.taken?.labour ?? [])
  const sets = setsThatMatter(skills.length, bitsOf)
  const members = sets.map(set => ({
    set,
    skillsIn: skills.flatMap((_, s) => (set & (1 << s) ? [s] : [])),
    crewsIn: crews.flatMap((_, c) => (bitsOf[c]! & set ? [c] : [])),
  }))
  let workOf: readonly WorkOf[] | undefined
  const works = () => {
    workOf ??= workOfColumns(draft, index)
    return workOf
  }

  /**
   * Minutes that people with any skill of the set have beside their care of living batches and what is given away. Below
   * none where others work overtime already: then that much of it is theirs.
   */
  const freeInWeek = (set: number, week: number) => {
    let minutes = 0
    let more = 0
    crews.forEach((crew, c) => {
      if (!(bitsOf[c]! & set)) return
      minutes += crew.minutes[week]!
      more += crew.overtimeMinutes[week]!
    })
    let given = 0
    skills.forEach((_, s) => {
      if (!(set & (1 << s))) return
      minutes -= living[s]![week]!
      given += taken[s]![week]!
    })
    return Math.max(0, minutes) - Math.min(given, Math.max(0, minutes) + more)
  }
  const free = new Map(
    sets.map(set => [set, Float64Array.from({ length: weeks }, (_, week) => freeInWeek(set, week))]),
  )
  const freeMinutes = (set: number, week: number) => free.get(set)![week]!
  /** Work of less than this in all is too much for nobody. */
  const leastFree = Array.from({ length: weeks }, (_, week) =>
    Math.min(...sets.map(set => freeMinutes(set, week))),
  )
  const row = (set: number, week: number) => {
    const entries = rowEntries()
    for (const { column, skill, from, minutes } of works())
      if (set & (1 << skill)) entries.add(column, minutes[week - from] ?? 0)
    crews.forEach((_, c) => {
      if (bitsOf[c]! & set && overtime[c]![week]! >= 0) entries.add(overtime[c]![week]!, -1)
    })
    const about = skills.filter((_, s) => set & (1 << s)).join(' + ')
    const upper = freeMinutes(set, week)
    return { rule: 'labour', subject: set, about, week, upper, ...entries.done() }
  }

  const loadOf = (columnValue: Float64Array) => {
    const load = skills.map(() => new Float64Array(weeks))
    for (const { column, skill, from, minutes } of works()) {
      const number = columnValue[column]!
      if (number <= 0) continue
      for (let k = Math.max(0, -from); k < Math.min(minutes.length, weeks - from); k++)
        load[skill]![from + k]! += number * minutes[k]!
    }
    return load
  }

  return {
    rule: 'labour',
    row,
    taken: columnValue => ({
      area: [],
      labour: loadOf(columnValue).map((minutes, s) => ({ skill: skills[s]!, minutes })),
    }),
    all: () => sets.flatMap(set => Array.from({ length: weeks }, (_, week) => row(set, week))),
    broken(columnValue, tolerance) {
      const load = loadOf(columnValue)
      const rows = []
      for (let week = 0; week < weeks; week++) {
        if (load.reduce((sum, minutes) => sum + minutes[week]!, 0) <= leastFree[week]!) continue
        let worst = -1
        let most = tolerance
        const worked = crews.map((_, c) => {
          const column = overtime[c]![week]!
          return column >= 0 ? columnValue[column]! : 0
        })
        for (const { set, skillsIn, crewsIn } of members) {
          let over = -freeMinutes(set, week)
          for (const s of skillsIn) over += load[s]![week]!
          for (const c of crewsIn) over -= worked[c]!
          if (over > most) {
            worst = set
            most = over
          }
        }
        if (worst >= 0) rows.push(row(worst, week))
      }
      return rows
    },
  }
}

/**
 * Of all sets of skills, those whose row is not the sum of two others': each skill by itself, and sets that a shared
 * person ties together.
 */
function setsThatMatter(skills: number, bitsOf: readonly number[]): number[] {
  const sets: number[] = []
  for (let set = 1; set < 1 << skills; set++) if (isTied(set, bitsOf)) sets.push(set)
  return sets
}

function isTied(set: number, bitsOf: readonly number[]): boolean {
  let reached = set & -set
  for (let more = true; more; ) {
    more = false
    for (const bits of bitsOf) {
      const added = (bits & set) | reached
      if (bits & reached && added !== reached) {
        reached = added
        more = true
      }
    }
  }
  return reached === set
}

function workOfColumns(
  { season, starts, isWhole, wholeStarts, largestStart }: SeasonDraft,
  index: ReadonlyMap<Skill, number>,
): WorkOf[] {
  const works: WorkOf[] = []
  /** By way and course: the same for every week that has it. */
  const minutesOf = new Map<string, readonly Float64Array[]>()
  const minutesOfStart = (way: number, week: number): readonly Float64Array[] => {
    const { labour } = courseOf(season, way, week)
    if (isWhole) return labour.map(({ perPlant }) => perPlant)
    const name = `${way} ${season.ways[way]!.courseOfWeek[week]}`
    const known =
      minutesOf.get(name) ??
      labour.map(({ perPlant, perBatch }) =>
        perPlant.map((each, k) => each + perBatch[k]! / largestStart[way]!),
      )
    minutesOf.set(name, known)
    return known
  }
  for (const { way, week, column } of starts) {
    const course = courseOf(season, way, week)
    const from = week + course.firstOffset
    const minutes = minutesOfStart(way, week)
    course.labour.forEach(({ skill }, l) => {
      works.push({ column, skill: index.get(skill)!, from, minutes: minutes[l]! })
    })
  }
  for (const { way, week, begun } of wholeStarts) {
    const course = courseOf(season, way, week)
    for (const { skill, perBatch } of course.labour)
      works.push({
        column: begun,
        skill: index.get(skill)!,
        from: week + course.firstOffset,
        minutes: perBatch,
      })
  }
  return works
}
