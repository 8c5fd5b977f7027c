import { extremeValueCdf, extremeValueQuantile } from '../extremes/extreme-value.ts'
import { fitByLikelihood } from '../extremes/fit-extreme-value.ts'
import { fitByLMoments, lMoments } from '../extremes/l-moments.ts'
import bearing from '../fixtures/bearing-curve.json' with { type: 'json' }
import extremes from '../fixtures/extremes.json' with { type: 'json' }
import { bearingShare } from '../growth/bearing-curve.ts'
import { checkOf, type Fixture } from './fixture.ts'
import type { OutsideCheck } from './outside-check.ts'

const yearly = extremes as unknown as Fixture
const curves = bearing as unknown as Fixture

/** The error of the library's own optimiser, and of differences for its standard errors. */
const FITTED = { logLikelihood: 1e-6, seLocation: 1e-4, seScale: 1e-4, seShape: 1e-3, other: 1e-4 }

const fitted = (id: string, what: string, times = 1) =>
  checkOf<{ values: number[] }, object>(yearly, id, what, ({ values }) => {
    const fit = fitByLikelihood(values)!
    return {
      got: {
        location: fit.location,
        scale: fit.scale,
        shape: fit.shape,
        seLocation: fit.standardErrors.location,
        seScale: fit.standardErrors.scale,
        seShape: fit.standardErrors.shape,
        logLikelihood: fit.logLikelihood,
        oneIn10: extremeValueQuantile(0.9, fit),
        oneIn100: extremeValueQuantile(0.99, fit),
      },
      tolerance: Object.fromEntries(
        Object.entries(FITTED).map(([key, value]) => [key, key === 'logLikelihood' ? 1e-5 : value * times]),
      ),
    }
  })

/** Yearly extremes, and the curve by which a tree comes into bearing. */
export const extremesChecks = (): readonly OutsideCheck[] => [
  ...fitted('port-pirie', 'extreme-value fit by likelihood to yearly sea levels, with errors and levels'),
  ...fitted('oxford', 'extreme-value fit by likelihood to yearly heat, with errors and levels', 10),
  ...fitted('winters', 'extreme-value fit by likelihood to winters, with errors and levels', 10),
  ...checkOf<{ values: number[] }, object>(yearly, 'l-moments', 'L-moments of a sample', ({ values }) => ({
    got: { ...lMoments(values) },
    tolerance: 1e-8,
  })),
  ...checkOf<{ values: number[] }, object>(
    yearly,
    'gev-by-l-moments',
    'extreme-value fit by L-moments, its quantiles and chances',
    ({ values }) => {
      const fit = fitByLMoments(values)
      return {
        got: {
          ...fit,
          q20: extremeValueQuantile(0.2, fit),
          q50: extremeValueQuantile(0.5, fit),
          q80: extremeValueQuantile(0.8, fit),
          below2: extremeValueCdf(2, fit),
          below5: extremeValueCdf(5, fit),
          below8: extremeValueCdf(8, fit),
        },
        tolerance: 1e-3,
      }
    },
  ),
  ...checkOf<{ x: number[]; share: number[]; shapes: number[]; location: number; scale: number }, object>(
    yearly,
    'gev-grid',
    'extreme-value chances and quantiles over a grid of shapes',
    input => {
      const { x, share, shapes, location, scale } = input
      return {
        got: {
          below: shapes.map(shape => x.map(at => extremeValueCdf(at, { location, scale, shape }))),
          quantile: shapes.map(shape =>
            share.map(at => extremeValueQuantile(at, { location, scale, shape })),
          ),
        },
        tolerance: 1e-8,
      }
    },
  ),
  ...checkOf<{ ages: number[]; first: number; full: number; asymptote: number }, object>(
    curves,
    'orange-tree',
    'the logistic curve of growing orange trees',
    ({ ages, first, full, asymptote }) => {
      const shift = -first
      return {
        got: {
          circumference: ages.map(age => asymptote * bearingShare(age + shift, first + shift, full + shift)),
        },
        tolerance: 1e-6,
      }
    },
  ),
  ...checkOf<{ ages: number[]; first: number; full: number }, object>(
    curves,
    'plogis',
    'share of full bearing by age',
    ({ ages, first, full }) => ({
      got: { share: ages.map(age => bearingShare(age, first, full)) },
      tolerance: 1e-12,
    }),
  ),
]
