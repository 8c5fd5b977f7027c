import gammaln from '@stdlib/math-base-special-gammaln'
import type { ListOfChances } from './sums-of-lists.ts'

/** Numbers at the ends that are less likely than this are left off. */
const NOTHING = 1e-17

/**
 * Chances of 0 … `number` successes when the chance of one is itself uncertain, given as points with weights.
 * Each point adds its binomial chances from the most likely number outwards until they no longer count; the list
 * begins and ends where the chances do.
 */
export function binomialList(
  number: number,
  { shares, weights }: { readonly shares: readonly number[]; readonly weights: readonly number[] },
): ListOfChances {
  const list = new Float64Array(number + 1)
  const logOfAll = gammaln(number + 1)
  shares.forEach((share, i) => {
    const weight = weights[i]!
    if (share <= 0 || share >= 1) {
      list[share <= 0 ? 0 : number]! += weight
      return
    }
    const odds = share / (1 - share)
    const mode = Math.min(number, Math.floor((number + 1) * share))
    const most =
      weight *
      Math.exp(
        logOfAll -
          gammaln(mode + 1) -
          gammaln(number - mode + 1) +
          mode * Math.log(share) +
          (number - mode) * Math.log1p(-share),
      )
    const least = most * 1e-16
    let chance = most
    for (let k = mode; k <= number && chance > least; k++) {
      list[k]! += chance
      chance *= (odds * (number - k)) / (k + 1)
    }
    chance = most
    for (let k = mode; k > 0; k--) {
      chance *= k / (odds * (number - k + 1))
      if (chance <= least) break
      list[k - 1]! += chance
    }
  })
  let first = 0
  let last = number
  while (first < number && list[first]! < NOTHING) first++
  while (last > first && list[last]! < NOTHING) last--
  return { first, chances: list.slice(first, last + 1) }
}
