import { type Protocol, type ShareFigure, Skill, type Step } from '../../trade/index.ts'

/** What the nursery pays, in its own money. */
export interface NurseryCosts {
  readonly hour: number
  readonly squareMetreWeek: number
}

/** One way to make a tree, at the nursery's own rates where it has them. */
export interface WayToMake {
  readonly protocol: Protocol
  /** Price of the saleable tree. */
  readonly price: number
  /** Spent once for each batch, whatever its number: bed made ready, shears set, the first hour. */
  readonly setUp: number
  /** What the wood, seed or branch of one started plant costs beside the labour. */
  readonly materialCost: number
  /** Of a worked tree, the way its rootstock is made; null where it is bought or there is none. */
  readonly rootstock: WayToMake | null
  /** Price of a bought rootstock; 0 where there is none. */
  readonly rootstockPrice: number
  /** The share that leaves each step alive: the nursery's own, else undefined for the protocol's figure. */
  readonly shareOf?: (step: Step) => ShareFigure | undefined
}

/** What one saleable tree takes, losses rolled in. */
export interface MakingOfOne {
  /** Plants started for one that is sold. */
  readonly started: number
  readonly minutes: number
  readonly minutesBySkill: Readonly<Partial<Record<Skill, number>>>
  readonly squareMetreWeeks: number
  /** Money for media, pots, wood, rootstocks bought. */
  readonly materials: number
  readonly cost: number
  /** Sticks, branches, cuttings or seeds taken from mother plants. */
  readonly taken: number
  readonly weeks: number
}

const DAYS_IN_WEEK = 7

/**
 * Follows one hundred started plants through the steps and divides by those that are sold: work at the begin of a step
 * counts the plants that enter it, at its end those that leave it, each week those alive in it on average.
 * @param shift added to the logarithm of each step's share, for a better or worse year
 */
export function makingOfOne(
  way: WayToMake,
  costs: NurseryCosts,
  shift: (step: Step) => number = () => 0,
): MakingOfOne {
  let alive = 1
  let minutes = 0
  let squareMetreWeeks = 0
  let materials = way.materialCost
  let weeks = 0
  const bySkill: Partial<Record<Skill, number>> = {}
  const work = (skill: Skill, spent: number) => {
    minutes += spent
    bySkill[skill] = (bySkill[skill] ?? 0) + spent
  }
  for (const before of way.protocol.before) work(before.skill, before.minutesPerPlant.typical)

  const stock = way.rootstock === null ? null : makingOfOne(way.rootstock, costs, shift)
  for (const taking of way.protocol.takes) {
    if (taking.what !== 'rootstock') continue
    materials += way.rootstockPrice
    if (stock === null) continue
    materials += stock.materials
    squareMetreWeeks += stock.squareMetreWeeks
    weeks += stock.weeks
    for (const [skill, spent] of Object.entries(stock.minutesBySkill)) work(Skill.parse(skill), spent)
  }

  for (const step of way.protocol.steps) {
    const share = shareThrough(way, step, shift)
    const leaving = alive * share
    const stay = step.days.typical / DAYS_IN_WEEK
    for (const { when, skill, minutesPerPlant } of step.work)
      work(
        skill,
        minutesPerPlant.typical *
          (when === 'begin' ? alive : when === 'end' ? leaving : ((alive + leaving) / 2) * stay),
      )
    if (step.plantsPerSquareMetre !== null)
      squareMetreWeeks += (alive * stay) / step.plantsPerSquareMetre.typical
    materials += alive * step.materialCostPerPlant
    weeks += stay
    alive = leaving
  }
  const perTree = (amount: number) => amount / alive
  return {
    started: 1 / alive,
    minutes: perTree(minutes),
    minutesBySkill: Object.fromEntries(
      Object.entries(bySkill).map(([skill, spent]) => [skill, perTree(spent)]),
    ),
    squareMetreWeeks: perTree(squareMetreWeeks),
    materials: perTree(materials),
    cost: perTree((minutes / 60) * costs.hour + squareMetreWeeks * costs.squareMetreWeek + materials),
    taken: perTree(
      way.protocol.takes.reduce((sum, taking) => sum + (taking.what === 'material' ? taking.perPlant : 0), 0),
    ),
    weeks,
  }
}

/** A share so small that costs per tree would have no end is held here. */
const LEAST_SHARE = 0.005

const shareThrough = (way: WayToMake, step: Step, shift: (step: Step) => number): number => {
  const figure = way.shareOf?.(step) ?? step.survival
  return Math.min(1, Math.max(LEAST_SHARE, figure.typical * Math.exp(shift(step))))
}

/** How far the logarithm of a step's share strays, as a standard deviation: nine of ten lie from low to high. */
export const strayOf = (way: WayToMake, step: Step): number => {
  const { low, high } = way.shareOf?.(step) ?? step.survival
  return Math.log(Math.max(LEAST_SHARE, high) / Math.max(LEAST_SHARE, low)) / (2 * 1.6448536269514722)
}
