import { type SeededRandom, seededRandom } from '../../science/index.ts'
import type { Skill } from '../../trade/index.ts'
import { DAY_OF_START } from '../rates/days-to-ready.ts'
import type { Season, SeasonStart } from '../season.ts'
import { noDeliveries } from './deliveries.ts'
import { LOADS_EVERY, noLoads } from './loads.ts'
import { normalScore } from './normal-scores.ts'
import { normalShare } from './normal-share.ts'
import { promisable } from './promisable.ts'
import { type Run, runsOf } from './runs.ts'
import { shareAt } from './share-curve.ts'
import { emptyStock } from './stock.ts'
import { survivors } from './survivors.ts'

export interface SimulationInput {
  /** Seasons `from` to `to − 1` of the endless row that belongs to the seed. */
  readonly from: number
  readonly to: number
  readonly seed: number
  /** Bought in: on hand in their week. */
  readonly bought?: readonly { readonly kind: number; readonly week: number; readonly number: number }[]
  /** Kinds of which it is kept, season by season, how many could be promised more in each week. */
  readonly watch?: readonly number[]
  /** Is told the counts of every week, to prove that they close. */
  readonly ledger?: (week: WeekCount) => void
}

/** One line of stock in one week of one season. */
export interface WeekCount {
  readonly season: number
  readonly week: number
  readonly line: number
  readonly before: number
  readonly ready: number
  readonly used: number
  readonly delivered: number
  readonly outgrown: number
  readonly after: number
}

/** What came of some seasons; parts of the same plan and seed are put together by `mergePartials`. */
export interface SimulatedSeasons {
  readonly from: number
  readonly to: number
  readonly orders: number
  readonly weeks: number
  /** By order and season: delivered by the end of the due week, with what else was on hand for it. */
  readonly byDue: Int32Array
  /** By order and season: weeks late when filled, 0 on time, `NEVER` not at all. */
  readonly weeksLate: Uint8Array
  /** By order and season: delivered late. */
  readonly late: Int32Array
  /** By order and season: delivered in all. */
  readonly delivered: Int32Array
  /** The places where something may stand, and all skills. */
  readonly places: readonly number[]
  readonly skills: readonly Skill[]
  /** One season in `LOADS_EVERY`: m² by place and week, minutes by skill and week. */
  readonly squareMetres: Float32Array
  readonly minutes: Float32Array
  readonly watched: readonly number[]
  /** By season, watched kind and week. */
  readonly promisable: Int32Array
}

/** A plan made ready to be run through any seasons. */
export interface Simulation {
  run(input: SimulationInput): SimulatedSeasons
}

/** Runs a plan through seasons; the answer for a season depends on the seed, the plan and the season alone. */
export const simulateSeasons = (
  season: Season,
  starts: readonly SeasonStart[],
  input: SimulationInput,
): SimulatedSeasons => simulation(season, starts).run(input)

const LONGEST_WEEKS = 1200
/** Logarithm of the days from a start until each week since it ends. */
const logWeekEnds = Float64Array.from({ length: LONGEST_WEEKS }, (_, k) =>
  Math.log(7 * (k + 1) - DAY_OF_START),
)

/**
 * The nursery's seasons, drawn one by one.
 *
 * A season first draws its years: one normal score for each group of method and species and calendar year. Each
 * batch then draws its own scores; a step's share is the quantile of its Beta at the two together, so that
 * every share is Beta as the rates say and moves with the year. Losses are binomial, days log-normal. Grafts take
 * the rootstocks that are there and can be worked, and are cut down to them. Trees go out by due date.
 */
