import { heterogeneity } from '../comparison/heterogeneity.ts'
import { intraclassCorrelation } from '../comparison/intraclass-correlation.ts'
import { betaQuantile } from '../distributions/beta.ts'
import { chiSquareAbove } from '../distributions/chi-square.ts'
import overdispersed from '../fixtures/overdispersed-counts.json' with { type: 'json' }
import { logChoose } from '../numerics/log-choose.ts'
import { fitBatchSpread } from '../rates/batch-spread.ts'
import { fitBetaBinomial } from '../rates/beta-binomial.ts'
import { logisticRegression } from '../rates/logistic.ts'
import { fitMixedLogistic } from '../rates/mixed-logistic.ts'
import { casesOf, type Fixture, sourceOf } from './fixture.ts'
import { type CheckValue, type OutsideCheck, outsideCheck, type Tolerance } from './outside-check.ts'

const fixture: Fixture = overdispersed
const { seeds, units12: units, cernua } = overdispersed.data

const plates = seeds.r.map((survived, i) => ({
  survived,
  entered: seeds.n[i]!,
  x1: seeds.x1[i]!,
  x2: seeds.x2[i]!,
}))
const crossed = {
  entered: seeds.n,
  survived: seeds.r,
  design: plates.flatMap(({ x1, x2 }) => [1, x1, x2, x1 * x2]),
  columns: 4,
}
const alone = { entered: seeds.n, survived: seeds.r, design: plates.map(() => 1), columns: 1 }
const named = ([alpha0, alpha1, alpha2, alpha12]: ArrayLike<number> & Iterable<number>) => ({
  alpha0: alpha0!,
  alpha1: alpha1!,
  alpha2: alpha2!,
  alpha12: alpha12!,
})
const cells = [
  [0, 0],
  [1, 0],
  [0, 1],
  [1, 1],
].map(([x1, x2]) => ({
  x1: x1!,
  x2: x2!,
  plates: plates.filter(plate => plate.x1 === x1 && plate.x2 === x2),
}))

/** Log-likelihood with a share of its own for every plate. */
const saturated = plates.reduce((sum, { survived: y, entered: n }) => {
  const alive = y > 0 ? y * Math.log(y / n) : 0
  const dead = y < n ? (n - y) * Math.log((n - y) / n) : 0
  return sum + logChoose(n, y) + alive + dead
}, 0)

function check(id: string, what: string, got: CheckValue, tolerance: Tolerance): OutsideCheck {
  const { basis, expected, note } = casesOf<unknown, CheckValue>(fixture, id).find(one => one.id === id)!
  return outsideCheck({
    what: `${what} (${id})`,
    source: sourceOf(fixture, { note }),
    basis,
    expected: flat(expected),
    got: flat(got),
    tolerance,
  })
}

/** { se: { alpha0: 1 } } as { 'se alpha0': 1 }: estimates and their errors have tolerances of their own. */
const flat = (value: CheckValue): CheckValue =>
  Object.fromEntries(
    Object.entries(value as { readonly [field: string]: CheckValue }).flatMap(([key, inner]) =>
      key === 'estimate' || key === 'se'
        ? Object.entries(inner as { readonly [field: string]: CheckValue }).map(([name, v]) => [
            `${key} ${name}`,
            v,
          ])
        : [[key, inner]],
    ),
  )

const allowed = (estimate: number, se: number, sigma: number, sigmaSE: number): Tolerance => ({
  ...Object.fromEntries(['alpha0', 'alpha1', 'alpha2', 'alpha12'].map(name => [`se ${name}`, se])),
  sigma,
  sigmaSE,
  logLik: 0.001,
  other: estimate,
})

