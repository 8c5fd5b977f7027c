import { courseOf, type SeasonRule } from './season-draft.ts'

/**
 * Starts come in whole trays, and not below the smallest sensible batch; a batch costs its own work once.
 *   start(r, t) = tray(r) · trays(r, t)                      trays: whole
 *   smallest(r) · begun(r, t) ≤ start(r, t) ≤ largest(r) · begun(r, t)      begun: yes or no
 */
export const wholeNumbers: SeasonRule = draft => {
  if (!draft.isWhole) return
  const { season, model } = draft
  for (const { way, week, column } of draft.starts) {
    const { name, tray, smallestBatch } = season.ways[way]!
    const course = courseOf(season, way, week)
    const largest = Math.ceil(draft.largestStart[way]! / tray) * tray
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

    for (const { skill, perBatch } of course.labour) {
      const rows = draft.labourRows.get(skill)!
      for (let k = 0; k < perBatch.length; k++) {
        const w = week + course.firstOffset + k
        if (w >= 0 && w < season.weeks) model.put(rows[w]!, begun, perBatch[k]!)
      }
    }
    draft.wholeStarts.push({ way, week, column, trays, begun })
  }
}
