import { requireAbove, requireWhole, requireWithin } from '../bounds.ts'
import { chanceOfCourse } from './chance-of-course.ts'
import { years } from './in-a-year.ts'
import { smallestStart } from './needed.ts'
import { type Course, courseOf, moment, type Rate, weighedByShare } from './rate.ts'

export interface CheapestStartInput {
  readonly wanted: number
  readonly steps: readonly Rate[]
  /** Part of every uncertain rate's variance that is the year's; 0 unless told. */
  readonly yearShare?: number
  /** What it costs to start one plant and carry it through. */
  readonly costPerStart: number
  /** What is lost for each plant short of `wanted`. */
  readonly costPerShort: number
  /** What each plant beyond `wanted` still fetches; 0 unless told. */
  readonly salvagePerSurplus?: number
}

export interface CheapestStart {
  readonly start: number
  /** Chance of at least `wanted`. */
  readonly chance: number
  readonly expectedShort: number
  readonly expectedSurplus: number
  /** costPerStart · start + costPerShort · expectedShort − salvagePerSurplus · expectedSurplus. */
  readonly expectedCost: number
}

/**
 * The start that costs least when too few and too many both cost something (the newsvendor's question, with a random
 * yield): the smallest start at which one plant more no longer pays.
 *
 * One plant more saves costPerShort when it lives and is missing, and fetches salvage when it lives and is not. With
 * P the share that comes through, it lives and is missing with chance E[P · 1(out < wanted)] = E[P] · P*(out < wanted),
 * where P* weighs rates by themselves; so the start is the smallest with
 *   P*(out ≥ wanted) ≥ 1 − (costPerStart − salvage · E[P]) / ((costPerShort − salvage) · E[P]).
 * Where even the first plant does not pay, it is 0.
 *
 * @param input wanted 0 to 1e8; costs in any one currency, costPerStart above salvagePerSurplus · E[P],
 *   costPerShort at least salvagePerSurplus
 * @returns plants and costs; expected numbers with absolute error below 1e-6 plants up to 10,000
 * @throws RangeError for an argument out of range
 * @source Arrow, Harris & Marschak 1951, Econometrica 19:250-272 (critical fractile); weighing by the share is ours
 * @example cheapestStart({ wanted: 100, steps: [{ kind: 'uncertain', alpha: 16, beta: 4 }], costPerStart: 1,
 *   costPerShort: 3 }).start // 125
 */
export function cheapestStart(input: CheapestStartInput): CheapestStart {
  const { wanted, steps, costPerStart, costPerShort } = input
  const salvage = input.salvagePerSurplus ?? 0
  const yearShare = input.yearShare ?? 0
  requireWhole('cheapestStart', 'wanted', wanted, 0, 1e8)
  requireWithin('cheapestStart', 'yearShare', yearShare, 0, 1)
  requireWithin('cheapestStart', 'salvagePerSurplus', salvage, 0, Number.MAX_VALUE)
  requireWithin('cheapestStart', 'costPerShort', costPerShort, salvage, Number.MAX_VALUE)
  const course = courseOf('cheapestStart', steps)
  const share = moment(course, 1)
  requireAbove('cheapestStart', 'costPerStart', costPerStart, salvage * share)

  const allYears = years(course, yearShare, wanted)
  const meanOver = (of: (course: Course) => number) =>
    allYears.reduce((sum, { weight, course: ofYear }) => sum + weight * of(ofYear), 0)
  /** E[P · 1(out ≥ least)] for a start. */
  const livingWithEnough = (least: number, start: number) =>
    meanOver(ofYear => moment(ofYear, 1) * chanceOfCourse(least, start, weighedByShare(ofYear)))

  const enough = 1 - (costPerStart - salvage * share) / ((costPerShort - salvage) * share)
  // Written so that a missing price for being short (0/0, or a share of 0) also means: start none.
  const start = enough > 0 ? smallestFrom() : 0

  function smallestFrom(): number {
    const found = smallestStart(
      { meanShare: share, chance: (least, number) => livingWithEnough(least, number) / share },
      wanted,
      Math.min(enough, 1 - 1e-12),
    )
    return found.start
  }

  // E[(wanted − out)+] = wanted · P(out < wanted) − E[out · 1(out < wanted)], and out · 1(out < wanted) is, plant by
  // plant, start · P · 1(of the other start − 1 fewer than wanted − 1 came through).
  const chance = meanOver(ofYear => chanceOfCourse(wanted, start, ofYear))
  const below = start === 0 ? 0 : start * (share - livingWithEnough(wanted - 1, start - 1))
  const expectedShort = Math.max(0, wanted * (1 - chance) - below)
  const expectedSurplus = Math.max(0, start * share - wanted + expectedShort)
  return {
    start,
    chance,
    expectedShort,
    expectedSurplus,
    expectedCost: costPerStart * start + costPerShort * expectedShort - salvage * expectedSurplus,
  }
}
