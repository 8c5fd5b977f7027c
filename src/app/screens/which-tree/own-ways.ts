import type { WayToMake } from '../../../advice/index.ts'
import type { RateRow } from '../../../api/index.ts'
import type { Kind, ShareFigure } from '../../../trade/index.ts'

/** The usual ways with the nursery's own price and learnt shares, where it has any for the same protocol. */
export function ownWays(
  ways: readonly WayToMake[],
  kinds: readonly Kind[],
  rates: readonly RateRow[],
): readonly WayToMake[] {
  const shares = new Map<string, ShareFigure>()
  for (const row of rates)
    if (row.from !== 'facts')
      shares.set(`${row.protocol}/${row.step}`, {
        low: row.low,
        typical: row.mean,
        high: row.high,
        basis: row.from === 'set by the nursery' ? 'set by the nursery' : 'recorded here',
        sources: [],
      })
  return ways.map(way => {
    const kind = kinds.find(one => one.ways.some(({ protocol }) => protocol === way.protocol.id))
    return {
      ...way,
      price: kind?.price ?? way.price,
      shareOf: step => shares.get(`${way.protocol.id}/${step.id}`),
    }
  })
}
