import { logChoose } from '../numerics/log-choose.ts'
import { cellsOf, type Stratum } from './two-groups.ts'

export interface ExactStrata {
  /** Chance of a result no likelier than this one, if the two treatments were alike in every block. */
  readonly pTwoSided: number
  /** Chance of as many survivors in the first treatment or more. */
  readonly pFirstBetter: number
  readonly pFirstWorse: number
}

/**
 * Exact comparison of two treatments inside blocks: given each block's totals, the survivors of the first treatment are
 * hypergeometric in every block; their sum's distribution is worked out in full. One block: Fisher's exact test.
 *
 * @param strata at most about 20,000 plants together
 * @source Fisher 1935; Birch 1964, J. R. Stat. Soc. B 26:313-324 (several tables); two-sided as in R's fisher.test
 * @example exactStrata([{ first: { entered: 20, survived: 18 }, second: { entered: 20, survived: 11 }
 *   }]).pTwoSided // 0.03095
 */
export function exactStrata(strata: readonly Stratum[]): ExactStrata {
  let chances = [1]
  let lowest = 0
  let observed = 0
  for (const { first, second } of strata) {
    const [a, b, c, d] = cellsOf(first, second)
    const alive = a + c
    const low = Math.max(0, alive - (c + d))
    const high = Math.min(a + b, alive)
    const block = Array.from({ length: high - low + 1 }, (_, i) =>
      Math.exp(
        logChoose(a + b, low + i) + logChoose(c + d, alive - low - i) - logChoose(a + b + c + d, alive),
      ),
    )
    const next = new Array<number>(chances.length + block.length - 1).fill(0)
    for (let i = 0; i < chances.length; i++)
      for (let j = 0; j < block.length; j++) next[i + j]! += chances[i]! * block[j]!
    chances = next
    lowest += low
    observed += a
  }
  const at = observed - lowest
  const here = chances[at]!
  let total = 0
  let twoSided = 0
  let better = 0
  let worse = 0
  chances.forEach((chance, i) => {
    total += chance
    if (chance <= here * (1 + 1e-7)) twoSided += chance
    if (i >= at) better += chance
    if (i <= at) worse += chance
  })
  return {
    pTwoSided: Math.min(1, twoSided / total),
    pFirstBetter: Math.min(1, better / total),
    pFirstWorse: Math.min(1, worse / total),
  }
}
