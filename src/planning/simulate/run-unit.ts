import { normalQuantile } from '../../science/index.ts'
import { DAY_OF_START } from '../rates/days-to-ready.ts'
import type { Season } from '../season.ts'
import type { Comings } from './comings.ts'
import { noDeliveries } from './deliveries.ts'
import type { Draws } from './draw-run.ts'
import type { DrawnRun } from './kept-draws.ts'
import type { Loads } from './loads.ts'
import { normalShare } from './normal-share.ts'
import type { Promisable } from './promisable.ts'
import type { Run, Runs } from './runs.ts'
import { nextOf, seenWeeks, takingWeeks } from './seen-weeks.ts'
import { emptyStock, PAST_USE, READY } from './stock.ts'
import { survivors } from './survivors.ts'
import type { Unit } from './units.ts'

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

/** Season `from`, and every so many after it. */
export interface Rows {
  readonly from: number
  readonly count: number
  readonly every: number
}

/** What came of the orders of a unit, by order and season. */
export interface UnitSeasons {
  readonly byDue: readonly Int32Array[]
  readonly weeksLate: readonly Uint8Array[]
  readonly late: readonly Int32Array[]
}

export interface UnitInput {
  readonly season: Season
  readonly runs: Runs
  readonly unit: Unit
  readonly rows: Rows
  readonly draws: Draws
  /** Bought in: on hand in their week. */
  readonly bought: readonly { readonly kind: number; readonly week: number; readonly number: number }[]
  /** Rootstocks that each graft got, by season: of those that take elsewhere; those that take here are written. */
  readonly got: Map<Run, Int32Array>
  /** Where area and work are added up. */
  readonly loads?: Loads | undefined
  readonly watch?: Promisable | undefined
  readonly ledger?: ((week: WeekCount) => void) | undefined
}

const LONGEST_WEEKS = 1200
/** Logarithm of the days from a start until each week since it ends. */
const logWeekEnds = Float64Array.from({ length: LONGEST_WEEKS }, (_, k) =>
  Math.log(7 * (k + 1) - DAY_OF_START),
)

/** Of so many plants the first is ready before this many standard deviations before the median; of more, 4. */
const firstScores = Float64Array.from({ length: 1024 }, (_, plants) =>
  plants === 0 ? 0 : Math.min(4, 0.1 - normalQuantile(0.5 / plants)),
)
const firstScore = (plants: number) => firstScores[plants] ?? 4

