import gammaln from '@stdlib/math-base-special-gammaln'
import { gammaContourIntegral } from '../distributions/gamma-contour.ts'
import { type Course, moment } from './rate.ts'

/** A distribution of the share that comes through as points with weights that add up to 1. */
export interface SharePoints {
  readonly shares: readonly number[]
  readonly weights: readonly number[]
}

/**
 * The share P that comes through a course as points and weights, close enough to each other that a mean over them of
 * a binomial chance of up to `number` plants is exact to about 1e-10: a trapezoid rule over logit P with steps of
 * 0.8 of what `number` plants tell of the logit.
 */
export function sharePoints({ known, uncertain }: Course, number: number): SharePoints {
  if (uncertain.length === 0 || known === 0) return { shares: [known], weights: [1] }
  const density = densityOverLogit(uncertain)
  const mean = moment({ known: 1, uncertain }, 1)
  // A Beta that heaps up at 1 leaves the others' shape as it is: their width is what the points must show.
  const shaping = uncertain.filter(({ beta }) => beta >= 3)
  const shapingMean = moment({ known: 1, uncertain: shaping }, 1)
  let relative = 0
  let all = 0
  let blunt = 1
  for (const step of uncertain) {
    const variance = step.beta / (step.alpha * (step.alpha + step.beta + 1))
    all += variance
    if (shaping.includes(step)) relative += Math.min(variance, 1)
    else blunt += Math.min(step.alpha, step.beta)
  }
  const priorPrecision = blunt + (relative === 0 ? 0 : (1 - shapingMean) ** 2 / relative)
  const sdOfShare = mean * Math.sqrt(all)
  const nearHalf = Math.min(0.5, mean < 0.5 ? mean + 5 * sdOfShare : 1 - mean + 5 * sdOfShare)
  const step = 0.8 / Math.sqrt(number * nearHalf * (1 - nearHalf) + priorPrecision)
  const middle = Math.log(mean / (1 - mean))
  const shares: number[] = []
  const weights: number[] = []
  let highest = 0
  let total = 0
  for (const direction of [1, -1]) {
    for (let i = direction === 1 ? 0 : 1; i < 100_000; i++) {
      const logit = middle + direction * i * step
      const weight = density(logit)
      highest = Math.max(highest, weight)
      if (weight < 1e-15 * highest || Math.abs(logit) > 600) break
      shares.push(known / (1 + Math.exp(-logit)))
      weights.push(weight)
      total += weight
    }
  }
  return { shares, weights: weights.map(weight => weight / total) }
}

/** Density of the product of Betas, per unit of its logit and up to a constant factor. */
function densityOverLogit(
  uncertain: readonly { readonly alpha: number; readonly beta: number }[],
): (logit: number) => number {
  const [only, second] = uncertain
  if (only && !second) {
    const { alpha, beta } = only
    const base = gammaln(alpha + beta) - gammaln(alpha) - gammaln(beta)
    return logit => Math.exp(base - alpha * log1pExp(-logit) - beta * log1pExp(logit))
  }
  const factors = uncertain.flatMap(({ alpha, beta }) => [
    { at: alpha, direction: 1 as const, power: 1 as const },
    { at: alpha + beta, direction: 1 as const, power: -1 as const },
  ])
  const lowest = -Math.min(...uncertain.map(({ alpha }) => alpha))
  // Very near to P = 1 the density of W = −log P is a power of W.
  let power = -1
  let logFactor = 0
  let size = 1
  for (const { alpha, beta } of uncertain) {
    power += beta
    logFactor += gammaln(alpha + beta) - gammaln(alpha)
    size += alpha + beta
  }
  logFactor -= gammaln(power + 1)
  // Elsewhere it is 1/2πi ∫ exp(s W) E[P^s] ds; dW = (1 − P) d logit.
  return logit => {
    const minusLog = log1pExp(-logit)
    const density =
      minusLog * size < 1e-10
        ? Math.exp(logFactor + power * Math.log(minusLog))
        : gammaContourIntegral({ slope: minusLog, factors }, lowest, Number.POSITIVE_INFINITY, false, 0)
    return Math.max(density, 0) / (1 + Math.exp(logit))
  }
}

/** log(1 + exp x) */
const log1pExp = (x: number) => (x > 35 ? x : Math.log1p(Math.exp(x)))
