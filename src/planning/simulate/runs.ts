import { isoWeek, weekStart } from '../../science/index.ts'
import { DAY_OF_START, daysToReady } from '../rates/days-to-ready.ts'
import type { Course, CourseStep, Season, SeasonStart } from '../season.ts'
import { keyOf } from './key-of.ts'
import { shareCurve } from './share-curve.ts'
import { startsWithWood } from './wood.ts'
import { type Workable, workableByAge } from './workable.ts'

/**
 * What runs through a season: each planned start, and each portion of a living batch, through the rest of its course.
 * All are independent given the years, so each has a substream of its own.
 */
export interface Run {
  readonly line: number
  /** What it begins with (of a start: as far as there is wood). */
  readonly number: number
  readonly planned: number
  readonly week: number
  readonly key: number
  /** Portions of one batch share its luck but for their own losses: uniform numbers drawn, and which is this one's. */
  readonly ownDraws: number
  readonly ownDraw: number
  readonly isOnHold: boolean
  readonly course: Course
  readonly steps: readonly RunStep[]
  /** Steps over before rootstocks are taken; rootstocks are taken in `useWeek`. */
  readonly stepsBeforeRootstock: number
  readonly useWeek: number
  readonly rootstockLines: readonly { readonly line: number; readonly workable: Workable | null }[]
  readonly logMedianDays: number
  readonly batchSdLog: number
  readonly plantSdLog: number
  readonly isLiving: boolean
}

export interface RunStep {
  /** Where its curve begins in `curves`. */
  readonly curve: number
  readonly yearEffect: number
  readonly yearWeight: number
  readonly ownWeight: number
  /** Mean share of the step. */
  readonly mean: number
  readonly place: number
  readonly squareMetres: number
  /** Part of the days to ready that is over when the step begins and ends. */
  readonly from: number
  readonly to: number
}

/** Finished plants of one kind whose stems thicken alike. */
export interface StockLine {
  readonly kind: number
  readonly usableWeeks: number
  readonly caliper: Course['caliper']
}

export interface Runs {
  /** Runs that take no rootstock, then those that do in order of the week in which they take it. */
  readonly free: readonly Run[]
  readonly grafts: readonly Run[]
  readonly lines: readonly StockLine[]
  /** Finished already: by line, weeks ago. */
  readonly standing: readonly { readonly line: number; readonly weeksAgo: number; readonly number: number }[]
  readonly curves: Float64Array
  /** Key of each year effect: a step of a group of method and species in a calendar year. */
  readonly yearKeys: readonly number[]
}