/** Runs one unit through seasons, one by one. */
export function runUnit(input: UnitInput): UnitSeasons {
  const { season, unit, rows, got, loads, watch, ledger } = input
  const { alive, draw } = input.draws
  const { weeks } = season
  const { free, grafts } = unit
  const lines = unit.lines.map(line => input.runs.lines[line]!)
  const ownLine = new Int32Array(input.runs.lines.length).fill(-1)
  unit.lines.forEach((line, own) => {
    ownLine[line] = own
  })
  const orders = unit.orders.map(o => season.orders[o]!)
  const standing = input.runs.standing
    .map(({ line, weeksAgo, number }) => ({ line: ownLine[line]!, weeksAgo, number }))
    .filter(({ line, weeksAgo }) => line >= 0 && weeksAgo <= lines[line]!.usableWeeks)
  const bought = input.bought
    .map(({ kind, week, number }) => ({ line: lines.findIndex(line => line.kind === kind), week, number }))
    .filter(({ line }) => line >= 0)
  const weeksBack = Math.max(1, ...standing.map(({ weeksAgo }) => weeksAgo))
  const stock = emptyStock(lines, weeks, weeksBack, season.growing)
  const { marks } = stock
  const deliveries = noDeliveries(orders, weeks, lines)
  const used = new Int32Array(lines.length)
  const before = new Int32Array(lines.length)
  const isEveryWeekSeen = loads !== undefined || watch !== undefined || ledger !== undefined
  /** Weeks in which an order falls due or rootstocks are taken, or all. */
  const isWeekOfPlan = new Uint8Array(weeks).fill(isEveryWeekSeen ? 1 : 0)
  /** Before its due week an order gets what could not be kept for it. */
  const marksAwaited = new Uint8Array(weeks)
  for (const { earliestWeek, dueWeek } of orders) {
    if (dueWeek < weeks) isWeekOfPlan[Math.max(0, dueWeek)] = 1
    marksAwaited.fill(PAST_USE, Math.max(0, earliestWeek), Math.max(0, dueWeek))
  }
  for (const { run } of grafts) if (run.useWeek < weeks) isWeekOfPlan[run.useWeek] = 1
  const everyWeek = new Uint8Array(weeks).fill(1)
  const isTaking = isEveryWeekSeen
    ? everyWeek
    : takingWeeks(
        weeks,
        orders,
        grafts.map(({ run }) => run.useWeek),
      )
  const nextTaking = nextOf(isTaking)
  const nextInTurn = nextOf(everyWeek)
  /** Stems that thicken are told apart by the week in which they were ready. */
  const nextSeen = lines.map(({ caliper, usableWeeks }) =>
    caliper ? nextInTurn : nextOf(seenWeeks(isTaking, usableWeeks)),
  )

  const byOrder = <A>(empty: () => A): A[] => orders.map(empty)
  const result = {
    byDue: byOrder(() => new Int32Array(rows.count)),
    weeksLate: byOrder(() => new Uint8Array(rows.count)),
    late: byOrder(() => new Int32Array(rows.count)),
  }
  for (const { run, takesHere } of grafts) if (takesHere) got.set(run, new Int32Array(rows.count))
  const gotBy = grafts.map(({ run }) => got.get(run)!)

  /** The next week in which something is to be done: by plan, or because of what is ready or past use in it. */
  const nextWeek = (from: number): number => {
    const late = deliveries.isOneLate() ? READY : 0
    let week = nextTaking[from]!
    while (week < weeks) {
      if (isWeekOfPlan[week] === 1 || (marks[week + weeksBack]! & (marksAwaited[week]! | late)) !== 0) break
      week = nextTaking[week + 1]!
    }
    return week
  }
  const freeDraws = free.map(run => input.draws.of(run))
  const graftDraws = grafts.map(({ run }) => input.draws.of(run))
  const freeComings = free.map(run => input.draws.comingsOf(run))
  const take = (run: Run, wanted: number): number => {
    let got = 0
    for (const { line, workable } of run.rootstockLines) {
      if (got === wanted) break
      const own = ownLine[line]!
      const took = stock.takeStems(own, workable, wanted - got)
      used[own]! += took
      got += took
    }
    return got
  }
  /** Puts what is finished of a run, as it was drawn, into the stock of its weeks. */
  const finish = (run: Run, number: number, finished: number, logDays: number, comings?: Comings) => {
    loads?.addRun(run, number, alive, Math.exp(logDays))
    if (finished === 0 || run.isOnHold) return
    const { week, plantSdLog: spread } = run
    const line = ownLine[run.line]!
    if (spread < 1e-6) {
      const ready = week + Math.floor((DAY_OF_START + Math.exp(logDays)) / 7)
      if (ready < weeks) {
        stock.put(line, ready, finished)
        comings?.note(ready, finished)
      }
      return
    }
    const first = logDays - firstScore(finished) * spread
    const earliest = week + Math.floor((DAY_OF_START + Math.exp(first)) / 7)
    // What comes of a living batch is kept for other orders too.
    const next = comings ? nextInTurn : nextSeen[line]!
    let done = 0
    for (let at = next[Math.min(earliest, weeks)]!; done < finished && at < weeks; at = next[at + 1]!) {
      const by = Math.round(finished * normalShare((logWeekEnds[at - week]! - logDays) / spread))
      if (by > done) {
        stock.put(line, at, by - done)
        comings?.note(at, by - done)
        done = by
      }
    }
  }
  const runFree = (run: Run, drawn: DrawnRun, s: number, comings?: Comings) => {
    const at = draw(run, drawn, s, loads !== undefined)
    const finished = survivors(run.number, drawn.finished[at]!, drawn.luck[at]!)
    finish(run, run.number, finished, drawn.logDays[at]!, comings)
  }
  const runLiving = (run: Run, drawn: DrawnRun, s: number, comings: Comings) => {
    const line = ownLine[run.line]!
    if (comings.each(s, (week, plants) => stock.put(line, week, plants))) return
    comings.turnTo(s)
    runFree(run, drawn, s, comings)
  }
  const runGraft = (graft: number, row: number, s: number) => {
    const { run, takesHere, comesHere } = grafts[graft]!
    const drawn = graftDraws[graft]!
    if (run.rootstockLines.length === 0) return runFree(run, drawn, s)
    const isEarly = run.stepsBeforeRootstock > 0
    const at = comesHere || isEarly ? draw(run, drawn, s, loads !== undefined) : 0
    const worked = isEarly ? drawn.worked[at]! : 1
    const want = worked < 1 ? survivors(run.number, worked, drawn.earlyLuck[at]!) : run.number
    if (takesHere) gotBy[graft]![row] = take(run, want)
    if (!comesHere) return
    const number = gotBy[graft]![row]!
    const finished = survivors(number, worked > 0 ? drawn.finished[at]! / worked : 0, drawn.luck[at]!)
    finish(run, want > 0 ? (run.number * number) / want : run.number, finished, drawn.logDays[at]!)
  }

  for (let row = 0; row < rows.count; row++) {
    const s = rows.from + row * rows.every
    stock.clear()
    deliveries.clear()
    loads?.turnTo(row)
    for (const { line, weeksAgo, number } of standing) stock.put(line, -weeksAgo, number)
    for (const { line, week, number } of bought) stock.put(line, week, Math.round(number))
    for (let i = 0; i < free.length; i++) {
      const comings = loads ? undefined : freeComings[i]
      if (comings) runLiving(free[i]!, freeDraws[i]!, s, comings)
      else runFree(free[i]!, freeDraws[i]!, s)
    }

    let graft = 0
    for (let week = nextWeek(0); week < weeks; week = nextWeek(week + 1)) {
      if (ledger) {
        before.set(stock.onHand)
        used.fill(0)
        deliveries.deliveredOfLine.fill(0)
      }
      stock.open(week)
      for (; graft < grafts.length && grafts[graft]!.run.useWeek <= week; graft++) runGraft(graft, row, s)
      deliveries.deliver(week, stock)
      for (let line = 0; line < lines.length; line++) {
        const last = stock.lastChance(line)
        if (last > 0) deliveries.handOut(line, last, week, stock)
        const outgrown = last > 0 ? stock.outgrow(line) : 0
        const onHand = stock.onHand[line]!
        watch?.note(unit.lines[line]!, week, onHand, outgrown)
        if (loads && onHand > 0) loads.addFinished(unit.lines[line]!, week, onHand)
        ledger?.({
          season: s,
          week,
          line: unit.lines[line]!,
          before: before[line]!,
          ready: stock.readyIn(line),
          used: used[line]!,
          delivered: deliveries.deliveredOfLine[line]!,
          outgrown,
          after: onHand,
        })
      }
    }

    watch?.endSeason(row)
    for (let o = 0; o < orders.length; o++) {
      result.byDue[o]![row] = deliveries.byDue[o]!
      result.weeksLate[o]![row] = deliveries.weeksLate[o]!
      result.late[o]![row] = deliveries.late[o]!
    }
  }
  return result
}
