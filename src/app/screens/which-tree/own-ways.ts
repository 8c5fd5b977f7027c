import type { WayToMake } from '../../../advice/index.ts'
import type { RateRow } from '../../../api/index.ts'
import {
  type Kind,
  type MethodId,
  markOfMethod,
  type ShareFigure,
  type TreeForm,
} from '../../../trade/index.ts'

const formByMark = {
  seed: 'seedling',
  cutting: 'cutting-grown',
  layer: 'layered',
  graft: 'worked',
  bud: 'worked',
  division: 'divided',
} as const
const formOf = (method: MethodId): TreeForm => formByMark[markOfMethod(method)]

/** The middle of the prices of kinds, so that one dear cultivar does not speak for all. */
const middle = (kinds: readonly Kind[]): number | undefined =>
  kinds.map(({ price }) => price).sort((a, b) => a - b)[Math.floor((kinds.length - 1) / 2)]

/** The usual ways with the nursery's own price (of the same protocol, else of trees of the same form) and learnt shares. */
export function ownWays(
  ways: readonly WayToMake[],
  kinds: readonly Kind[],
  rates: readonly RateRow[],
): readonly WayToMake[] {
  const trees = kinds.filter(({ form }) => form !== 'rootstock')
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
    const own = trees.filter(one => one.ways.some(({ protocol }) => protocol === way.protocol.id))
    const alike = trees.filter(
      ({ species, form }) => species === way.protocol.species && form === formOf(way.protocol.method),
    )
    return {
      ...way,
      price: middle(own) ?? middle(alike) ?? way.price,
      shareOf: step => shares.get(`${way.protocol.id}/${step.id}`),
    }
  })
}
