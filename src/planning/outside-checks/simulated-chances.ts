import { casesOf, type Fixture, type OutsideCheck, outsideCheck, sourceOf } from '../../science/index.ts'
import chances from '../fixtures/simulated-chances.json' with { type: 'json' }
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import { orderOutcomes } from '../simulate/outcome.ts'
import { simulateSeasons } from '../simulate/simulate-seasons.ts'

const SEASONS = 10_000
/** Four standard errors of a share, or a mean, counted in so many seasons. */
const ERRORS = 4

interface ChanceInputs {
  readonly wanted: number
  readonly start: number
  readonly steps: readonly ({ readonly a: number; readonly b: number } | { readonly p: number })[]
}

/** Simulated nurseries of one start and one order against chances summed exactly elsewhere. */
export function simulatedChances(): readonly OutsideCheck[] {
  const fixture: Fixture = chances
  return ['betabinom', 'chain'].flatMap(id =>
    casesOf<ChanceInputs, { chance: number; mean: number }>(fixture, id).map(known => {
      const { chance, meanByDue, sdByDue } = simulated(known.inputs)
      const spread = Math.sqrt(known.expected.chance * (1 - known.expected.chance))
      return outsideCheck({
        what: `Simulated chance and mean of one start for one order (${known.id})`,
        source: sourceOf(fixture, known),
        basis: known.basis,
        expected: known.expected,
        got: { chance, mean: meanByDue },
        tolerance: {
          chance: (ERRORS * spread) / Math.sqrt(SEASONS),
          mean: (ERRORS * sdByDue) / Math.sqrt(SEASONS),
        },
      })
    }),
  )
}

function simulated({ wanted, start, steps }: ChanceInputs) {
  const course = steps.map(step => ({
    ...('p' in step ? certain(step.p) : { alpha: step.a, beta: step.b }),
    days: 14,
    yearShare: 0.3,
  }))
  const season = tinySeason({
    weeks: 30,
    kinds: [tinyKind('fig')],
    ways: [{ kind: 0, steps: course }],
    orders: [{ kind: 0, number: wanted, dueWeek: 20 }],
  })
  const input = { from: 0, to: SEASONS, seed: 1 }
  return orderOutcomes(season, simulateSeasons(season, [{ way: 0, week: 1, number: start }], input))[0]!
}
