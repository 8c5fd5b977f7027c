import type { SeasonRule } from './season-draft.ts'

/**
 * Of a protected cultivar no more are begun in a calendar year than its owner allows.
 *   Σ start(r, t) ≤ most(year)        r: ways of the kinds that carry the cultivar, t: weeks of the year
 * Said as: "{cultivar} is at the end of its licence in {year}: one more plant is worth {worth}."
 */
export const licence: SeasonRule = draft => {
  draft.season.licences.forEach(({ name, kinds, perYear }, l) => {
    const starts = kinds.flatMap(kind => draft.startsOf[kind]!)
    for (const { fromWeek, toWeek, most } of perYear) {
      const inYear = starts.filter(({ week }) => week >= fromWeek && week <= toWeek)
      if (inYear.length === 0) continue
      const row = draft.model.row({
        rule: 'licence',
        subject: l,
        about: name,
        week: fromWeek,
        upper: most,
      })
      for (const { column } of inYear) draft.model.put(row, column, 1)
    }
  })
}
