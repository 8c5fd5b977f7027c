import type { Skill } from '../../trade/index.ts'
import { DAY_OF_START } from '../rates/days-to-ready.ts'
import { skillsOf } from '../reading/skills.ts'
import type { Course, Season } from '../season.ts'
import type { Run, Runs } from './runs.ts'

/** Area by place and work by skill are added up in one season of so many, the first among them. */
export const LOADS_EVERY = 8

/** What some seasons take of the nursery: one in `LOADS_EVERY`. */
export interface SeasonLoads {
  readonly weeks: number
  /** The places where something may stand, and all skills. */
  readonly places: readonly number[]
  readonly skills: readonly Skill[]
  /** By season: m² by place and week, minutes by skill and week. */
  readonly squareMetres: Float32Array
  readonly minutes: Float32Array
}

/** The loads of seasons as they are added up. */
export interface Loads extends SeasonLoads {
  /** What is added from here on belongs to this one of the seasons. */
  turnTo(row: number): void
  /** A run that began with `number`; `alive[j]` is the share alive when step j begins, and at last what is finished. */
  addRun(run: Run, number: number, alive: Float64Array, days: number): void
  addFinished(line: number, week: number, number: number): void
}

export function noLoads(season: Season, { free, grafts, lines }: Runs, seasons: number): Loads {
  const { weeks, kinds } = season
  const skills = skillsOf(season)
  const stood = [...free, ...grafts].flatMap(({ steps }) => steps.map(({ place }) => place))
  const keptAt = lines.map(({ kind }) => kinds[kind]!.standsAt?.place ?? -1)
  const places = [...new Set([...stood, ...keptAt])].filter(place => place >= 0).sort((a, b) => a - b)
  const rowOf = new Map(places.map((place, row) => [place, row]))
  const squareMetres = new Float32Array(seasons * places.length * weeks)
  const minutes = new Float32Array(seasons * skills.length * weeks)
  const works = new Map<Course, readonly Work[]>()
  const workOf = (run: Run): readonly Work[] => {
    let known = works.get(run.course)
    if (!known) {
      known = worksOf(run, skills)
      works.set(run.course, known)
    }
    return known
  }
  /** Work on living batches is what the reading expects of them. */
  const living = new Float64Array(skills.length * weeks)
  for (const batch of season.batches)
    for (const { skill, minutes: byWeek } of batch.labour) {
      const from = skills.indexOf(skill) * weeks
      for (let w = 0; w < Math.min(weeks, byWeek.length); w++) living[from + w]! += byWeek[w]!
    }
  for (let row = 0; row < seasons; row++) minutes.set(living, row * living.length)
  /** Where the season begins in the two. */
  let areaFrom = 0
  let minutesFrom = 0

  return {
    weeks,
    places,
    skills,
    squareMetres,
    minutes,
    turnTo(row) {
      areaFrom = row * places.length * weeks
      minutesFrom = row * skills.length * weeks
    },
    addRun(run, number, alive, days) {
      const begun = 7 * run.week + (run.isLiving ? 0 : DAY_OF_START)
      run.steps.forEach((step, j) => {
        const row = rowOf.get(step.place)
        if (row === undefined) return
        const area = number * alive[j]! * step.squareMetres
        const from = begun + step.from * days
        const to = begun + step.to * days
        for (let w = Math.floor(from / 7); w < weeks && 7 * w < to; w++)
          squareMetres[areaFrom + row * weeks + w]! +=
            (area * (Math.min(to, 7 * w + 7) - Math.max(from, 7 * w))) / 7
      })
      if (run.isLiving) return
      for (const { skill, offset, perPlant, perBatch, step, expectedAlive } of workOf(run)) {
        const w = run.week + offset
        if (w < 0 || w >= weeks) continue
        const asExpected = expectedAlive > 0 ? alive[step]! / expectedAlive : 0
        minutes[minutesFrom + skill * weeks + w]! += number * perPlant * asExpected + perBatch
      }
    },
    addFinished(line, week, number) {
      const { standsAt } = kinds[lines[line]!.kind]!
      if (standsAt)
        squareMetres[areaFrom + rowOf.get(standsAt.place)! * weeks + week]! += number * standsAt.squareMetres
    },
  }
}

/** Work of one week of a course, and the step in which it falls by the average timetable. */
interface Work {
  readonly skill: number
  readonly offset: number
  readonly perPlant: number
  readonly perBatch: number
  readonly step: number
  readonly expectedAlive: number
}

function worksOf(run: Run, skills: readonly Skill[]): Work[] {
  const { course, steps } = run
  const days = Math.exp(run.logMedianDays)
  const works: Work[] = []
  for (const { skill, perPlant, perBatch } of course.labour)
    for (let k = 0; k < perPlant.length; k++) {
      if (perPlant[k] === 0 && perBatch[k] === 0) continue
      const offset = course.firstOffset + k
      const day = 7 * offset
      const at = steps.findIndex(step => day < step.to * days)
      const step = day <= 0 ? 0 : at < 0 ? steps.length : at
      const expectedAlive = steps.slice(0, step).reduce((share, { mean }) => share * mean, 1)
      works.push({
        skill: skills.indexOf(skill),
        offset,
        perPlant: perPlant[k]!,
        perBatch: perBatch[k]!,
        step,
        expectedAlive,
      })
    }
  return works
}
