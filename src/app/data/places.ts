import type { PlaceKind } from '../../trade/index.ts'

/** Kinds of place, as one walks: from the mother block through the houses out to the field. */
export const PLACES: readonly PlaceKind[] = [
  'mother block',
  'seed house',
  'mist bed',
  'hot bed',
  'healing tent',
  'cold store',
  'shade house',
  'tunnel',
  'standing ground',
  'field row',
]
