import { courseOf, type SeasonRule } from './season-draft.ts'
import { numberSet } from './set-by-hand.ts'

const ANY_NUMBER = { tray: 1, smallestBatch: 1 }

/**
 * Starts come in whole trays, and not below the smallest sensible batch, unless the nursery fixed their number itself; a batch
 * costs its own work once, and what a batch less is worth.
 *   start(r, t) = tray(r) · trays(r, t)                      trays: whole
 *   smallest(r) · begun(r, t) ≤ start(r, t) ≤ largest(r) · begun(r, t)      begun: yes or no
 */
export const wholeNumbers: SeasonRule = draft => {
  if (!draft.isWhole) return
  const { season, model } = draft
  for (const { way, week, column } of draft.starts) {
    const { name } = season.ways[way]!
    const set = numberSet(season, { way, week })
    const { tray, smallestBatch } = set === undefined ? season.ways[way]! : ANY_NUMBER
    const course = courseOf(season, way, week)
    const largest = Math.max(set ?? 0, Math.ceil(draft.largestStart[way]! / tray) * tray)
    const trays = model.column({ name: `trays/${name}/${week}`, part: 'trays', cost: 0, isWhole: true })
    const row = model.row({ rule: 'wholeTrays', subject: way, about: name, week, lower: 0, upper: 0 })
    model.put(row, column, 1)
    model.put(row, trays, -tray)

    const begun = model.column({
      name: `begun/${name}/${week}`,
      part: 'begun',
      cost: 0,
      upper: 1,
      isWhole: true,
    })
    const enough = model.row({ rule: 'smallestBatch', subject: way, about: name, week, lower: 0 })
    model.put(enough, column, 1)
    model.put(enough, begun, -Math.max(smallestBatch, tray))
    const most = model.row({ rule: 'onlyIfBegun', subject: way, about: name, week, upper: 0 })
    model.put(most, column, 1)
    model.put(most, begun, -largest)

    let minutes = 0
    for (const { perBatch } of course.labour) for (const each of perBatch) minutes += each
    model.addCost(begun, minutes * season.prices.minute + (season.prices.batch ?? 0))
    draft.wholeStarts.push({ way, week, column, trays, begun })
  }
}
