import { courseOf, type SeasonDraft, type SeasonRule } from './season-draft.ts'

/**
 * Finished trees and finished rootstocks.
 *   made(p, w) = made(p, w−1) + ready(p, w) + bought(p, w)
 *   held(p, w) ≤ held(p, w−1) + made(p, w) − made(p, w−1) − used(p, w) − delivered(p, w)
 *   held(p, w) ≤ made(p, w) − made(p, w − usableWeeks)
 * The difference in the second is what is outgrown and thrown away. The oldest are taken first, so the third says
 * that none is kept past use: a plant ready in week v may still be taken in week v + usableWeeks.
 * Said as: "{kind}: one more ready in {week} is worth {worth}."
 */
export const stockOfFinished: SeasonRule = draft => {
  draft.season.kinds.forEach((_, kind) => {
    if (draft.spans[kind]) stockOfOneKind(draft, kind)
  })
}

function stockOfOneKind(draft: SeasonDraft, kind: number): void {
  const { season, model } = draft
  const { id, usableWeeks, buyIn, holdingCostPerWeek, standsAt } = season.kinds[kind]!
  const last = draft.spans[kind]!.to
  const { ready, aged } = readyFromBatches(draft, kind)
  const areaPrice = standsAt
    ? season.places[standsAt.place]!.pricePerSquareMetreWeek * standsAt.squareMetres
    : 0

  const madeRow: number[] = []
  const made: number[] = []
  const stockRow: number[] = []
  for (let week = 0; week <= last; week++) {
    const live = ready[week]!
    madeRow.push(model.row({ rule: 'made', subject: kind, about: id, week, lower: live, upper: live }))
    made.push(model.column({ name: `made/${id}/${week}`, part: 'holding', cost: 0 }))
    stockRow.push(model.row({ rule: 'stockOfFinished', subject: kind, about: id, week, upper: 0 }))
    model.put(madeRow[week]!, made[week]!, 1)
    model.put(stockRow[week]!, made[week]!, -1)
    if (week > 0) {
      model.put(madeRow[week]!, made[week - 1]!, -1)
      model.put(stockRow[week]!, made[week - 1]!, 1)
    }
  }

  for (const { way, week, column } of draft.startsOf[kind]!) {
    const { ready: share } = courseOf(season, way, week)
    for (let k = 0; k < share.length && week + k <= last; k++)
      model.put(madeRow[week + k]!, column, -share[k]!)
  }
  if (buyIn)
    for (let week = buyIn.weeksNotice; week <= last; week++) {
      const name = `buyIn/${id}/${week}`
      const column = model.column({ name, part: 'buying in', cost: buyIn.price, upper: buyIn.mostPerWeek })
      draft.bought.push({ kind, week, column })
      model.put(madeRow[week]!, column, -1)
    }
  for (const use of draft.usesOf[kind]!)
    if (use.useWeek <= last) model.put(stockRow[use.useWeek]!, use.column, use.perPlant)
  for (const { week, column } of draft.deliveriesOf[kind]!) model.put(stockRow[week]!, column, 1)

  for (let week = 0; week < last; week++) {
    const column = model.column({
      name: `hold/${id}/${week}`,
      part: 'holding',
      cost: holdingCostPerWeek + areaPrice,
    })
    draft.holds.push({ kind, week, column })
    model.put(stockRow[week]!, column, 1)
    model.put(stockRow[week + 1]!, column, -1)

    // Of what was ready before this week, that which is past use although its time since this week is not up.
    const gone = aged.reduce(
      (sum, { weeksAgo, number }) =>
        sum + (week >= usableWeeks - weeksAgo && week < usableWeeks ? number : 0),
      0,
    )
    if (week < usableWeeks && gone === 0) continue
    const row = model.row({ rule: 'notPastUse', subject: kind, about: id, week, upper: -gone })
    model.put(row, column, 1)
    model.put(row, made[week]!, -1)
    if (week >= usableWeeks) model.put(row, made[week - usableWeeks]!, 1)
  }
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