export function simulation(season: Season, starts: readonly SeasonStart[]): Simulation {
  const { weeks, orders } = season
  const { free, grafts, lines, standing, curves, yearKeys } = runsOf(season, starts)
  const weeksBack = Math.max(1, ...standing.map(({ weeksAgo }) => weeksAgo))
  const stock = emptyStock(lines, weeks, weeksBack, season.growing)
  const deliveries = noDeliveries(season, lines)
  const loads = noLoads(season, [...free, ...grafts], lines)
  const yearScores = new Float64Array(yearKeys.length)
  const longest = [...free, ...grafts].reduce((most, run) => Math.max(most, run.steps.length), 0)
  const alive = new Float64Array(longest + 1)
  const shares = new Float64Array(longest)
  const used = new Int32Array(lines.length)
  const before = new Int32Array(lines.length)
  /** Weeks in which an order falls due or rootstocks are taken. */
  const isWeekOfPlan = new Uint8Array(weeks)
  for (const { dueWeek } of orders) if (dueWeek < weeks) isWeekOfPlan[Math.max(0, dueWeek)] = 1
  for (const { useWeek } of grafts) if (useWeek < weeks) isWeekOfPlan[useWeek] = 1
  let random: SeededRandom
  let areLoadsAdded = false

  /** Draws a run and puts what becomes of it into the stock of its weeks. */
  const draw = (run: Run) => {
    const own = random.stream(run.key)
    const { steps, week } = run
    const logDays = run.logMedianDays + run.batchSdLog * normalScore(own.uniform())
    let luck = 0.5
    let earlyLuck = 0.5
    for (let i = 0; i < run.ownDraws; i++) {
      const uniform = own.uniform()
      if (i === run.ownDraw) luck = uniform
      else earlyLuck = uniform
    }
    for (let j = steps.length - 1; j >= 0; j--) {
      const step = steps[j]!
      const score =
        step.yearWeight * yearScores[step.yearEffect]! + step.ownWeight * normalScore(own.uniform())
      shares[j] = shareAt(curves, step.curve, score)
    }
    alive[0] = 1
    for (let j = 0; j < steps.length; j++) alive[j + 1] = alive[j]! * shares[j]!

    let number = run.number
    let finished: number
    if (run.rootstockLines.length > 0) {
      const before = alive[run.stepsBeforeRootstock]!
      const wanted = before < 1 ? survivors(number, before, earlyLuck) : number
      let got = 0
      for (const { line, workable } of run.rootstockLines) {
        if (got === wanted) break
        const took = stock.takeStems(line, workable, wanted - got)
        used[line]! += took
        got += took
      }
      finished = survivors(got, before > 0 ? alive[steps.length]! / before : 0, luck)
      if (wanted > 0) number = (number * got) / wanted
    } else finished = survivors(number, alive[steps.length]!, luck)

    if (areLoadsAdded) loads.addRun(run, number, alive, Math.exp(logDays))
    if (finished === 0 || run.isOnHold) return
    const spread = run.plantSdLog
    if (spread < 1e-6) {
      const ready = week + Math.floor((DAY_OF_START + Math.exp(logDays)) / 7)
      if (ready < weeks) stock.put(run.line, ready, finished)
      return
    }
    const earliest = Math.floor((DAY_OF_START + Math.exp(logDays - 4 * spread)) / 7)
    let done = 0
    for (let k = earliest; done < finished && week + k < weeks; k++) {
      const by = Math.round(finished * normalShare((logWeekEnds[k]! - logDays) / spread))
      if (by > done) {
        stock.put(run.line, week + k, by - done)
        done = by
      }
    }
  }

  return {
    run(input) {
      const { from, to, seed } = input
      const count = to - from
      const bought = input.bought ?? []
      const watched = input.watch ?? []
      const watch = promisable(watched, lines, weeks)
      const byDue = new Int32Array(count * orders.length)
      const weeksLate = new Uint8Array(count * orders.length)
      const late = new Int32Array(count * orders.length)
      const delivered = new Int32Array(count * orders.length)
      const loaded = Math.ceil(to / LOADS_EVERY) - Math.ceil(from / LOADS_EVERY)
      const squareMetres = new Float32Array(loaded * loads.squareMetres.length)
      const minutes = new Float32Array(loaded * loads.minutes.length)
      const promises = new Int32Array(count * watched.length * weeks)
      let s = from
      let week = 0
      const endWeek = (line: number) => {
        const last = stock.lastChance(line)
        if (last > 0) deliveries.handOut(line, last, week, stock)
        const outgrown = last > 0 ? stock.outgrow(line) : 0
        const onHand = stock.onHand[line]!
        if (watched.length > 0) watch.note(line, week, onHand, outgrown)
        if (areLoadsAdded && onHand > 0) loads.addFinished(line, week, onHand)
        input.ledger?.({
          season: s,
          week,
          line,
          before: before[line]!,
          ready: stock.readyIn(line),
          used: used[line]!,
          delivered: deliveries.deliveredOfLine[line]!,
          outgrown,
          after: onHand,
        })
      }
      const lineOfKind = (kind: number) => lines.findIndex(line => line.kind === kind)
      const seasons = seededRandom(seed)

      for (let row = 0, loadRow = 0; s < to; s++, row++) {
        random = seasons.stream(s)
        areLoadsAdded = s % LOADS_EVERY === 0
        for (let y = 0; y < yearKeys.length; y++)
          yearScores[y] = normalScore(random.stream(yearKeys[y]!).uniform())
        stock.clear()
        deliveries.clear()
        if (areLoadsAdded) loads.clear()
        for (const { line, weeksAgo, number } of standing)
          if (weeksAgo <= lines[line]!.usableWeeks) stock.put(line, -weeksAgo, number)
        for (const { kind, week, number } of bought) {
          const line = lineOfKind(kind)
          if (line >= 0) stock.put(line, week, Math.round(number))
        }
        for (const run of free) draw(run)

        const isEveryLineSeen = areLoadsAdded || watched.length > 0 || input.ledger !== undefined
        let graft = 0
        for (week = 0; week < weeks; week++) {
          if (!isEveryLineSeen && !isWeekOfPlan[week] && stock.isQuiet(week)) continue
          if (input.ledger) {
            before.set(stock.onHand)
            used.fill(0)
            deliveries.deliveredOfLine.fill(0)
          }
          stock.open(week)
          for (; graft < grafts.length && grafts[graft]!.useWeek <= week; graft++) draw(grafts[graft]!)
          deliveries.deliver(week, stock)
          if (isEveryLineSeen) {
            for (let line = 0; line < lines.length; line++) endWeek(line)
          } else stock.eachLast(endWeek)
        }

        for (let o = 0, at = row; o < orders.length; o++, at += count) {
          byDue[at] = deliveries.byDue[o]!
          weeksLate[at] = deliveries.weeksLate[o]!
          late[at] = deliveries.late[o]!
          delivered[at] = deliveries.number[o]!
        }
        if (watched.length > 0) promises.set(watch.season(), row * watched.length * weeks)
        if (areLoadsAdded) {
          squareMetres.set(loads.squareMetres, loadRow * loads.squareMetres.length)
          minutes.set(loads.minutes, loadRow * loads.minutes.length)
          loadRow++
        }
      }
      return {
        from,
        to,
        orders: orders.length,
        weeks,
        byDue,
        weeksLate,
        late,
        delivered,
        places: loads.places,
        skills: loads.skills,
        squareMetres,
        minutes,
        watched,
        promisable: promises,
      }
    },
  }
}
