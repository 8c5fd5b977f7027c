import type { ShareFigure } from '../figure.ts'

const weakest = (shares: readonly ShareFigure[]): Pick<ShareFigure, 'basis' | 'sources'> => {
  const order = [
    'from memory',
    'common practice',
    'set by the nursery',
    'recorded here',
    'published',
  ] as const
  const basis = order.find(candidate => shares.some(share => share.basis === candidate)) ?? 'from memory'
  return { basis, sources: [...new Set(shares.flatMap(share => share.sources))] }
}

/**
 * The share that passes all of several hurdles, each passed or not regardless of the others.
 * Typical shares multiply; the spreads, as logarithms, add as squares: √(Σ ln²(low / typical)).
 */
export function allOf(shares: readonly ShareFigure[], note: string): ShareFigure {
  const typical = shares.reduce((product, share) => product * share.typical, 1)
  const spread = (end: 'low' | 'high') =>
    Math.hypot(
      ...shares.map(share =>
        share.typical > 0 && share[end] > 0 ? Math.log(share[end] / share.typical) : 0,
      ),
    )
  return {
    low: shares.some(share => share.low === 0) ? 0 : typical * Math.exp(-spread('low')),
    typical,
    high: Math.min(1, typical * Math.exp(spread('high'))),
    ...weakest(shares),
    note,
  }
}

/** A share known only over several stages together, spread evenly: the product of the parts is the whole. */
export const spreadOver = (share: ShareFigure, stages: number): ShareFigure => ({
  ...share,
  low: share.low ** (1 / stages),
  typical: share.typical ** (1 / stages),
  high: share.high ** (1 / stages),
  note: `a share of ${share.typical} over ${stages} stages, spread evenly over them`,
})
