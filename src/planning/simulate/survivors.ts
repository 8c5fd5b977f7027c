import { normalScore } from './normal-scores.ts'

/** Fewer survivors or losses expected than this: the probabilities are counted up one by one. */
const FEW = 14

/**
 * How many of `number` survive, each with chance `share`: the quantile of the binomial at a uniform number.
 * The same luck with more plants or a better share never gives fewer. Exact where few survive or few are lost;
 * else by the Cornish–Fisher series to the third term, within one plant of the exact quantile in the bulk.
 * @source Cornish & Fisher 1938, Revue de l'Institut International de Statistique 5:307-320, from memory
 */
export function survivors(number: number, share: number, uniform: number): number {
  if (number <= 0 || share <= 0) return 0
  if (share >= 1) return number
  if (number * share < FEW) return countedUp(number, share, uniform)
  if (number * (1 - share) < FEW) return number - countedUp(number, 1 - share, 1 - uniform)
  const z = normalScore(uniform)
  const variance = number * share * (1 - share)
  const sd = Math.sqrt(variance)
  const skew = (1 - 2 * share) / sd
  const excess = (1 - 6 * share * (1 - share)) / variance
  const square = z * z
  const score =
    z +
    (skew * (square - 1)) / 6 +
    (excess * z * (square - 3)) / 24 -
    (skew * skew * z * (2 * square - 5)) / 36
  const many = Math.round(number * share + sd * score)
  return many < 0 ? 0 : Math.min(many, number)
}

function countedUp(number: number, share: number, uniform: number): number {
  const odds = share / (1 - share)
  let left = uniform
  let chance = Math.exp(number * Math.log1p(-share))
  let count = 0
  while (left > chance && count < number) {
    left -= chance
    count++
    chance *= (odds * (number - count + 1)) / count
  }
  return count
}
