import type { Rung } from '../../../planning/index.ts'
import { betaFromLowTypicalHigh, type Needed, needed } from '../../../science/index.ts'
import type { Protocol, Step } from '../../../trade/index.ts'
import { dayAfter, weekOf } from '../../text/format.ts'

/** A protocol in numbers: what a wish for so many trees takes by it, from its own figures. */
export interface CountBack {
  /** Plants to start, in whole trays. */
  readonly start: number
  readonly chance: number
  readonly rungs: readonly Rung[]
  /** From the start to ready, where every step takes its typical time. */
  readonly days: number
  readonly minutes: number
  /** Bench at the widest step; 0 where none stands on a bench. */
  readonly squareMetres: number
}

const inTrays = (number: number, { tray, smallestBatch }: Protocol): number =>
  Math.ceil(Math.max(number, smallestBatch) / tray) * tray

const fewest = (rates: readonly { alpha: number; beta: number }[], wanted: number, sure: number): Needed =>
  needed({ wanted, sure, steps: rates.map(rate => ({ kind: 'uncertain', ...rate })) })

/**
 * Counts back from the trees wanted to the plants to start, each step's share uncertain as its figure says and
 * independent of the others; null where no number of starts is enough.
 */
export const countBack = (
  protocol: Protocol,
  { wanted, sure, from }: { readonly wanted: number; readonly sure: number; readonly from: string },
): CountBack | null => {
  const rates = protocol.steps.map(({ survival: { low, typical, high } }) =>
    betaFromLowTypicalHigh(low, typical, high),
  )
  let least: Needed
  try {
    least = fewest(rates, wanted, sure)
  } catch (problem) {
    if (problem instanceof RangeError) return null
    throw problem
  }
  const start = inTrays(least.start, protocol)
  const rungs: Rung[] = []
  let alive = start
  let days = 0
  let minutes = 0
  let squareMetres = 0
  for (const { minutesPerPlant } of protocol.before) minutes += minutesPerPlant.typical * start
  protocol.steps.forEach((step, index) => {
    const { alpha, beta } = rates[index]!
    const mean = alpha / (alpha + beta)
    rungs.push({
      step: step.id,
      name: step.name,
      number: alive,
      week: weekOf(dayAfter(from, Math.round(days))),
      rate: {
        mean,
        low: step.survival.low,
        high: step.survival.high,
        from: step.survival.basis === 'set by the nursery' ? 'set by the nursery' : 'facts',
        basis: step.survival.basis,
        sources: [...step.survival.sources],
        batches: 0,
      },
    })
    minutes += minutesOf(step, alive, alive * mean)
    if (step.plantsPerSquareMetre !== null)
      squareMetres = Math.max(squareMetres, alive / step.plantsPerSquareMetre.typical)
    alive *= mean
    days += step.days.typical
  })
  rungs.push({
    step: null,
    name: '',
    number: alive,
    rate: null,
    week: weekOf(dayAfter(from, Math.round(days))),
  })
  return { start, chance: least.chance, rungs, days, minutes, squareMetres }
}

/** Work counts those alive when it is done: all at the begin, those left at the end, the mean of both in between. */
const minutesOf = (step: Step, entering: number, leaving: number): number =>
  step.work.reduce((sum, { when, minutesPerPlant, minutesPerBatch }) => {
    const times = when === 'each week' ? Math.max(1, Math.round(step.days.typical / 7)) : 1
    const plants = when === 'begin' ? entering : when === 'end' ? leaving : (entering + leaving) / 2
    return sum + times * (plants * minutesPerPlant.typical + minutesPerBatch)
  }, 0)
