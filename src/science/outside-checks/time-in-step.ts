import timeInStep from '../fixtures/time-in-step.json' with { type: 'json' }
import { fitStepDuration } from '../time/step-duration.ts'
import { takeByLooks } from '../time/take-by-looks.ts'
import { fitTakeCurve } from '../time/take-curve.ts'
import { casesOf, type Fixture, sourceOf } from './fixture.ts'
import { type CheckValue, type OutsideCheck, outsideCheck, type Tolerance } from './outside-check.ts'

const fixture: Fixture = timeInStep

function check<Inputs>(
  id: string,
  what: string,
  tolerance: Tolerance,
  got: (inputs: Inputs) => CheckValue,
): OutsideCheck {
  const { inputs, basis, expected, note } = casesOf<Inputs, CheckValue>(fixture, id)[0]!
  return outsideCheck({
    what: `${what} (${id})`,
    source: sourceOf(fixture, { note }),
    basis,
    expected,
    got: got(inputs),
    tolerance,
  })
}

/** How long a step takes and when grafts decide, against R. */
export const timeInStepChecks = (): readonly OutsideCheck[] => [
  check<{ from: readonly number[]; to: readonly (number | null)[] }>(
    'duration-interval-censored',
    'log-normal time in a step, seen between looks, exactly, or unfinished',
    { seMeanLog: 1e-4, other: 1e-5 },
    ({ from, to }) => {
      const fit = fitStepDuration(from.map((at, i) => ({ from: at, to: to[i] ?? Number.POSITIVE_INFINITY })))
      return {
        meanLog: fit.meanLog,
        sdLog: fit.within,
        logLik: fit.logLikelihood,
        seMeanLog: fit.standardError,
      }
    },
  ),
  check<{ days: readonly number[]; group: readonly number[] }>(
    'duration-partial-pooling',
    'groups of batches drawn towards each other',
    { logLik: 1e-5, other: 1e-4 },
    ({ days, group }) => {
      const fit = fitStepDuration(days.map((at, i) => ({ from: at, to: at, group: String(group[i]) })))
      return {
        meanLog: fit.meanLog,
        sdBetween: fit.between,
        sdWithin: fit.within,
        logLik: fit.logLikelihood,
        groupEffects: [1, 2, 3, 4, 5].map(g => fit.groups.get(String(g))?.effect ?? Number.NaN),
      }
    },
  ),
  check<{
    start: readonly number[]
    end: readonly number[]
    germinated: readonly number[]
    seeds: number
    lastLook: number
  }>(
    'take-wheat-10C',
    'share that takes in the end and when, deaths not written down',
    { share: 0.002, other: 0.003 },
    ({ end, germinated, seeds, lastLook, start }) => {
      let taken = 0
      const looks = [{ day: start[0]!, taken: 0, dead: 0 }]
      end.forEach((day, i) => {
        taken += germinated[i]!
        looks.push({ day, taken, dead: 0 })
      })
      looks.push({ day: lastLook, taken, dead: 0 })
      const curve = fitTakeCurve([{ entered: seeds, looks }])
      return {
        share: curve?.takesInTheEnd ?? null,
        meanLog: curve?.toTake.meanLog ?? null,
        sdLog: curve?.toTake.sdLog ?? null,
      }
    },
  ),
  check<{ from: readonly number[]; to: readonly (number | null)[] }>(
    'take-turnbull',
    'shares taken by each look without any assumed shape',
    // R stops its iteration about 4e-5 short; run on, both meet.
    1e-4,
    ({ from, to }) => {
      const batches = from.map((after, i) => ({
        entered: 1,
        looks: [
          ...(after > 0 ? [{ day: after, taken: 0, dead: 0 }] : []),
          ...(to[i] === null ? [] : [{ day: to[i]!, taken: 1, dead: 0 }]),
        ],
      }))
      const looked = takeByLooks(batches).filter(({ day }) => day % 7 === 0)
      return { day: looked.map(({ day }) => day), taken: looked.map(({ taken }) => taken) }
    },
  ),
]
