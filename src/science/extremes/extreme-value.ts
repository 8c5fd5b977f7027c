import { requireAbove, requireBetween } from '../bounds.ts'

/** Generalised extreme-value distribution of yearly maxima. A negative shape has an upper end, zero is Gumbel's. */
export interface ExtremeValue {
  readonly location: number
  /** Above 0. */
  readonly scale: number
  readonly shape: number
}

/** Shapes nearer to 0 are taken as 0: beyond it the formula with 1/shape loses digits. */
const GUMBEL = 1e-9

/**
 * Chance that the maximum of a year is at most x: exp(−(1 + shape · (x − location)/scale)^(−1/shape)).
 * @returns 0 to 1
 * @throws RangeError for an argument out of range
 * @source Coles 2001, An Introduction to Statistical Modeling of Extreme Values, eq. 3.2
 * @example extremeValueCdf(4.3, { location: 3.875, scale: 0.198, shape: -0.05 }) // 0.902
 */
export function extremeValueCdf(x: number, { location, scale, shape }: ExtremeValue): number {
  requireAbove('extremeValueCdf', 'scale', scale, 0)
  const z = (x - location) / scale
  if (Math.abs(shape) < GUMBEL) return Math.exp(-Math.exp(-z))
  const inside = 1 + shape * z
  if (inside <= 0) return shape > 0 ? 0 : 1
  return Math.exp(-(inside ** (-1 / shape)))
}

/**
 * The value that the maximum of a year stays below with a given chance; the level passed once in T years has the
 * chance 1 − 1/T.
 * @param share between 0 and 1, both excluded
 * @throws RangeError for an argument out of range
 * @source Coles 2001, eq. 3.4
 * @example extremeValueQuantile(0.99, { location: 3.875, scale: 0.198, shape: -0.05 }) // 4.689
 */
export function extremeValueQuantile(share: number, { location, scale, shape }: ExtremeValue): number {
  requireBetween('extremeValueQuantile', 'share', share, 0, 1)
  requireAbove('extremeValueQuantile', 'scale', scale, 0)
  const reduced = -Math.log(share)
  return Math.abs(shape) < GUMBEL
    ? location - scale * Math.log(reduced)
    : location + (scale * (reduced ** -shape - 1)) / shape
}
