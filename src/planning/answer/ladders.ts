import { betaQuantile } from '../../science/index.ts'
import type { BatchId } from '../../trade/index.ts'
import type { OrderForecast, RateUsed, Rung } from '../plan.ts'
import { DAY_OF_START } from '../rates/days-to-ready.ts'
import type { CourseStep, LiveBatch } from '../season.ts'
import type { Match } from './match-stock.ts'
import { type Planned, weekName } from './planned.ts'
import { withoutNoise } from './without-noise.ts'

type Ladder = OrderForecast['ladders'][number]

/**
 * The count-back of an order, one ladder for each start or batch that goes into it: started → alive after each step →
 * finished for this order → wanted. Numbers are this order's part of the batch.
 * @param matches those of this order
 */
export function laddersOf(planned: Planned, matches: readonly Match[], order: number): Ladder[] {
  const { season, starts } = planned
  const parts = new Map<string, { first: Match; number: number }>()
  for (const match of matches) {
    if (match.maker.what === 'bought') continue
    const key = match.maker.what === 'batch' ? `batch ${match.maker.batch}` : `start ${match.maker.start}`
    const part = parts.get(key)
    if (part) part.number += match.number
    else parts.set(key, { first: match, number: match.number })
  }
  const planned0 = [...parts.values()].reduce((sum, { number }) => sum + number, 0)
  const wanted = season.orders[order]!.number
  return [...parts.values()].map(({ first: { maker, kind }, number }) => {
    const due = weekName(season, season.orders[order]!.dueWeek)
    const needed = planned0 > 0 ? Math.min(number, (wanted * number) / planned0) : 0
    const last: Rung = { step: null, name: 'Wanted', number: withoutNoise(needed), rate: null, week: due }
    if (maker.what === 'start') {
      const start = starts[maker.start]!
      const way = season.ways[start.way]!
      return {
        start: start.id,
        batch: null,
        kind: season.kinds[kind]!.id,
        protocol: way.protocol.id,
        rungs: [...rungsOf(planned, start.course.steps, number, start.week, 0), last],
      }
    }
    const batch = season.batches[maker.what === 'batch' ? maker.batch : 0]!
    const from = batch.portions.reduce((least, { step }) => Math.min(least, step), batch.course.steps.length)
    const standing = batch.portions.find(({ step }) => step === from)
    const rest = batch.course.steps.slice(from).map((step, s) => {
      if (s > 0 || !standing) return step
      return { ...step, alpha: standing.alpha, beta: standing.beta, rate: countedRate(planned, batch, step) }
    })
    return {
      start: null,
      batch: batch.id,
      kind: season.kinds[kind]!.id,
      protocol: protocolOf(planned, batch.id),
      rungs: [...rungsOf(planned, rest, number, 0, standing?.daysIn ?? 0), last],
    }
  })
}

/** Of plants that were counted in their step, the rate is that of the count, and says so. */
function countedRate({ nursery }: Planned, { id, portions, course }: LiveBatch, step: CourseStep): RateUsed {
  const standing = portions.find(({ step: at }) => course.steps[at] === step)!
  const counted = nursery.batches
    .get(id)
    ?.portions.find(({ step: at, countedOn }) => at === step.step && countedOn !== null)
  if (!counted) return step.rate
  const { alpha, beta } = standing
  return {
    mean: alpha / (alpha + beta),
    low: betaQuantile(0.05, alpha, beta),
    high: betaQuantile(0.95, alpha, beta),
    from: 'records',
    basis: `counted on ${counted.countedOn}: ${counted.taken} of ${counted.number} standing have taken; the rest from the rate of the step`,
    sources: [],
    batches: 1,
  }
}

function protocolOf({ nursery }: Planned, id: string): Ladder['protocol'] {
  const batch = nursery.batches.get(id as BatchId)
  if (batch) return batch.protocol
  throw new RangeError(`laddersOf: batch must be one of the nursery's, got ${id}`)
}

/** From what is started down to what is finished, when the rates turn out as expected. */
function rungsOf(
  { season }: Planned,
  steps: readonly CourseStep[],
  finished: number,
  week: number,
  daysIn: number,
): Rung[] {
  const means = steps.map(({ alpha, beta }) => alpha / (alpha + beta))
  let alive = finished / means.reduce((product, mean) => product * mean, 1)
  let day = DAY_OF_START
  const rungs: Rung[] = []
  steps.forEach((step, s) => {
    rungs.push({
      step: step.step,
      name: step.name,
      number: withoutNoise(alive),
      rate: step.rate,
      week: weekName(season, Math.min(season.weeks - 1, week + Math.floor(day / 7))),
    })
    alive *= means[s]!
    day += s === 0 ? Math.max(0, step.medianDays - daysIn) : step.medianDays
  })
  rungs.push({
    step: null,
    name: 'Finished',
    number: withoutNoise(alive),
    rate: null,
    week: weekName(season, Math.min(season.weeks - 1, week + Math.floor(day / 7))),
  })
  return rungs
}
