import { courseOf, type SeasonRule } from './season-draft.ts'

/**
 * Area in use at a place in a week is no more than its benches have.
 *   Σ m²(r, w − t) · start(r, t) + Σ m²(p) · held(p, w) − extra(place, w) ≤ m²(place, w) − m² under living batches
 * What stands there already comes first: where it alone takes more than there is, nothing more may be set there.
 * Said as: "{place}, weeks {from} to {to}: one more m² is worth {worth} a week."
 */
export const space: SeasonRule = draft => {
  const { season, model } = draft
  const { weeks } = season
  const rows: number[][] = season.places.map((place, p) => {
    const standing = new Float64Array(weeks)
    for (const batch of season.batches)
      for (const area of batch.area)
        if (area.place === p)
          for (let w = 0; w < Math.min(weeks, area.squareMetres.length); w++)
            standing[w]! += area.squareMetres[w]!
    return Array.from({ length: weeks }, (_, week) => {
      const upper = Math.max(0, place.squareMetres[week]! - standing[week]!)
      const row = model.row({ rule: 'space', subject: p, about: place.place, week, upper })
      if (place.extraPricePerSquareMetreWeek !== null) {
        const name = `extra/${place.place}/${week}`
        const cost = place.extraPricePerSquareMetreWeek
        model.put(row, model.column({ name, part: 'extra area', cost }), -1)
      }
      return row
    })
  })

  for (const { way, week, column } of draft.starts) {
    const course = courseOf(season, way, week)
    let cost = 0
    for (const { place, squareMetres } of course.area) {
      const price = season.places[place]!.pricePerSquareMetreWeek
      for (let k = 0; k < squareMetres.length; k++) {
        const w = week + course.firstOffset + k
        cost += price * squareMetres[k]!
        if (w >= 0 && w < weeks) model.put(rows[place]![w]!, column, squareMetres[k]!)
      }
    }
    model.addCost(column, cost)
  }
  for (const { kind, week, column } of draft.holds) {
    const { standsAt } = season.kinds[kind]!
    if (standsAt) model.put(rows[standsAt.place]![week]!, column, standsAt.squareMetres)
  }
}
