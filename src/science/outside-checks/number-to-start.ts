import numberToStart from '../fixtures/number-to-start.json' with { type: 'json' }
import { cheapestStart } from '../number-to-start/cheapest-start.ts'
import { chanceOfAtLeast, needed, spreadOfStart } from '../number-to-start/needed.ts'
import type { Rate } from '../number-to-start/rate.ts'
import { casesOf, type Fixture, sourceOf } from './fixture.ts'
import { type OutsideCheck, outsideCheck } from './outside-check.ts'

const fixture: Fixture = numberToStart

interface Expected {
  readonly n: number
  readonly probAtN: number
  readonly probAtNminus1: number
}

const uncertain = (alpha: number, beta: number): Rate => ({ kind: 'uncertain', alpha, beta })

/** `needed` and its relatives against sums of exact chances computed in R. */
export const numberToStartChecks = (): readonly OutsideCheck[] => [
  ...casesOf<{ target: number; p: number; confidence: number }, Expected>(fixture, 'binom-').map(
    ({ id, inputs, expected, basis, note }) => {
      const got = needed({
        wanted: inputs.target,
        sure: inputs.confidence,
        steps: [{ kind: 'known', share: inputs.p }],
      })
      return outsideCheck({
        what: `one known share ${inputs.p}: the start for ${inputs.target} with chance ${inputs.confidence} (${id})`,
        source: sourceOf(fixture, { note }),
        basis,
        expected: { start: expected.n, chance: expected.probAtN, chanceOneFewer: expected.probAtNminus1 },
        got: { start: got.start, chance: got.chance, chanceOneFewer: got.chanceOneFewer },
        tolerance: { start: 0, other: 1e-8 },
      })
    },
  ),
  ...casesOf<
    { target: number; a: number; b: number; confidence: number },
    Expected & { mean: number; sd: number }
  >(fixture, 'betabinom-').map(({ id, inputs, expected, basis, note }) => {
    const got = needed({
      wanted: inputs.target,
      sure: inputs.confidence,
      steps: [uncertain(inputs.a, inputs.b)],
    })
    return outsideCheck({
      what: `one share from Beta(${inputs.a}, ${inputs.b}): the start for ${inputs.target} with chance ${inputs.confidence} (${id})`,
      source: sourceOf(fixture, { note }),
      basis,
      expected: {
        start: expected.n,
        chance: expected.probAtN,
        chanceOneFewer: expected.probAtNminus1,
        mean: expected.mean,
        sd: expected.sd,
      },
      got: {
        start: got.start,
        chance: got.chance,
        chanceOneFewer: got.chanceOneFewer,
        mean: got.spread.mean,
        sd: got.spread.sd,
      },
      tolerance: { start: 0, mean: 1e-7, sd: 1e-7, other: 1e-8 },
    })
  }),
  ...casesOf<
    { target: number; confidence: number; stages: readonly { a?: number; b?: number; p?: number }[] },
    Expected & { mean: number; sd: number; q10: number; median: number; q90: number }
  >(fixture, 'chain-').map(({ id, inputs, expected, basis, note }) => {
    const steps = inputs.stages.map(
      ({ a, b, p }): Rate =>
        a !== undefined && b !== undefined ? uncertain(a, b) : { kind: 'known', share: p ?? Number.NaN },
    )
    const got = needed({ wanted: inputs.target, sure: inputs.confidence, steps })
    return outsideCheck({
      what: `a chain of ${steps.length} steps: the start for ${inputs.target} with chance ${inputs.confidence}, and what comes out (${id})`,
      source: sourceOf(fixture, { note }),
      basis,
      expected: {
        start: expected.n,
        chance: expected.probAtN,
        chanceOneFewer: expected.probAtNminus1,
        mean: expected.mean,
        sd: expected.sd,
        p10: expected.q10,
        p50: expected.median,
        p90: expected.q90,
      },
      got: { start: got.start, chance: got.chance, chanceOneFewer: got.chanceOneFewer, ...got.spread },
      tolerance: { start: 0, p10: 0, p50: 0, p90: 0, mean: 1e-6, sd: 1e-6, other: 1e-8 },
    })
  }),
  ...casesOf<
    { target: number; totalStarted: number; batches: number; a: number; b: number },
    { prob: number; sd: number }
  >(fixture, 'split-batches-').map(({ id, inputs, expected, basis, note }) => {
    const split = {
      start: inputs.totalStarted,
      batches: inputs.batches,
      steps: [uncertain(inputs.a, inputs.b)],
    }
    return outsideCheck({
      what: `a start split over ${inputs.batches} batches with their own luck: chance and spread (${id})`,
      source: sourceOf(fixture, { note }),
      basis,
      expected: { chance: expected.prob, sd: expected.sd },
      got: { chance: chanceOfAtLeast({ ...split, wanted: inputs.target }), sd: spreadOfStart(split).sd },
      tolerance: { chance: 1e-7, sd: 1e-6 },
    })
  }),
  ...casesOf<{ p: number; confidence: number }, { n: number; probAtLeastOne: number }>(
    fixture,
    'seeds-per-cell-',
  ).map(({ id, inputs, expected, basis, note }) => {
    const got = needed({ wanted: 1, sure: inputs.confidence, steps: [{ kind: 'known', share: inputs.p }] })
    return outsideCheck({
      what: `seeds to a cell for at least one plant with chance ${inputs.confidence}, germination ${inputs.p} (${id})`,
      source: sourceOf(fixture, { note }),
      basis,
      expected: { start: expected.n, chance: expected.probAtLeastOne },
      got: { start: got.start, chance: got.chance },
      tolerance: { start: 0, chance: 1e-10 },
    })
  }),
  ...casesOf<
    { target: number; a: number; b: number; costPerStart: number; costPerShort: number },
    { n: number; cost: number; expectedShort: number; expectedSurplus: number; probTarget: number }
  >(fixture, 'cost-min-').map(({ id, inputs, expected, basis, note }) => {
    const got = cheapestStart({
      wanted: inputs.target,
      steps: [uncertain(inputs.a, inputs.b)],
      costPerStart: inputs.costPerStart,
      costPerShort: inputs.costPerShort,
    })
    return outsideCheck({
      what: `the start that costs least, one plant costing ${inputs.costPerStart} and one short ${inputs.costPerShort} (${id})`,
      source: sourceOf(fixture, { note }),
      basis,
      expected: {
        start: expected.n,
        expectedCost: expected.cost,
        expectedShort: expected.expectedShort,
        expectedSurplus: expected.expectedSurplus,
        chance: expected.probTarget,
      },
      got: { ...got },
      tolerance: { start: 1, chance: 1e-8, other: 1e-6 },
    })
  }),
]
