import gammaln from '@stdlib/math-base-special-gammaln'
import { array, assert, double, property, record } from 'fast-check'
import { expect, test } from 'vitest'
import { watchForSlump } from './slump-watch.ts'

/** log of P(count | slump) / P(count | as expected), written out anew. */
const ratio = (
  { entered, survived, alpha, beta }: { entered: number; survived: number; alpha: number; beta: number },
  slump: number,
): number => {
  const odds = (alpha / beta) * slump
  const [low, rest] = [((alpha + beta) * odds) / (1 + odds), (alpha + beta) / (1 + odds)]
  const ofCount = (a: number, b: number) =>
    gammaln(a + survived) - gammaln(a) + gammaln(b + entered - survived) - gammaln(b)
  return ofCount(low, rest) - ofCount(alpha, beta)
}

test('a slump most likely began with the run of last batches that speaks most for it, of all runs and depths', () => {
  const share = double({ min: 0, max: 1, noNaN: true })
  const batch = record({ of: double({ min: 1, max: 60, noNaN: true }), share, mean: share }).map(
    ({ of, share, mean }) => {
      const entered = Math.ceil(of)
      return {
        ...{ entered, survived: Math.round(share * entered) },
        ...{ alpha: 0.5 + 20 * mean, beta: 0.5 + 20 * (1 - mean) },
      }
    },
  )
  assert(
    property(array(batch, { minLength: 1, maxLength: 25 }), batches => {
      const { since, oddsRatio } = watchForSlump(batches).at(-1)!
      const sumOf = (from: number, slump: number) =>
        batches.slice(from).reduce((sum, one) => sum + ratio(one, slump), 0)
      const best = Math.max(
        ...[0.7, 0.5, 0.35, 0.2].flatMap(slump => batches.map((_, from) => sumOf(from, slump))),
      )
      expect(sumOf(since, oddsRatio)).toBeCloseTo(best, 8)
    }),
  )
})