export function runsOf(season: Season, starts: readonly SeasonStart[]): Runs {
  const lines: StockLine[] = []
  const lineOf = (kind: number, caliper: Course['caliper']): number => {
    const known = lines.findIndex(line => line.kind === kind && sameCaliper(line.caliper, caliper))
    if (known >= 0) return known
    return lines.push({ kind, usableWeeks: season.kinds[kind]!.usableWeeks, caliper }) - 1
  }
  const lineCache = new Map<Course, number>()
  const lineOfCourse = (kind: number, course: Course): number => {
    const known = lineCache.get(course)
    if (known !== undefined && lines[known]!.kind === kind) return known
    const line = lineOf(kind, course.caliper)
    lineCache.set(course, line)
    return line
  }

  const curveOf = new Map<string, number>()
  const curveNumbers: number[] = []
  const curve = (alpha: number, beta: number): number => {
    const name = `${alpha}/${beta}`
    let from = curveOf.get(name)
    if (from === undefined) {
      from = curveNumbers.length
      for (const number of shareCurve(alpha, beta)) curveNumbers.push(number)
      curveOf.set(name, from)
    }
    return from
  }

  const windows = new Map<string, Workable>()
  const workable = ({ caliper, usableWeeks }: StockLine, minMm: number, maxMm: number): Workable | null => {
    if (!caliper) return null
    const { meanMmWhenReady, mmPerWeek, spreadShare } = caliper
    const name = [meanMmWhenReady, mmPerWeek, spreadShare, minMm, maxMm, usableWeeks].join('/')
    let known = windows.get(name)
    if (!known) {
      known = workableByAge(caliper, usableWeeks, minMm, maxMm)
      windows.set(name, known)
    }
    return known
  }

  const yearEffects = new Map<string, number>()
  const yearKeys: number[] = []
  const years = new Map<number, number>()
  /** One for each step: a bad year for taking need not be a bad year for growing on. */
  const yearEffect = (group: number, step: string, week: number): number => {
    let year = years.get(week)
    if (year === undefined) {
      year = isoWeek(weekStart(season.firstWeek + week)).year
      years.set(week, year)
    }
    const name = `${season.yearGroups[group]}, ${step}, ${year}`
    let effect = yearEffects.get(name)
    if (effect === undefined) {
      effect = yearKeys.push(keyOf(name)) - 1
      yearEffects.set(name, effect)
    }
    return effect
  }

  /** The steps from `first` on; the first may have its own Beta, and `daysIn` days of it are over. */
  const walk = (
    steps: readonly CourseStep[],
    week: number,
    group: number,
    daysIn: number,
    first?: { alpha: number; beta: number },
  ) => {
    const days = daysToReady(steps, daysIn)
    const lengths = steps.map((step, i) => daysToReady([step], i === 0 ? daysIn : 0).meanDays)
    const all = lengths.reduce((sum, length) => sum + length, 0)
    let before = 0
    const walked = steps.map((step, i): RunStep => {
      const { alpha, beta } = i === 0 && first ? first : step
      const from = all > 0 ? before / all : 0
      const begins = week + Math.floor((DAY_OF_START + before) / 7)
      before += lengths[i]!
      return {
        curve: curve(alpha, beta),
        yearEffect: yearEffect(group, step.step, begins),
        yearWeight: Math.sqrt(step.yearShare),
        ownWeight: Math.sqrt(1 - step.yearShare),
        mean: alpha + beta > 0 ? alpha / (alpha + beta) : 0,
        place: step.place ?? -1,
        squareMetres: step.squareMetresPerPlant,
        from,
        to: all > 0 ? before / all : 0,
      }
    })
    const variance = days.batchSdLog ** 2 + days.plantSdLog ** 2
    return {
      steps: walked,
      logMedianDays: days.meanDays > 0 ? Math.log(days.meanDays) - variance / 2 : Number.NEGATIVE_INFINITY,
      batchSdLog: days.batchSdLog,
      plantSdLog: days.plantSdLog,
    }
  }

  const standing: { line: number; weeksAgo: number; number: number }[] = []
  const free: Run[] = []
  const grafts: Run[] = []

  for (const batch of season.batches) {
    const { course } = batch
    const line = lineOfCourse(batch.kind, course)
    const key = keyOf(`batch ${batch.id}`)
    batch.portions.forEach((portion, index) => {
      if (portion.number <= 0) return
      if (portion.step >= course.steps.length) {
        if (!batch.onHold)
          standing.push({ line, weeksAgo: batch.finishedWeeksAgo, number: Math.round(portion.number) })
        return
      }
      const number = Math.round(portion.number)
      const steps = course.steps.slice(portion.step)
      free.push({
        line,
        number,
        planned: number,
        week: 0,
        key,
        ownDraws: batch.portions.length,
        ownDraw: index,
        isOnHold: batch.onHold,
        course,
        stepsBeforeRootstock: 0,
        useWeek: 0,
        rootstockLines: [],
        isLiving: true,
        ...walk(steps, 0, batch.yearGroup, portion.daysIn, portion),
      })
    })
  }

  // Lines of all ways exist before grafts look for their rootstocks.
  const together = oneForEachWeek(starts)
  for (const start of together) {
    const way = season.ways[start.way]!
    lineOfCourse(way.kind, way.courses[way.courseOfWeek[start.week]!]!)
  }
  startsWithWood(season, together).forEach((start, index) => {
    const planned = Math.round(together[index]!.number)
    if (planned <= 0) return
    const way = season.ways[start.way]!
    const course = way.courses[way.courseOfWeek[start.week]!]!
    const walked = walk(course.steps, start.week, way.yearGroup, 0)
    const { rootstock } = course
    const run: Run = {
      line: lineOfCourse(way.kind, course),
      number: Math.round(start.number),
      planned,
      week: start.week,
      key: keyOf(`start ${way.name} ${season.firstWeek + start.week}`),
      ownDraws: 2,
      ownDraw: 0,
      isOnHold: false,
      course,
      stepsBeforeRootstock: rootstock && rootstock.offset > 0 ? stepsOver(walked, rootstock.offset) : 0,
      useWeek: start.week + (rootstock ? Math.max(0, rootstock.offset) : 0),
      rootstockLines: rootstock
        ? rootstock.kinds.flatMap(kind =>
            lines.flatMap((line, l) =>
              line.kind === kind
                ? [{ line: l, workable: workable(line, rootstock.minMm, rootstock.maxMm) }]
                : [],
            ),
          )
        : [],
      isLiving: false,
      ...walked,
    }
    if (rootstock) grafts.push(run)
    else free.push(run)
  })
  grafts.sort((a, b) => a.useWeek - b.useWeek || a.week - b.week)
  return { free, grafts, lines, standing, curves: Float64Array.from(curveNumbers), yearKeys }
}

/** Starts by one way in one week are one batch, and have one luck. */
function oneForEachWeek(starts: readonly SeasonStart[]): SeasonStart[] {
  const together = new Map<string, SeasonStart>()
  for (const start of starts) {
    const name = `${start.way}/${start.week}`
    const before = together.get(name)
    together.set(name, before ? { ...start, number: before.number + start.number } : start)
  }
  return [...together.values()]
}

/** Steps that are over, on average, before the week of the offset. */
function stepsOver(walked: { steps: readonly RunStep[]; logMedianDays: number }, offset: number): number {
  const all = Math.exp(walked.logMedianDays)
  const over = walked.steps.findIndex(step => DAY_OF_START + step.to * all > 7 * offset + DAY_OF_START)
  return over < 0 ? walked.steps.length : over
}

const sameCaliper = (a: Course['caliper'], b: Course['caliper']) =>
  a === b ||
  (a !== null &&
    b !== null &&
    a.meanMmWhenReady === b.meanMmWhenReady &&
    a.mmPerWeek === b.mmPerWeek &&
    a.spreadShare === b.spreadShare)
