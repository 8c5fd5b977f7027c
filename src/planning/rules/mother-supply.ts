import type { MotherPool } from '../season.ts'
import { courseOf, type SeasonDraft, type SeasonRule } from './season-draft.ts'

/**
 * Sticks, cuttings, branches and seed cut from the mothers of a cultivar stay within what they may give.
 *   taken(m, w) + kept(m, w) ≤ kept(m, w−1) + cut(m, w)         kept at most as long as it keeps
 *   cut(m, w) ≤ per week;   Σ cut over a calendar year ≤ per year
 * Mothers are pooled here and the cuts shared out among them afterwards.
 * Said as: "{pool} can give no more in {weeks}: one more … is worth {worth}."
 */
export const motherSupply: SeasonRule = draft => {
  const takers: { row: number; column: number; perPlant: number; week: number }[][] = draft.season.pools.map(
    () => [],
  )
  for (const { way, week, column } of draft.starts)
    for (const { pool, offset, perPlant } of courseOf(draft.season, way, week).material)
      if (week + offset < draft.season.weeks)
        takers[pool]!.push({ row: -1, column, perPlant, week: Math.max(0, week + offset) })
  draft.season.pools.forEach((pool, p) => {
    if (takers[p]!.length > 0) supplyOfPool(draft, pool, p, takers[p]!)
  })
}

function supplyOfPool(
  draft: SeasonDraft,
  pool: MotherPool,
  p: number,
  takers: readonly { column: number; perPlant: number; week: number }[],
): void {
  const { model } = draft
  const wanted = new Set(takers.map(taker => taker.week))
  const last = Math.max(...wanted)
  const storedLast = Math.max(-1, ...pool.stored.map(lot => lot.untilWeek))
  const isStoredWanted = pool.stored.length > 0
  const isOfUse = (week: number) => {
    if (isStoredWanted && week <= storedLast) return true
    for (let w = week; w <= Math.min(last, week + pool.keepsWeeks); w++) if (wanted.has(w)) return true
    return false
  }

  const cuts = new Map<number, number>()
  const rows = new Map<number, number>()
  let keptBefore = -1
  for (let week = 0; week <= last; week++) {
    if (!isOfUse(week)) {
      keptBefore = -1
      continue
    }
    const upper = week === 0 ? pool.stored.reduce((sum, lot) => sum + lot.number, 0) : 0
    const row = model.row({ rule: 'motherSupply', subject: p, about: pool.name, week, upper })
    rows.set(week, row)
    if (keptBefore >= 0) model.put(row, keptBefore, -1)
    keptBefore = -1

    const most = pool.perWeek[week]!
    if (most > 0 || pool.young) {
      // The bound stands in a row of its own, so that it has a dual and can grow with young mothers.
      const column = model.column({ name: `cut/${pool.name}/${week}`, part: 'material', cost: 0 })
      const weekRow = model.row({ rule: 'motherWeek', subject: p, about: pool.name, week, upper: most })
      model.put(weekRow, column, 1)
      model.put(row, column, -1)
      cuts.set(week, column)
      draft.cuts.push({ pool: p, week, column })
    }
    const storedStill = pool.stored.reduce((sum, lot) => sum + (lot.untilWeek > week ? lot.number : 0), 0)
    if ((pool.keepsWeeks > 0 || storedStill > 0) && week < last) {
      const column = model.column({ name: `keep/${pool.name}/${week}`, part: 'material', cost: 0 })
      model.put(row, column, 1)
      draft.kept.push({ pool: p, week, column })
      const notStale = model.row({ rule: 'notStale', subject: p, about: pool.name, week, upper: storedStill })
      model.put(notStale, column, 1)
      for (let v = Math.max(0, week - pool.keepsWeeks + 1); v <= week; v++)
        if (cuts.has(v)) model.put(notStale, cuts.get(v)!, -1)
      keptBefore = column
    }
  }
  for (const { column, perPlant, week } of takers) model.put(rows.get(week)!, column, perPlant)

  pool.perYear.forEach(({ fromWeek, toWeek, most }) => {
    const inYear = [...cuts].filter(([week]) => week >= fromWeek && week <= toWeek)
    if (inYear.length === 0) return
    const row = model.row({ rule: 'motherYear', subject: p, about: pool.name, week: fromWeek, upper: most })
    for (const [, column] of inYear) model.put(row, column, 1)
  })
}
