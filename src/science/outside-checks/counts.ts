import { chiSquareTest } from '../counts/chi-square-test.ts'
import { controlChart } from '../counts/control-chart.ts'
import { differenceInterval, waldDifferenceInterval } from '../counts/difference-interval.ts'
import { exactTest, oddsRatioInterval } from '../counts/exact-test.ts'
import { sampleForTwoShares } from '../counts/sample-size.ts'
import {
  agrestiCoullInterval,
  exactInterval,
  exactOneSided,
  jeffreysInterval,
  wilsonCorrectedInterval,
  wilsonInterval,
} from '../counts/share-interval.ts'
import intervalsAndTests from '../fixtures/intervals-and-tests.json' with { type: 'json' }
import { casesOf, type Fixture, sourceOf } from './fixture.ts'
import { type CheckValue, type OutsideCheck, outsideCheck } from './outside-check.ts'

const fixture: Fixture = intervalsAndTests as Fixture

/** Ranges, tests, charts and sample sizes for counts. */
export const countsChecks = (): readonly OutsideCheck[] => [
  ...intervals(),
  ...oneSided(),
  ...differences(),
  ...exactTests(),
  ...charts(),
  ...sampleSizes(),
]

const intervals = () =>
  casesOf<{ r: number; n: number; confidence: number }, Record<string, CheckValue>>(fixture, 'ci-').map(
    ({ id, inputs: { r, n, confidence }, expected, basis, note }) =>
      outsideCheck({
        what: `five ranges for the share when ${r} of ${n} survive, confidence ${confidence} (${id})`,
        source: sourceOf(fixture, { note }),
        basis,
        expected,
        got: {
          estimate: r / n,
          clopperPearson: exactInterval(r, n, confidence),
          wilson: wilsonInterval(r, n, confidence),
          wilsonContinuity: wilsonCorrectedInterval(r, n, confidence),
          jeffreys: jeffreysInterval(r, n, confidence),
          agrestiCoull: agrestiCoullInterval(r, n, confidence),
        },
        tolerance: 1e-7,
      }),
  )

const oneSided = () =>
  casesOf<{ r: number; n: number; confidence: number }, { upper: number; lower: number }>(
    fixture,
    'one-sided-',
  ).map(({ id, inputs: { r, n, confidence }, expected, basis, note }) =>
    outsideCheck({
      what: `exact limits on one side when ${r} of ${n} survive (${id})`,
      source: sourceOf(fixture, { note }),
      basis,
      expected: { ...expected },
      got: exactOneSided(r, n, confidence),
      tolerance: 1e-8,
    }),
  )

const differences = () =>
  casesOf<
    { r1: number; n1: number; r2: number; n2: number; confidence: number },
    { difference: number; newcombe: readonly number[]; wald: readonly number[] }
  >(fixture, 'newcombe-diff-').map(
    ({ id, inputs: { r1, n1, r2, n2, confidence }, expected, basis, note }) => {
      const counts = { survived1: r1, entered1: n1, survived2: r2, entered2: n2 }
      return outsideCheck({
        what: `range of the difference between ${r1} of ${n1} and ${r2} of ${n2} (${id})`,
        source: sourceOf(fixture, { note }),
        basis,
        expected: { ...expected },
        got: {
          difference: r1 / n1 - r2 / n2,
          newcombe: differenceInterval(counts, confidence),
          wald: waldDifferenceInterval(counts, confidence),
        },
        tolerance: 1e-8,
      })
    },
  )

const exactTests = () =>
  casesOf<
    { table: readonly [readonly [number, number], readonly [number, number]] },
    {
      pTwoSided: number
      pGreater: number
      pLess: number
      conditionalOR: number | 'Inf'
      ciLower: number
      ciUpper: number | 'Inf'
      pearsonX2: number
      yatesX2: number
    }
  >(fixture, 'fisher-').map(({ id, inputs: { table }, expected, basis, note }) => {
    const counts = {
      survived1: table[0][0],
      entered1: table[0][0] + table[1][0],
      survived2: table[0][1],
      entered2: table[0][1] + table[1][1],
    }
    const { pTwoSided, pGreater, pLess, oddsRatio } = exactTest(counts)
    const [ciLower, ciUpper] = oddsRatioInterval(counts, 0.95)
    const limit = (value: number) => (value === Number.POSITIVE_INFINITY ? 'Inf' : value)
    return outsideCheck({
      what: `exact and chi-square tests of two shares, ${table[0][0]} and ${table[0][1]} surviving (${id})`,
      source: sourceOf(fixture, { note }),
      basis,
      expected: { ...expected },
      got: {
        pTwoSided,
        pGreater,
        pLess,
        conditionalOR: limit(oddsRatio),
        ciLower,
        ciUpper: limit(ciUpper),
        pearsonX2: chiSquareTest(counts).chiSquare,
        yatesX2: chiSquareTest(counts, true).chiSquare,
      },
      tolerance: {
        conditionalOR: 1e-6,
        ciLower: 1e-6,
        ciUpper: 1e-4,
        pearsonX2: 1e-7,
        yatesX2: 1e-7,
        other: 1e-8,
      },
    })
  })

const charts = () =>
  casesOf<
    { defective: readonly number[]; n: number | readonly number[] },
    {
      pBar: number
      ucl: number | readonly number[]
      lcl: number | readonly number[]
      outOfControl?: readonly number[]
      outOfControlOriginalIndex?: readonly number[]
    }
  >(fixture, 'p-chart-').map(({ id, inputs: { defective, n }, expected, basis, note }) => {
    const lots = (value: number | readonly number[]) =>
      typeof value === 'number' ? defective.map(() => value) : value
    const { mean, lower, upper, outside } = controlChart(defective, lots(n))
    // The second table lacks samples 15 and 23: its sample 21 is the 20th.
    const expectedOutside = expected.outOfControl ?? expected.outOfControlOriginalIndex?.map(i => i - 1) ?? []
    return outsideCheck({
      what: `limits of chance for the share lost in ${defective.length} lots, and the lots outside (${id})`,
      source: sourceOf(fixture, { note }),
      basis,
      expected: {
        mean: expected.pBar,
        upper: lots(expected.ucl),
        lower: lots(expected.lcl),
        outside: expectedOutside.map(i => i - 1),
      },
      got: { mean, upper, lower, outside },
      tolerance: 1e-8,
    })
  })

const sampleSizes = () =>
  casesOf<
    { p1: number; p2: number; alpha: number; power: number },
    {
      perArmNoCorrectionRaw: number
      perArmNoCorrection: number
      perArmContinuityRaw: number
      perArmContinuity: number
    }
  >(fixture, 'samplesize-').map(({ id, inputs: { p1, p2, alpha, power }, expected, basis, note }) =>
    outsideCheck({
      what: `plants in each lot to tell ${p1} from ${p2} with power ${power} (${id})`,
      source: sourceOf(fixture, { note }),
      basis,
      expected: {
        perLot: expected.perArmNoCorrection,
        perLotCorrected: expected.perArmContinuity,
        exact: expected.perArmNoCorrectionRaw,
        exactCorrected: expected.perArmContinuityRaw,
      },
      got: { ...sampleForTwoShares(p1, p2, alpha, power) },
      tolerance: { perLot: 0, perLotCorrected: 0, other: 1e-4 },
    }),
  )
