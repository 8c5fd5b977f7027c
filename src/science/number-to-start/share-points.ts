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
  let relative = 0
  for (const { alpha, beta } of uncertain) relative += beta / (alpha * (alpha + beta + 1))
  const priorPrecision = (1 - mean) ** 2 / relative
  const sdOfShare = mean * Math.sqrt(relative)
  const nearHalf = Math.min(0.5, mean < 0.5 ? mean + 5 * sdOfShare : 1 - mean + 5 * sdOfShare)
  const step = 0.8 / Math.sqrt(number * nearHalf * (1 - nearHalf) + priorPrecision + 0.25)
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
  // With W = −log P the density of W is 1/2πi ∫ exp(s W) E[P^s] ds, and dW = (1 − P) d logit.
  return logit => {
    const minusLog = log1pExp(-logit)
    const density = gammaContourIntegral(
      { slope: minusLog, factors },
      lowest,
      Number.POSITIVE_INFINITY,
      false,
      0,
    )
    return Math.max(density, 0) / (1 + Math.exp(logit))
  }
}

const log1pExp = (x: number) => (x > 35 ? x : Math.log1p(Math.exp(x)))
