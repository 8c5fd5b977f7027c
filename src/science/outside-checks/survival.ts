import survival from '../fixtures/survival.json' with { type: 'json' }
import { hazardRatio } from '../time/hazard-ratio.ts'
import { type IntervalScale, kaplanMeier, type LossesAt, timeOfLoss } from '../time/kaplan-meier.ts'
import { logRank } from '../time/log-rank.ts'
import { casesOf, type Fixture, sourceOf } from './fixture.ts'
import { type CheckValue, type OutsideCheck, outsideCheck, type Tolerance } from './outside-check.ts'

const fixture: Fixture = survival

interface Individual {
  readonly time: readonly number[]
  readonly event: readonly number[]
}
interface Batch {
  readonly day: readonly number[]
  readonly lost: readonly number[]
  readonly removedAlive: readonly number[]
}

const happenings = (inputs: Individual | Batch): readonly LossesAt[] =>
  'day' in inputs
    ? inputs.day.map((time, i) => ({ time, lost: inputs.lost[i]!, leftAlive: inputs.removedAlive[i]! }))
    : inputs.time.map((time, i) => ({ time, lost: inputs.event[i]!, leftAlive: 1 - inputs.event[i]! }))

const named = (id: string) =>
  happenings(casesOf<Individual, unknown>(fixture, id).find(one => one.id === id)!.inputs)

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

function curveOf(list: readonly LossesAt[]): CheckValue {
  const by = (scale: IntervalScale) => kaplanMeier(list, scale)
  const points = by('log-log')
  const median = (scale: IntervalScale) => {
    const { low, high } = timeOfLoss(by(scale), 0.5)
    return [low, high]
  }
  return {
    time: points.map(({ time }) => time),
    nRisk: points.map(({ atRisk }) => atRisk),
    nEvent: points.map(({ lost }) => lost),
    survival: points.map(point => point.survival),
    seGreenwood: points.map(({ standardError }) => standardError),
    plainLower: by('plain').map(({ low }) => low),
    plainUpper: by('plain').map(({ high }) => high),
    logLower: by('log').map(({ low }) => low),
    logUpper: by('log').map(({ high }) => high),
    logLogLower: points.map(({ low }) => low),
    logLogUpper: points.map(({ high }) => high),
    quartiles: [0.25, 0.5, 0.75].map(share => timeOfLoss(points, share).time),
    medianLogLogCI: median('log-log'),
    medianLogCI: median('log'),
    nelsonAalen: points.map(({ cumulativeHazard }) => cumulativeHazard),
  }
}

const curveTolerance = { survival: 1e-9, nelsonAalen: 1e-9, seGreenwood: 1e-7, other: 1e-6 }

/** Groups of an R data set by a code that counts from 1. */
const grouped = (time: readonly number[], event: readonly number[], group: readonly number[]) =>
  Array.from({ length: Math.max(...group) }, (_, g) =>
    time.flatMap((at, i) =>
      group[i] === g + 1 ? [{ time: at, lost: event[i]!, leftAlive: 1 - event[i]! }] : [],
    ),
  )

function rankOf(groups: readonly (readonly LossesAt[])[], weigh: 'alike' | 'early' = 'alike'): CheckValue {
  const { observed, expected, variance, chiSquare, degreesOfFreedom, p } = logRank(groups, weigh)
  return {
    n: groups.map(list => list.length),
    observed,
    expected,
    variance,
    chisq: chiSquare,
    df: degreesOfFreedom,
    p,
  }
}

const rankTolerance = { n: 0, df: 0, p: 1e-8, other: 3e-6 }

/** Losses over time against R's survival and published tables. */
export function survivalChecks(): readonly OutsideCheck[] {
  const treated = named('km-6mp-treated')
  const control = named('km-6mp-control')
  const { lung, veteran } = survival.data
  const curves = casesOf<Individual | Batch, CheckValue>(fixture, 'km-').map(({ id, inputs }) =>
    check(id, 'survival curve with its limits', curveOf(happenings(inputs)), curveTolerance),
  )
  const efron = hazardRatio(treated, control)
  const breslow = hazardRatio(treated, control, 'breslow')
  return [
    ...curves,
    check('logrank-6mp', 'two groups lose at different times', rankOf([treated, control]), rankTolerance),
    check(
      'peto-6mp',
      'two groups, early losses weighing more',
      rankOf([treated, control], 'early'),
      rankTolerance,
    ),
    check(
      'logrank-aml',
      'two small groups, no difference shown',
      rankOf([named('km-aml-maintained'), named('km-aml-nonmaintained')]),
      { ...rankTolerance, p: 1e-7 },
    ),
    check('logrank-lung-sex', 'two large groups', rankOf(grouped(lung.time, lung.status, lung.sex)), {
      ...rankTolerance,
      other: 1e-5,
    }),
    check(
      'logrank-veteran-celltype',
      'four groups',
      rankOf(grouped(veteran.time, veteran.status, veteran.celltype)),
      { ...rankTolerance, other: 1e-5 },
    ),
    check(
      'cox-6mp',
      'how many times as fast the second group loses',
      {
        efron: { beta: efron.logRatio, se: efron.standardError },
        breslow: { beta: breslow.logRatio, se: breslow.standardError },
      },
      1e-5,
    ),
  ]
}
