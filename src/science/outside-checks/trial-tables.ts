import { findingOf } from '../comparison/finding.ts'
import { groupDifference } from '../comparison/funnel.ts'
import { exactTest } from '../counts/exact-test.ts'
import trialTables from '../fixtures/trial-tables.json' with { type: 'json' }
import { fitMixedLogistic } from '../rates/mixed-logistic.ts'
import { checkOf, type Fixture } from './fixture.ts'
import type { OutsideCheck } from './outside-check.ts'

const fixture = trialTables as unknown as Fixture

interface Table {
  readonly entered: readonly number[]
  readonly survived: readonly number[]
  readonly first: readonly number[]
  readonly second: readonly number[]
  readonly cell: readonly number[]
}

interface Pair {
  readonly survived1: number
  readonly entered1: number
  readonly survived2: number
  readonly entered2: number
}

/** Two published trials by their crossed treatments, and what published differences are worth. */
export const trialTablesChecks = (): readonly OutsideCheck[] => [
  ...['dishes-', 'cuttings-'].flatMap(id =>
    checkOf<Table, object>(fixture, id, 'a trial of two crossed treatments with cells and rows', table => {
      const rows = table.entered.length
      const factors = [table.first, table.second, table.cell]
      const fit = fitMixedLogistic(
        {
          entered: Float64Array.from(table.entered),
          survived: Float64Array.from(table.survived),
          fixed: new Float64Array(rows).fill(1),
          fixedCount: 1,
          levels: Int32Array.from(table.entered.flatMap((_, r) => factors.map(factor => factor[r]! - 1))),
          levelCounts: factors.map(factor => Math.max(...factor)),
          batches: Int32Array.from({ length: rows }, (_, r) => r),
          batchCount: rows,
          beliefLogit: new Float64Array(rows),
          beliefPrecision: new Float64Array(rows),
        },
        { spreadRate: 0 },
      )
      return {
        got: { intercept: fit.fixed[0]!, spreads: [...fit.spreads], logLik: fit.logLikelihood },
        // Four levels and five of the dishes leave the top flat: the library stops 0.002 below ours.
        tolerance:
          id === 'dishes-'
            ? { spreads: 0.05, intercept: 0.05, logLik: 0.003 }
            : { spreads: 0.001, intercept: 0.001, logLik: 1e-5 },
      }
    }),
  ),
  ...checkOf<Pair, object>(fixture, 'pair-', 'what a published difference is worth', counts => {
    const side = (group: string, entered: number, survived: number) => [{ group, entered, survived }]
    const { effect, standardError, plants } = groupDifference(
      side('first', counts.entered1, counts.survived1),
      side('second', counts.entered2, counts.survived2),
      0,
    )
    const { kind, plantsMore } = findingOf(effect, standardError, plants)
    const isDifferent = kind === 'hardly-chance' || kind === 'probably-different'
    return {
      got: {
        effect,
        standardError,
        pExact: exactTest(counts).pTwoSided,
        isDifferent: isDifferent && plantsMore === 0,
      },
      tolerance: { effect: 1e-6, standardError: 1e-5, pExact: 1e-9 },
    }
  }),
]
