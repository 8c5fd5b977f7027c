import { chanceOfAtLeast, needed, normalCdf, normalQuantile } from '../../science/index.ts'
import type { Phrase } from '../../trade/index.ts'
import { DAY_OF_START, daysToReady } from '../rates/days-to-ready.ts'
import type { Course, Season, SeasonStart } from '../season.ts'
import type { LackOf } from './left-free.ts'

/** Begun for a promise: what, when and how many. */
export type StartForPromise = SeasonStart & {
  readonly readyWeek: number
  readonly chance: number
}

export interface EarliestStart {
  readonly start: StartForPromise | null
  /** What stands in the way of the earliest one, if anything does: "the mist bed is full in week 20". */
  readonly lack: Phrase | null
}

/** Of the plants that will be finished, so many are waited for; the slowest are not. */
const WAITED_FOR = 0.95

/**
 * The start that gives a number of a kind soonest, as surely as stated, in what is left free. What may go wrong is shared
 * between number and time: each is made as sure as the root of the wish, so that both together are.
 */
export function earliestStart(
  season: Season,
  asked: { readonly kind: number; readonly number: number; readonly sure: number },
  lackOf: LackOf = () => null,
): EarliestStart {
  const { kind, number, sure } = asked
  const each = Math.sqrt(sure)
  let best: StartForPromise | null = null
  let hindered: { readyWeek: number; lack: Phrase } | null = null
  season.ways.forEach((way, w) => {
    if (way.kind !== kind) return
    const sized = new Map<Course, { number: number; weeks: number; chance: number }>()
    for (let week = 0; week < season.weeks; week++) {
      if (!way.open[week]) continue
      if (best && week > best.readyWeek) break
      const course = way.courses[way.courseOfWeek[week]!]!
      const size = sized.get(course) ?? sizeOf(course, number, each, way)
      sized.set(course, size)
      const readyWeek = week + size.weeks
      if (readyWeek >= season.weeks || (best && best.readyWeek <= readyWeek)) continue
      const start = { way: w, week, number: size.number }
      const lack = lackOf(start)
      if (lack === null) best = { ...start, readyWeek, chance: size.chance }
      else if (!hindered || readyWeek < hindered.readyWeek) hindered = { readyWeek, lack }
    }
  })
  const found = best as StartForPromise | null
  const first = hindered as { readyWeek: number; lack: Phrase } | null
  const isFirst = first !== null && (found === null || first.readyWeek < found.readyWeek)
  return { start: found, lack: isFirst ? first.lack : null }
}

function sizeOf(
  course: Course,
  number: number,
  each: number,
  { tray, smallestBatch }: { readonly tray: number; readonly smallestBatch: number },
): { number: number; weeks: number; chance: number } {
  const steps = course.steps
    .filter(({ beta }) => beta > 0)
    .map(({ alpha, beta }) => ({ kind: 'uncertain', alpha, beta }) as const)
  // So many are to be finished that the quick ones among them are enough.
  const wanted = Math.ceil(number / WAITED_FOR)
  const least = steps.length === 0 ? wanted : needed({ wanted, sure: each, steps }).start
  const start = Math.ceil(Math.max(least, smallestBatch) / tray) * tray
  const { meanDays, batchSdLog, plantSdLog } = daysToReady(course.steps)
  const median = Math.log(Math.max(meanDays, 1e-9)) - (batchSdLog ** 2 + plantSdLog ** 2) / 2
  const slowest = median + normalQuantile(WAITED_FOR) * plantSdLog
  const day = DAY_OF_START + Math.exp(slowest + normalQuantile(each) * batchSdLog)
  const weeks = Math.floor(day / 7)
  const end = Math.log(7 * (weeks + 1) - DAY_OF_START)
  const inTime = batchSdLog > 0 ? normalCdf((end - slowest) / batchSdLog) : 1
  const enough = steps.length === 0 ? 1 : chanceOfAtLeast({ wanted, start, steps })
  return { number: start, weeks, chance: inTime * enough }
}
