import type { Figure } from '../../figure.ts'

/** A figure with its document; `how` says which of its three values the document leaves out. */
export const published = (
  low: number,
  typical: number,
  high: number,
  sources: readonly string[],
  how: Pick<Figure, 'typicalBasis' | 'rangeBasis' | 'note'> = {},
): Figure => ({ low, typical, high, basis: 'published', sources, ...how })

export const fromMemory = (low: number, typical: number, high: number, note?: string): Figure => ({
  low,
  typical,
  high,
  basis: 'from memory',
  sources: [],
  ...(note === undefined ? {} : { note }),
})
