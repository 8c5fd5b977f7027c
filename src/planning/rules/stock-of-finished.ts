import { courseOf, type SeasonDraft, type SeasonRule } from './season-draft.ts'
import { nextTake } from './take-weeks.ts'

/**
 * Finished trees and finished rootstocks, balanced in the weeks u₁ < u₂ < … in which any can be taken.
 *   held(p, uᵢ) ≤ held(p, uᵢ₋₁) + ready(p, uᵢ₋₁ + 1 … uᵢ) + bought − used(p, uᵢ) − delivered(p, uᵢ)
 *   held(p, uᵢ) ≤ what became ready or was bought in the weeks uᵢ₊₁ − usableWeeks … uᵢ
 * What the first leaves over is outgrown and thrown away. The oldest are taken first, so the second says that none is
 * kept past use: a plant ready in week v may still be taken in week v + usableWeeks.
 * Said as: "{kind}, {week}: one more ready is worth {worth}."
 */
export const stockOfFinished: SeasonRule = draft => {
  draft.season.kinds.forEach((_, kind) => {
    if (draft.takesOf[kind]!.length > 0) stockOfOneKind(draft, kind)
  })
}

function stockOfOneKind(draft: SeasonDraft, kind: number): void {
  const { season, model } = draft
  const { id, usableWeeks, buyIn, holdingCostPerWeek, standsAt } = season.kinds[kind]!
  const takes = draft.takesOf[kind]!
  const next = nextTake(season.weeks, takes)
  const { ready, aged } = readyFromBatches(draft, kind)
  const weekCost =
    holdingCostPerWeek +
    (standsAt ? season.places[standsAt.place]!.pricePerSquareMetreWeek * standsAt.squareMetres : 0)

  /** Of living batches: ready until a week, and still usable in a later one. */
  const liveUsable = (from: number, until: number) => {
    let sum = 0
    for (let week = Math.max(0, from); week <= until; week++) sum += ready[week]!
    for (const { weeksAgo, number } of aged) if (from > -weeksAgo && from <= 0) sum -= number
    return sum
  }
  const stockRow = Array.from(takes, (week, i) => {
    const from = i > 0 ? Math.max(takes[i - 1]! + 1, week - usableWeeks) : week - usableWeeks
    const upper = Math.max(0, liveUsable(from, week))
    return model.row({ rule: 'stockOfFinished', subject: kind, about: id, week, upper })
  })
  const earliest = earliestReady(draft, kind, ready)
  const useRow: number[] = []
  for (let i = 0; i + 1 < takes.length; i++) {
    const week = takes[i]!
    const until = takes[i + 1]!
    const column = model.column({
      name: `hold/${id}/${week}`,
      part: 'holding',
      cost: weekCost * (until - week),
    })
    draft.holds.push({ kind, week, until, column })
    model.put(stockRow[i]!, column, 1)
    model.put(stockRow[i + 1]!, column, -1)
    const oldest = until - usableWeeks
    useRow.push(-1)
    if (oldest <= earliest) continue
    const upper = Math.max(0, liveUsable(oldest, week))
    useRow[i] = model.row({ rule: 'notPastUse', subject: kind, about: id, week, upper })
    model.put(useRow[i]!, column, 1)
  }

  const intoStock = new Float64Array(takes.length)
  const intoUse = new Float64Array(takes.length)
  /**
   * Plants that become ready, by week from one on, enter the stock of the next take week, and may be held as long as they
   * keep.
   */
  const becomesReady = (column: number, from: number, numbers: ArrayLike<number>) => {
    let plantWeeks = 0
    for (let k = 0; k < numbers.length && from + k < season.weeks; k++) {
      const [week, number] = [from + k, numbers[k]!]
      const first = next[week]!
      if (number === 0 || first < 0 || takes[first]! > week + usableWeeks) continue
      intoStock[first]! += number
      for (let i = first; i < useRow.length && takes[i + 1]! <= week + usableWeeks; i++) intoUse[i]! += number
      plantWeeks += (takes[first]! - week) * number
    }
    for (let i = 0; i < takes.length; i++) {
      model.put(stockRow[i]!, column, -intoStock[i]!)
      if ((useRow[i] ?? -1) >= 0) model.put(useRow[i]!, column, -intoUse[i]!)
    }
    intoStock.fill(0)
    intoUse.fill(0)
    if (plantWeeks === 0) return
    model.addCost(column, weekCost * plantWeeks)
    draft.waits.push({ kind, column, plantWeeks })
  }
  for (const { way, week, column } of draft.startsOf[kind]!)
    becomesReady(column, week, courseOf(season, way, week).ready)
  if (buyIn)
    for (let week = buyIn.weeksNotice; week <= takes.at(-1)!; week++) {
      const column = model.column({
        name: `buyIn/${id}/${week}`,
        part: 'buying in',
        cost: buyIn.price,
        upper: buyIn.mostPerWeek,
      })
      draft.bought.push({ kind, week, column })
      becomesReady(column, week, [1])
    }
  const rowOf = (week: number) => stockRow[next[week]!]!
  for (const use of draft.usesOf[kind]!)
    if (use.useWeek < season.weeks) model.put(rowOf(use.useWeek), use.column, use.perPlant)
  for (const { week, column } of draft.deliveriesOf[kind]!) model.put(rowOf(week), column, 1)
}

/** The first week in which anything of a kind is ready, before this week where finished plants stand. */
function earliestReady(draft: SeasonDraft, kind: number, ready: Float64Array): number {
  if (ready[0]! > 0) return Number.NEGATIVE_INFINITY
  let earliest = ready.findIndex(number => number > 0)
  if (earliest < 0) earliest = draft.season.weeks
  for (const { way, week } of draft.startsOf[kind]!)
    earliest = Math.min(
      earliest,
      week + courseOf(draft.season, way, week).ready.findIndex(share => share > 0),
    )
  return earliest
}

/** Ready from living batches that are not on hold, by week; and of those, what was ready before this week. */
export function readyFromBatches(draft: SeasonDraft, kind: number) {
  const ready = new Float64Array(draft.season.weeks)
  const aged: { readonly weeksAgo: number; readonly number: number }[] = []
  for (const batch of draft.season.batches) {
    if (batch.kind !== kind || batch.onHold) continue
    for (let w = 0; w < Math.min(draft.season.weeks, batch.ready.length); w++) ready[w]! += batch.ready[w]!
    const steps = batch.course.steps.length
    const number = batch.portions.reduce((sum, p) => sum + (p.step >= steps ? p.number : 0), 0)
    if (number > 0 && batch.finishedWeeksAgo > 0) aged.push({ weeksAgo: batch.finishedWeeksAgo, number })
  }
  return { ready, aged }
}
