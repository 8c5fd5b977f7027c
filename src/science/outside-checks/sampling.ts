import sampling from '../fixtures/sampling.json' with { type: 'json' }
import { chanceToAccept, mostFaulty, plantsToInspect, plantsToInspectOfMany } from '../sampling/inspection.ts'
import { differenceAllowed, rangeByChance, replicatesAgree } from '../sampling/seed-test.ts'
import { plantsToCatchVariant } from '../sampling/seedlings.ts'
import { checkOf, type Fixture } from './fixture.ts'
import type { OutsideCheck } from './outside-check.ts'

const fixture = sampling as unknown as Fixture

/** Inspection of lots and tests of seed. */
export const samplingChecks = (): readonly OutsideCheck[] => [
  ...checkOf<{ highPercent: number[]; lowPercent: number[] }, object>(
    fixture,
    'range-between-replicates',
    'the largest range between replicates is that of the regulation, for high and mirrored low means',
    ({ highPercent, lowPercent }) => {
      const four = (mean: number) => replicatesAgree([mean, mean, mean, mean]).allowedPercent
      const two = (mean: number) => replicatesAgree([mean, mean]).allowedPercent
      return {
        got: {
          maxRange4: highPercent.map(four),
          maxRange2: highPercent.map(two),
          low4: lowPercent.map(four),
        },
        tolerance: 0,
      }
    },
    expected => ({ ...expected, low4: (expected as { maxRange4: number[] }).maxRange4 }),
  ),
  ...checkOf<{ meanPercent: number[] }, object>(
    fixture,
    'range-formula-approx',
    'the range that chance exceeds once in forty tests',
    ({ meanPercent }) => ({ got: { range4: meanPercent.map(rangeByChance) }, tolerance: 1e-3 }),
  ),
  ...checkOf<
    object,
    {
      rows: { meanFrom: number; meanTo: number; lowMeanFrom: number; lowMeanTo: number; tolerance: number }[]
    }
  >(
    fixture,
    'two-tests-of-400',
    'two tests of 400 seeds may differ by what the table says, at both ends of every band',
    (_, { rows }) => ({
      got: rows.flatMap(row =>
        [row.meanFrom, row.meanTo, row.lowMeanFrom, row.lowMeanTo].map(differenceAllowed),
      ),
      tolerance: 0,
    }),
    ({ rows }) => rows.flatMap(row => [row.tolerance, row.tolerance, row.tolerance, row.tolerance]),
  ),
  ...checkOf<{ reps: number[][] }, object>(
    fixture,
    'tolerance-lookups',
    'mean, range and allowed range of four replicates',
    ({ reps }) => {
      const judged = reps.map(replicatesAgree)
      return {
        got: {
          mean: judged.map(test => test.meanPercent),
          range: judged.map(test => test.rangePercent),
          allowed: judged.map(test => test.allowedPercent),
        },
        tolerance: 0,
      }
    },
  ),
  ...checkOf<{ lotSizes: number[]; levelsOfDetection: number[]; confidence: number }, object>(
    fixture,
    'ispm31-hypergeometric-',
    'plants to inspect of a lot without replacement, 31 lot sizes by 5 levels',
    ({ lotSizes, levelsOfDetection, confidence }) => ({
      got: {
        sampleSize: levelsOfDetection.map(level =>
          lotSizes.map(lot => plantsToInspect(lot, level, confidence)),
        ),
      },
      tolerance: 0,
    }),
  ),
  ...checkOf<{ levels: number[] }, object>(
    fixture,
    'large-lot-binomial',
    'plants to inspect of a lot without end',
    ({ levels }) => ({
      got: {
        n95: levels.map(level => plantsToInspectOfMany(level, 0.95)),
        n99: levels.map(level => plantsToInspectOfMany(level, 0.99)),
      },
      tolerance: 0,
    }),
  ),
  ...checkOf<{ levels: number[]; confidence: number; efficacy: number[] }, object>(
    fixture,
    'imperfect-detection',
    'plants to inspect when a faulty one is not always seen',
    ({ levels, confidence, efficacy }) => ({
      got: { n: efficacy.map(seen => levels.map(level => plantsToInspectOfMany(level, confidence, seen))) },
      tolerance: 0,
    }),
  ),
  ...checkOf<{ lot: number[]; level: number[]; confidence: number; acceptanceNumber: number[] }, object>(
    fixture,
    'acceptance-number-hypergeometric',
    'plants to inspect when one or two faulty ones are let pass',
    ({ lot, level, confidence, acceptanceNumber }) => ({
      got: { n: lot.map((size, i) => plantsToInspect(size, level[i]!, confidence, acceptanceNumber[i]!)) },
      tolerance: 0,
    }),
  ),
  ...checkOf<{ lot: number; sample: number; infested: number[]; acceptanceNumber: number[] }, object>(
    fixture,
    'oc-hypergeometric',
    'the chance that a lot passes inspection',
    ({ lot, sample, infested, acceptanceNumber }) => ({
      got: {
        pAccept: infested.map((faulty, i) =>
          chanceToAccept({ lot, faulty, sample, allowed: acceptanceNumber[i]! }),
        ),
      },
      tolerance: 1e-9,
    }),
  ),
  ...checkOf<{ alleleFrequency: number; confidence: number }, object>(
    fixture,
    'marshall-brown',
    'plants to sample so that a gene variant is caught',
    ({ alleleFrequency, confidence }) => ({
      got: {
        gametes: plantsToCatchVariant(alleleFrequency, confidence, 1),
        diploidPlants: plantsToCatchVariant(alleleFrequency, confidence, 2),
      },
      tolerance: 0,
    }),
  ),
  ...checkOf<{ lot: number; sample: number; found: number }, object>(
    fixture,
    'grafted-take-inspection',
    'the most faulty plants that still fit a sample without any',
    ({ lot, sample, found }) => ({
      got: { upper95InfestedHypergeometric: mostFaulty(lot, sample, found, 0.95) },
      tolerance: 0,
    }),
  ),
]
