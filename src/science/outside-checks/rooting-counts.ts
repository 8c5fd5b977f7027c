import { exactStrata } from '../comparison/exact-strata.ts'
import { heterogeneity } from '../comparison/heterogeneity.ts'
import { betaQuantile } from '../distributions/beta.ts'
import rooting from '../fixtures/rooting-counts.json' with { type: 'json' }
import { fitRootCounts } from '../rates/root-counts.ts'
import { casesOf, type Fixture, sourceOf } from './fixture.ts'
import { type CheckValue, type OutsideCheck, outsideCheck, type Tolerance } from './outside-check.ts'

const fixture: Fixture = rooting
const cells = rooting.data.map(({ photoperiod_h: photo, bap_uM: bap, shootsByRoots, n }) => ({
  photo,
  bap,
  shootsByRoots,
  entered: n,
  survived: n - shootsByRoots[0]!,
}))

function check(id: string, what: string, got: CheckValue, tolerance: Tolerance): OutsideCheck {
  const { basis, expected, note } = casesOf<unknown, CheckValue>(fixture, id).find(one => one.id === id)!
  return outsideCheck({
    what: `${what} (${id})`,
    source: sourceOf(fixture, { note }),
    basis,
    expected,
    got,
    tolerance,
  })
}

/** Mean and variance of the roots of shoots with at least `least` of them. */
function moments(shootsByRoots: readonly number[], least: number) {
  let shoots = 0
  let sum = 0
  let squares = 0
  shootsByRoots.forEach((count, roots) => {
    if (roots < least) return
    shoots += count
    sum += count * roots
    squares += count * roots * roots
  })
  const mean = sum / shoots
  return { mean, variance: (squares - shoots * mean * mean) / (shoots - 1) }
}

const total = (photo: number) =>
  cells
    .filter(cell => cell.photo === photo)
    .reduce(
      (sum, { entered, survived }) => ({ entered: sum.entered + entered, survived: sum.survived + survived }),
      {
        entered: 0,
        survived: 0,
      },
    )