/** Rates that differ from batch to batch: seeds on plates, and twelve units, against published fits and R. */
export function overdispersedCountsChecks(): readonly OutsideCheck[] {
  const logistic = logisticRegression(crossed)
  const laplace = fitMixedLogistic(
    {
      entered: Float64Array.from(seeds.n),
      survived: Float64Array.from(seeds.r),
      fixed: Float64Array.from(crossed.design),
      fixedCount: 4,
      levels: new Int32Array(0),
      levelCounts: [],
      batches: Int32Array.from(plates.keys()),
      batchCount: plates.length,
      beliefLogit: new Float64Array(plates.length),
      beliefPrecision: new Float64Array(plates.length),
    },
    { spreadRate: 0 },
  )
  const five = fitBatchSpread(crossed, 5)
  const exact = fitBatchSpread(crossed, 25)
  const spreadOf = (fit: typeof exact) => ({
    estimate: named(fit.estimates),
    se: named(fit.standardErrors),
    sigma: fit.spread,
    sigmaSE: fit.spreadStandardError,
  })
  const beta = fitBetaBinomial(crossed)
  const betaAlone = fitBetaBinomial(alone)
  const spreadAlone = fitBatchSpread(alone, 40)
  const mean = 1 / (1 + Math.exp(-betaAlone.estimates[0]!))
  const alpha = mean * betaAlone.precision
  const dead = (1 - mean) * betaAlone.precision
  const unitsInput = { entered: units.n, survived: units.r, design: units.n.map(() => 1), columns: 1 }
  const unitsBeta = fitBetaBinomial(unitsInput)
  const unitsMean = 1 / (1 + Math.exp(-unitsBeta.estimates[0]!))
  const unitsAlpha = unitsMean * unitsBeta.precision
  const icc = intraclassCorrelation(plates)
  const dilutions = [...new Set(cernua.dilution)].map(dilution =>
    cernua.y.flatMap((survived, i) =>
      cernua.dilution[i] === dilution ? [{ survived, entered: cernua.n[i]! }] : [],
    ),
  )
  const allLots = dilutions.flat()
  const average = (lots: typeof allLots) =>
    lots.reduce((sum, { survived, entered }) => sum + survived / entered, 0) / lots.length
  const likelihoodGain = 2 * (beta.logLikelihood - logistic.logLikelihood)
  return [
    check(
      'seeds-logistic-fixed',
      'logistic regression of germination by species and extract',
      {
        estimate: named(logistic.estimates),
        se: named(logistic.standardErrors),
        deviance: logistic.deviance,
        df: logistic.degreesOfFreedom,
        pearsonX2: logistic.pearsonChiSquare,
        dispersionPearson: logistic.dispersion,
        logLik: logistic.logLikelihood,
      },
      1e-6,
    ),
    check(
      'seeds-cell-totals',
      'the saturated logistic fit gives back the pooled shares',
      {
        cells: cells.map(({ x1, x2, plates: own }) => ({
          x1,
          x2,
          r: own.reduce((sum, { survived }) => sum + survived, 0),
          n: own.reduce((sum, { entered }) => sum + entered, 0),
          p: logistic.shares[plates.indexOf(own[0]!)]!,
        })),
      },
      1e-9,
    ),
    check(
      'seeds-within-cell-heterogeneity',
      'plates of one cell differ by this much',
      {
        cells: cells.map(({ x1, x2, plates: own }) => {
          const { pearson, degreesOfFreedom, p } = heterogeneity(own)
          return { x1, x2, X2: pearson, df: degreesOfFreedom, p }
        }),
      },
      1e-8,
    ),
    check(
      'seeds-glmm-laplace',
      'plate-to-plate spread by Laplace, as lme4 fits it',
      {
        estimate: named(laplace.fixed),
        se: named([0, 1, 2, 3].map(i => Math.sqrt(laplace.covariance?.[i * 6] ?? Number.NaN))),
        sigma: laplace.spreads[0]!,
        logLik: laplace.logLikelihood,
      },
      allowed(0.0005, 0.003, 0.0005, 0.003),
    ),
    check(
      'seeds-glmm-agq5',
      'plate-to-plate spread by five-point adaptive quadrature, as lme4 fits it',
      { ...spreadOf(five), logLik: five.logLikelihood - saturated },
      allowed(0.0005, 0.003, 0.0005, 0.003),
    ),
    check(
      'seeds-glmm-agq25',
      'plate-to-plate spread by 25-point adaptive quadrature, as lme4 fits it',
      { ...spreadOf(exact), logLik: exact.logLikelihood - saturated },
      allowed(0.0005, 0.003, 0.0005, 0.003),
    ),
    check(
      'seeds-glmm-ml-quadrature',
      'plate-to-plate spread by maximum likelihood',
      { ...spreadOf(exact), logLik: exact.logLikelihood },
      allowed(0.0005, 0.002, 0.001, 0.002),
    ),
    check(
      'seeds-glmm-mle-published',
      'plate-to-plate spread by maximum likelihood, as published',
      spreadOf(exact),
      allowed(0.002, 0.005, 0.002, 0.005),
    ),
    check(
      'seeds-null-glmm-eb',
      'each plate drawn towards the average, normal on the logit scale',
      {
        mu: spreadAlone.estimates[0]!,
        sigma: spreadAlone.spread,
        seMu: spreadAlone.standardErrors[0]!,
        logLik: spreadAlone.logLikelihood,
        posteriorMean: spreadAlone.shares.map(share => share.mean),
        posteriorSD: spreadAlone.shares.map(({ sd }) => sd),
        conditionalModeProbability: spreadAlone.shares.map(({ mostLikely }) => mostLikely),
      },
      0.001,
    ),
    check(
      'seeds-betabinomial-factorial',
      'beta-binomial regression of germination',
      {
        estimate: named(beta.estimates),
        se: named(beta.standardErrors),
        rho: beta.correlation,
        rhoSE: beta.correlationStandardError,
        AplusB: beta.precision,
        logLik: beta.logLikelihood,
      },
      { AplusB: 0.1, logLik: 0.0005, other: 0.001 },
    ),
    check(
      'seeds-betabinomial-null-eb',
      'each plate drawn towards the average, Beta',
      {
        A: alpha,
        B: dead,
        mean,
        rho: betaAlone.correlation,
        logLik: betaAlone.logLikelihood,
        posteriorMean: plates.map(({ survived, entered }) => (alpha + survived) / (alpha + dead + entered)),
        posteriorLower95: plates.map(plate =>
          betaQuantile(0.025, alpha + plate.survived, dead + plate.entered - plate.survived),
        ),
        posteriorUpper95: plates.map(plate =>
          betaQuantile(0.975, alpha + plate.survived, dead + plate.entered - plate.survived),
        ),
      },
      { A: 0.01, B: 0.01, other: 0.0005 },
    ),
    check(
      'seeds-anova-icc',
      'how alike seeds of one plate are',
      {
        pooled: icc.pooledShare,
        MSB: icc.betweenMeanSquare,
        MSW: icc.withinMeanSquare,
        nA: icc.groupSize,
        icc: icc.correlation,
      },
      { nA: 4e-7, other: 1e-9 },
    ),
    check(
      'seeds-betabinomial-vs-binomial-lrt',
      'does germination differ between plates of one cell',
      {
        logLikBinomial: logistic.logLikelihood,
        logLikBetaBinomial: beta.logLikelihood,
        lr: likelihoodGain,
        pHalfChi2: 0.5 * chiSquareAbove(likelihoodGain, 1),
      },
      0.001,
    ),
    check(
      'units12-independent-beta-uniform',
      'twelve units each on its own, uniform prior',
      {
        posteriorMean: units.r.map((r, i) => (1 + r) / (2 + units.n[i]!)),
        posteriorSD: units.r.map((r, i) => {
          const n = units.n[i]! + 2
          return Math.sqrt(((1 + r) * (n - 1 - r)) / (n * n * (n + 1)))
        }),
        q025: units.r.map((r, i) => betaQuantile(0.025, 1 + r, 1 + units.n[i]! - r)),
        q975: units.r.map((r, i) => betaQuantile(0.975, 1 + r, 1 + units.n[i]! - r)),
      },
      1e-8,
    ),
    check(
      'units12-betabinomial-eb',
      'twelve units drawn towards each other, Beta',
      {
        A: unitsAlpha,
        B: unitsBeta.precision - unitsAlpha,
        logLik: unitsBeta.logLikelihood,
        posteriorMean: units.r.map((r, i) => (unitsAlpha + r) / (unitsBeta.precision + units.n[i]!)),
      },
      { A: 0.02, B: 0.3, other: 0.0003 },
    ),
    check(
      'cernua-mean-proportions',
      'pooled shares and averages of shares are kept apart',
      {
        pooled: dilutions.map(lots => heterogeneity(lots).pooledShare),
        meanOfProportions: dilutions.map(average),
        overallPooled: heterogeneity(allLots).pooledShare,
        overallMeanOfProportions: average(allLots),
      },
      1e-6,
    ),
  ]
}
