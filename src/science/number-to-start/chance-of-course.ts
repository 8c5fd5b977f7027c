import { binomialAtLeast } from '../distributions/beta.ts'
import { type GammaFactor, gammaContourIntegral } from '../distributions/gamma-contour.ts'
import { type Course, moment } from './rate.ts'

/**
 * Chance that at least `wanted` of `start` plants come through a course.
 *
 * Given the share P that comes through, the number out is binomial, and P(out ≥ k | P) is the chance that a
 * Beta(k, n − k + 1) variable Y lies below P. So the chance is P(log P − log Y ≥ 0), with log P a sum of
 * logarithms of independent Betas: all its transforms are gamma functions,
 *   chance = 1/2πi ∫ E[P^s] E[Y^−s] ds/s,
 * and one integral along one path gives it, whatever the number of plants and steps.
 *
 * @returns absolute error below 1e-9 up to 100,000 plants (rounding of log Γ; 1e-12 for a few hundred)
 * @source Springer & Thompson 1970, SIAM J. Applied Mathematics 18:721-737 (products of Betas by Mellin transform)
 */
export function chanceOfCourse(wanted: number, start: number, course: Course): number {
  if (wanted <= 0) return 1
  if (wanted > start || course.known === 0) return 0
  const { known, uncertain } = course
  if (uncertain.length === 0) return binomialAtLeast(wanted, start, known)

  const factors: GammaFactor[] = [
    { at: wanted, direction: -1, power: 1 },
    { at: start + 1, direction: -1, power: -1 },
  ]
  let lowestAlpha = Number.POSITIVE_INFINITY
  let relativeVariance = (start - wanted + 1) / (wanted * (start + 1))
  for (const { alpha, beta } of uncertain) {
    factors.push({ at: alpha, direction: 1, power: 1 }, { at: alpha + beta, direction: 1, power: -1 })
    lowestAlpha = Math.min(lowestAlpha, alpha)
    relativeVariance += beta / (alpha * (alpha + beta + 1))
  }
  const product = { slope: Math.log(known), factors }
  // Where log P − log Y has its middle says on which side of 0 the path crosses, and about where.
  const middle = Math.log(moment(course, 1) * (start + 1)) - Math.log(wanted) - relativeVariance / 2
  const reach = Math.sqrt(middle * middle + 4 * relativeVariance)
  if (middle <= 0) {
    const chance = gammaContourIntegral(product, 0, wanted, true, (reach - middle) / (2 * relativeVariance))
    return Math.min(Math.max(chance, 0), 1)
  }
  const missed = -gammaContourIntegral(
    product,
    -lowestAlpha,
    0,
    true,
    -(reach + middle) / (2 * relativeVariance),
  )
  return Math.min(Math.max(1 - missed, 0), 1)
}
