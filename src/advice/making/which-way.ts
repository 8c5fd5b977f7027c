import type { Skill, Step } from '../../trade/index.ts'
import type { Spread } from '../answer.ts'
import { type MakingOfOne, makingOfOne, type NurseryCosts, strayOf, type WayToMake } from './cost-of-way.ts'

/** A way to make a tree, as the nursery looks at it. */
export interface WayMade {
  readonly way: WayToMake
  readonly one: MakingOfOne
  /** Share of the plants started that is sold: eight years of ten lie from low to high. */
  readonly through: Spread
  /** Cost of one saleable tree in such years, without the set-up. */
  readonly cost: Spread
  /** Price less cost. */
  readonly margin: number
  /** What is left of the price for an hour of the skilled hands (grafting, budding, cuttings, layering) beside their pay. */
  readonly earnsPerSkilledDay: number | null
  /** What is left of the price for a square metre of bench in a year, before the bench is paid. */
  readonly earnsPerSquareMetreYear: number | null
}

/** Eight of ten lie within so many standard deviations. */
const EIGHT_OF_TEN = 1.2815515655446004
/** Productive hours of a day. Common practice: five to six. */
const HOURS_IN_DAY = 5.5
const WEEKS_IN_YEAR = 52.18

const skilled: ReadonlySet<Skill> = new Set<Skill>(['grafting', 'budding', 'cuttings', 'layering'])

/** Each way by what one saleable tree takes and earns, the cheapest first. */
export const whichWay = (ways: readonly WayToMake[], costs: NurseryCosts): readonly WayMade[] =>
  ways.map(way => made(way, costs)).sort((a, b) => a.one.cost - b.one.cost)

function made(way: WayToMake, costs: NurseryCosts): WayMade {
  const one = makingOfOne(way, costs)
  const steps = [...way.protocol.steps, ...(way.rootstock?.protocol.steps ?? [])]
  const strays = new Map<Step, number>(steps.map(step => [step, strayOf(way, step)]))
  const whole = Math.sqrt([...strays.values()].reduce((sum, stray) => sum + stray ** 2, 0))
  // A good or bad year falls on each step by its share of the whole uncertainty.
  const year = (deviations: number) =>
    makingOfOne(way, costs, step => (whole === 0 ? 0 : (deviations * strays.get(step)! ** 2) / whole))
  const bad = year(-EIGHT_OF_TEN)
  const good = year(EIGHT_OF_TEN)
  const hands = Object.entries(one.minutesBySkill).reduce(
    (sum, [skill, minutes]) => sum + (skilled.has(skill as Skill) ? minutes : 0),
    0,
  )
  const margin = way.price - one.cost
  const beforeHands = margin + (hands / 60) * costs.hour
  const beforeBench = margin + one.squareMetreWeeks * costs.squareMetreWeek
  return {
    way,
    one,
    through: { low: 1 / bad.started, middle: 1 / one.started, high: 1 / good.started },
    cost: { low: good.cost, middle: one.cost, high: bad.cost },
    margin,
    earnsPerSkilledDay: hands > 0 ? (beforeHands / hands) * 60 * HOURS_IN_DAY : null,
    earnsPerSquareMetreYear:
      one.squareMetreWeeks > 0 ? (beforeBench / one.squareMetreWeeks) * WEEKS_IN_YEAR : null,
  }
}

/** Where two ways cost the same: below `number` the one with less set-up is cheaper, above it the other. */
export type BreakEven =
  | { readonly kind: 'always'; readonly cheaper: WayMade }
  | { readonly kind: 'from'; readonly number: number; readonly below: WayMade; readonly above: WayMade }

/**
 * The number of trees at which two ways cost the same, set-up and all: (set-up b − set-up a) / (cost a − cost b).
 * @source cost-volume break-even between two processes: Stevenson, Operations Management, ch. 5, from memory
 */
export function breakEven(a: WayMade, b: WayMade): BreakEven {
  const moreSetUp = b.way.setUp - a.way.setUp
  const lessEach = a.one.cost - b.one.cost
  const number = moreSetUp / lessEach
  if (Number.isFinite(number) && number > 0)
    return moreSetUp > 0
      ? { kind: 'from', number, below: a, above: b }
      : { kind: 'from', number, below: b, above: a }
  // What saves nothing that can be counted never earns its set-up back.
  if (!Number.isFinite(number)) return { kind: 'always', cheaper: moreSetUp >= 0 ? a : b }
  return { kind: 'always', cheaper: lessEach <= 0 ? a : b }
}