/** Roots on micropropagated apple shoots, 270 shoots in eight treatments: how many root, and how many roots. */
export function rootingCountsChecks(): readonly OutsideCheck[] {
  const shootsByRoots = cells.map(cell => cell.shootsByRoots)
  const byCell = cells.map((_, i) => i)
  const byPhoto = cells.map(({ photo }) => (photo === 8 ? 0 : 1))
  const poisson = fitRootCounts({ shootsByRoots, meanGroup: byCell, spread: 'poisson' })
  const inflated = fitRootCounts({
    shootsByRoots,
    meanGroup: byCell,
    unrootedGroup: byPhoto,
    spread: 'poisson',
  })
  const negative = fitRootCounts({ shootsByRoots, meanGroup: byCell, spread: 'negative-binomial' })
  const both = fitRootCounts({
    shootsByRoots,
    meanGroup: byCell,
    unrootedGroup: byPhoto,
    spread: 'negative-binomial',
  })
  const simple = fitRootCounts({
    shootsByRoots,
    meanGroup: byPhoto,
    unrootedGroup: byPhoto,
    spread: 'poisson',
  })
  const pearson = cells.reduce(
    (sum, cell, c) =>
      cell.shootsByRoots.reduce(
        (s, count, k) => s + (count * (k - poisson.means[c]!) ** 2) / poisson.means[c]!,
        sum,
      ),
    0,
  )
  const deviance = cells.reduce(
    (sum, cell, c) =>
      cell.shootsByRoots.reduce(
        (s, count, k) =>
          s + 2 * count * ((k > 0 ? k * Math.log(k / poisson.means[c]!) : 0) - (k - poisson.means[c]!)),
        sum,
      ),
    0,
  )
  const logOdds = (share: number) => Math.log(share / (1 - share))
  const h8 = total(8)
  const h16 = total(16)
  const sixteen = cells.filter(({ photo }) => photo === 16)
  const among16 = heterogeneity(sixteen)
  return [
    check(
      'cells',
      'share rooted with exact limits, and roots per shoot',
      {
        cells: cells.map(({ photo, bap, entered, survived, shootsByRoots: list }) => {
          const all = moments(list, 0)
          const rooted = moments(list, 1)
          return {
            photo,
            bap,
            n: entered,
            rooted: survived,
            proportion: survived / entered,
            cpLower: survived === 0 ? 0 : betaQuantile(0.025, survived, entered - survived + 1),
            cpUpper: survived === entered ? 1 : betaQuantile(0.975, survived + 1, entered - survived),
            meanAll: all.mean,
            varAll: all.variance,
            meanRooted: rooted.mean,
            varRooted: rooted.variance,
          }
        }),
      },
      2e-7,
    ),
    check(
      'rooted-by-photoperiod',
      'rooting by day length, chi-square and exact',
      {
        h8: { rooted: h8.survived, n: h8.entered },
        h16: { rooted: h16.survived, n: h16.entered },
        pearson: heterogeneity([h8, h16]).pearson,
        fisherP: exactStrata([{ first: h8, second: h16 }]).pTwoSided,
      },
      { pearson: 1e-4, fisherP: 1e-26, other: 0 },
    ),
    check(
      'rooted-16h-by-bap',
      'rooting under 16 h by hormone: no difference shown',
      {
        rooted: sixteen.map(({ survived }) => survived),
        n: sixteen.map(({ entered }) => entered),
        pearson: among16.pearson,
        df: among16.degreesOfFreedom,
      },
      1e-8,
    ),
    check(
      'poisson-interaction',
      'roots per shoot as Poisson counts',
      {
        logLik: poisson.logLikelihood,
        minus2LL: -2 * poisson.logLikelihood,
        deviance,
        df: cells.reduce((sum, { entered }) => sum + entered, 0) - cells.length,
        pearsonX2: pearson,
      },
      0.001,
    ),
    check(
      'zip-hp-p',
      'zero-inflated Poisson counts: the published minus twice log-likelihood, 1244.457',
      {
        logLik: inflated.logLikelihood,
        minus2LL: -2 * inflated.logLikelihood,
        zeroProb8: inflated.unrooted[0]!,
        zeroProb16: inflated.unrooted[1]!,
      },
      { zeroProb8: 1e-4, zeroProb16: 1e-3, other: 0.01 },
    ),
    check(
      'negbin-interaction',
      'negative binomial counts',
      { logLik: negative.logLikelihood, theta: negative.size },
      0.001,
    ),
    check(
      'zinb-hp-p',
      'zero-inflated negative binomial counts',
      { logLik: both.logLikelihood, minus2LL: -2 * both.logLikelihood, theta: both.size },
      { theta: 0.05, other: 0.01 },
    ),
    check(
      'zip-p-p',
      'zero-inflated Poisson counts by day length alone',
      {
        logLik: simple.logLikelihood,
        minus2LL: -2 * simple.logLikelihood,
        count: [Math.log(simple.means[0]!), Math.log(simple.means[1]! / simple.means[0]!)],
        zero: [logOdds(simple.unrooted[0]!), logOdds(simple.unrooted[1]!) - logOdds(simple.unrooted[0]!)],
      },
      0.01,
    ),
    check(
      'hurdle-hp-p',
      'rooted or not, and how many roots if rooted, taken apart',
      {
        logLik: hurdleLogLikelihood(h8, h16),
        pRooted8: h8.survived / h8.entered,
        pRooted16: h16.survived / h16.entered,
      },
      0.001,
    ),
  ]
}

/** Binomial rooted or not by day length, then Poisson counts that cannot be 0, fitted cell by cell. */
function hurdleLogLikelihood(...photos: readonly { entered: number; survived: number }[]): number {
  let sum = 0
  for (const { entered, survived } of photos)
    sum +=
      survived * Math.log(survived / entered) +
      (entered - survived) * Math.log((entered - survived) / entered)
  for (const { shootsByRoots } of cells) {
    const { mean } = moments(shootsByRoots, 1)
    // Mean of a Poisson that is not 0: m / (1 − e^−m).
    let low = 1e-6
    let high = mean
    for (let round = 0; round < 100; round++) {
      const middle = (low + high) / 2
      if (middle / -Math.expm1(-middle) > mean) high = middle
      else low = middle
    }
    let factorial = 0
    shootsByRoots.forEach((count, roots) => {
      if (roots === 0) return
      factorial += Math.log(roots)
      sum += count * (roots * Math.log(low) - low - factorial - Math.log(-Math.expm1(-low)))
    })
  }
  return sum
}
