import type { Nursery } from '../../record/index.ts'
import type { SeasonPlace } from '../season.ts'

/** A mother tree is planted at 3 m by 2 m. Common practice, no source; hedges and stool beds stand closer. */
const SQUARE_METRES_EACH = 6

/** Young mother trees for which the mother block has ground beside those that stand; undefined where none is entered. */
export function groundForMothers(nursery: Nursery, places: readonly SeasonPlace[]): number | undefined {
  const block = places.find(({ place }) => place === 'mother block')
  if (!block) return undefined
  const standing = [...nursery.mothers.values()].filter(({ retired }) => retired === null).length
  return Math.max(0, Math.floor(Math.max(0, ...block.squareMetres) / SQUARE_METRES_EACH) - standing)
}
