import { requireWithin } from '../bounds.ts'

export interface CaliperPair {
  /** Places in the two lists, counted from 0. */
  readonly scion: number
  readonly stock: number
  readonly gapMm: number
}

/**
 * Scions to stocks by caliper: as many pairs within the tolerance as can be had and, among those, the smallest sum of
 * gaps. Cambium meets cambium only where the calipers match.
 *
 * Once both lists are sorted no two pairs of a best pairing cross, so that one table over both finds it, in a time and
 * memory that grow with the number of scions times the number of stocks.
 *
 * @param scionMm calipers, above 0
 * @param stockMm calipers, above 0
 * @param toleranceMm largest gap, 0 or more
 * @returns pairs by rising caliper of the stock, which is the order to lay out the trays
 * @throws RangeError for an argument out of range
 * @source common practice (stems of like caliper), no source; pairs by assignment as `cheapestAssignment`
 * @example pairByCaliper([6, 8.2], [8, 6.5, 12], 0.5) // [{ scion: 0, stock: 1, gapMm: 0.5 }, { scion: 1, stock: 0, gapMm: 0.2 }]
 */
export function pairByCaliper(
  scionMm: readonly number[],
  stockMm: readonly number[],
  toleranceMm: number,
): readonly CaliperPair[] {
  requireWithin('pairByCaliper', 'toleranceMm', toleranceMm, 0, Number.MAX_VALUE)
  for (const caliper of [...scionMm, ...stockMm])
    if (!(caliper > 0 && Number.isFinite(caliper)))
      throw new RangeError(`pairByCaliper: calipers must be above 0, got ${caliper}`)
  const byCaliper = (list: readonly number[]) =>
    list.map((mm, place) => ({ mm, place })).sort((a, b) => a.mm - b.mm)
  const scions = byCaliper(scionMm)
  const stocks = byCaliper(stockMm)
  // What rounding in a gap such as 6.5 − 6.1 adds is not a misfit.
  const reach = toleranceMm * (1 + 1e-12) + 1e-9

  // best[i][j]: most pairs, then least gap, of the first i scions and the first j stocks.
  const width = stocks.length + 1
  const pairs = new Int32Array((scions.length + 1) * width)
  const gaps = new Float64Array((scions.length + 1) * width)
  const better = (a: number, b: number) =>
    pairs[a]! > pairs[b]! || (pairs[a] === pairs[b] && gaps[a]! < gaps[b]!)
  for (let i = 1; i <= scions.length; i++)
    for (let j = 1; j <= stocks.length; j++) {
      const here = i * width + j
      const best = better(here - width, here - 1) ? here - width : here - 1
      pairs[here] = pairs[best]!
      gaps[here] = gaps[best]!
      const gap = Math.abs(scions[i - 1]!.mm - stocks[j - 1]!.mm)
      if (gap > reach) continue
      const joined = here - width - 1
      const count = pairs[joined]! + 1
      const sum = gaps[joined]! + gap
      if (count > pairs[here]! || (count === pairs[here] && sum < gaps[here]!)) {
        pairs[here] = count
        gaps[here] = sum
      }
    }

  const found: CaliperPair[] = []
  let i = scions.length
  let j = stocks.length
  while (i > 0 && j > 0) {
    const here = i * width + j
    if (pairs[here] === pairs[here - 1] && gaps[here] === gaps[here - 1]) j--
    else if (pairs[here] === pairs[here - width] && gaps[here] === gaps[here - width]) i--
    else {
      const scion = scions[--i]!
      const stock = stocks[--j]!
      found.push({ scion: scion.place, stock: stock.place, gapMm: Math.abs(scion.mm - stock.mm) })
    }
  }
  return found.reverse()
}
