import crossedRates from '../fixtures/crossed-rates.json' with { type: 'json' }
import { fitMixedLogistic } from '../rates/mixed-logistic.ts'
import { casesOf, type Fixture, sourceOf } from './fixture.ts'
import { type CheckValue, type OutsideCheck, outsideCheck } from './outside-check.ts'

const fixture: Fixture = crossedRates

interface Inputs {
  readonly entered: readonly number[]
  readonly survived: readonly number[]
  readonly cultivar: readonly number[]
  readonly grafter: readonly number[]
  readonly month: readonly number[]
  readonly late: readonly number[]
}

/** Cultivars, grafters, months and batches at once, against lme4. */
export const crossedRatesChecks = (): readonly OutsideCheck[] =>
  casesOf<Inputs, CheckValue>(fixture, 'crossed-').map(({ id, inputs, expected, basis, note }) => {
    const rows = inputs.entered.length
    const factors = [inputs.cultivar, inputs.grafter, inputs.month]
    const fit = fitMixedLogistic(
      {
        entered: Float64Array.from(inputs.entered),
        survived: Float64Array.from(inputs.survived),
        fixed: Float64Array.from(inputs.late.flatMap(late => [1, late])),
        fixedCount: 2,
        levels: Int32Array.from(inputs.entered.flatMap((_, r) => factors.map(factor => factor[r]! - 1))),
        levelCounts: factors.map(factor => Math.max(...factor)),
        batches: Int32Array.from({ length: rows }, (_, r) => r),
        batchCount: rows,
        beliefLogit: new Float64Array(rows),
        beliefPrecision: new Float64Array(rows),
      },
      { spreadRate: 0 },
    )
    const effects = (f: number) => {
      const first = fit.system.offsets[f]!
      return Array.from(fit.state.levelEffects.subarray(first, first + Math.max(...factors[f]!)))
    }
    return outsideCheck({
      what: `rates by cultivar, grafter, month and batch, fixed effects and spreads (${id})`,
      source: sourceOf(fixture, { note }),
      basis,
      expected,
      got: {
        fixed: Array.from(fit.fixed),
        se: [0, 1].map(i => Math.sqrt(fit.covariance?.[i * 6 + i] ?? Number.NaN)),
        cultivar: fit.spreads[0]!,
        grafter: fit.spreads[1]!,
        month: fit.spreads[2]!,
        batch: fit.spreads[3]!,
        logLik: fit.logLikelihood,
        cultivarEffects: effects(0),
        grafterEffects: effects(1),
      },
      tolerance: { se: 0.002, other: 0.001 },
    })
  })
