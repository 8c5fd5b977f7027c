import type { RateRow } from '../../../api/index.ts'

/** The signs by which one sees that a method has worked, whatever comes after. */
const TELLS: ReadonlySet<RateRow['sign']> = new Set(['germinated', 'sprouted', 'rooted', 'united'])

/** Of each kind and protocol the step that tells whether the method worked: where none has its sign, the first. */
export function tellingRates(rows: readonly RateRow[]): RateRow[] {
  const byWay = new Map<string, RateRow>()
  for (const row of rows) {
    const way = `${row.kind} ${row.protocol}`
    const before = byWay.get(way)
    if (before === undefined || (!TELLS.has(before.sign) && TELLS.has(row.sign))) byWay.set(way, row)
  }
  return [...byWay.values()]
}
