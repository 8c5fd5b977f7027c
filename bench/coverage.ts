import gammaln from '@stdlib/math-base-special-gammaln'
import { makeDemoEntries } from '../src/demo/index.ts'
import { rateBook } from '../src/planning/rates/rate-book.ts'
import { seenSteps } from '../src/planning/rates/read-rate-book.ts'
import { foldEntries } from '../src/record/index.ts'
import overdispersed from '../src/science/fixtures/overdispersed-counts.json' with { type: 'json' }
import rooting from '../src/science/fixtures/rooting-counts.json' with { type: 'json' }
import trialTables from '../src/science/fixtures/trial-tables.json' with { type: 'json' }
import {
  drawBinomial,
  drawNormal,
  fitRates,
  predictShare,
  type RateObservation,
  seededRandom,
} from '../src/science/index.ts'
import { logChoose } from '../src/science/numerics/log-choose.ts'
import type { Measured } from './measure.ts'

const levels = [0.5, 0.8, 0.95] as const

/** Part of a count that lies inside the central intervals of its beta-binomial prediction (a count on an edge counts in part). */
function insideOf({ entered, survived }: RateObservation, alpha: number, beta: number): readonly number[] {
  const log = (k: number) =>
    logChoose(entered, k) +
    gammaln(alpha + k) +
    gammaln(beta + entered - k) -
    gammaln(alpha + beta + entered) +
    gammaln(alpha + beta) -
    gammaln(alpha) -
    gammaln(beta)
  let below = 0
  for (let k = 0; k < survived; k++) below += Math.exp(log(k))
  const own = Math.exp(log(survived))
  return levels.map(level => {
    const from = (1 - level) / 2
    const to = (1 + level) / 2
    return Math.max(0, Math.min(to, below + own) - Math.max(from, below)) / own
  })
}

/** Predicts every group from all others. */
function leaveOut(
  observations: readonly RateObservation[],
  factors: readonly string[],
  groupOf: (o: RateObservation) => string,
) {
  const sums = levels.map(() => 0)
  const groups = [...new Set(observations.map(groupOf))]
  for (const group of groups) {
    const model = fitRates({ observations: observations.filter(one => groupOf(one) !== group), factors })
    for (const one of observations.filter(each => groupOf(each) === group)) {
      const { alpha, beta } = predictShare(model, one.context)
      insideOf(one, alpha, beta).forEach((part, i) => {
        sums[i]! += part
      })
    }
  }
  return {
    shares: sums.map(sum => sum / observations.length),
    predicted: observations.length,
    groups: groups.length,
  }
}

const TODAY = '2026-11-25'

/** Every finished step of the invented nursery's three years, foretold by the plan's own rates from all other seasons. */
function demoBySeason(seed: number) {
  const nursery = foldEntries(makeDemoEntries({ seed, today: TODAY }))
  const seen = seenSteps(nursery, TODAY)
  const sums = levels.map(() => 0)
  const seasons = [...new Set(seen.map(({ year }) => year))]
  for (const season of seasons) {
    const book = rateBook({
      steps: seen.filter(({ year }) => year !== season),
      protocols: nursery.protocols,
      days: [],
      set: [],
    })
    for (const row of seen.filter(({ year }) => year === season)) {
      const protocol = nursery.protocols.get(row.protocol)!
      const { alpha, beta } = book.survival(
        protocol,
        protocol.steps.findIndex(({ id }) => id === row.step),
        { kind: row.kind, startMonth: row.month, people: row.person === null ? [] : [row.person] },
      )
      insideOf({ ...row, context: {} }, alpha, beta).forEach((part, i) => {
        sums[i]! += part
      })
    }
  }
  return { shares: sums.map(sum => sum / seen.length), predicted: seen.length, groups: seasons.length }
}

/** Several histories as one. */
function together(parts: readonly ReturnType<typeof leaveOut>[]): ReturnType<typeof leaveOut> {
  const predicted = parts.reduce((sum, part) => sum + part.predicted, 0)
  return {
    shares: levels.map(
      (_, i) => parts.reduce((sum, part) => sum + part.shares[i]! * part.predicted, 0) / predicted,
    ),
    predicted,
    groups: parts.reduce((sum, part) => sum + part.groups, 0),
  }
}

/** Eight seasons of an invented nursery; years, kinds, grafters and batches differ. */
function inventedHistory(seed: number): readonly RateObservation[] {
  const random = seededRandom(seed)
  const effects = (count: number, spread: number) =>
    Array.from({ length: count }, () => spread * drawNormal(random))
  const [kinds, grafters, years] = [effects(12, 0.7), effects(6, 0.35), effects(8, 0.3)] as const
  return Array.from({ length: 320 }, (_, i) => {
    const kind = Math.floor(kinds.length * random.uniform() ** 1.5)
    const grafter = Math.floor(grafters.length * random.uniform())
    const year = i % years.length
    const logit = 0.9 + kinds[kind]! + grafters[grafter]! + years[year]! + 0.5 * drawNormal(random)
    const entered = 20 + Math.floor(180 * random.uniform())
    return {
      entered,
      survived: drawBinomial(random, entered, 1 / (1 + Math.exp(-logit))),
      context: { kind: `k${kind}`, grafter: `g${grafter}`, year: `y${year}` },
    }
  })
}

/** How often 50, 80 and 95 in 100 predictions hold: seasons left out of invented histories, rows left out of published tables. */
export default function measure(): Measured {
  const figures: Record<string, number> = {}
  const put = (name: string, { shares, predicted, groups }: ReturnType<typeof leaveOut>) => {
    levels.forEach((level, i) => {
      figures[`${name}, ${100 * level} in 100`] = shares[i]!
    })
    figures[`${name}, counts predicted`] = predicted
    figures[`${name}, groups left out in turn`] = groups
  }
  put('the invented nursery by season, 4 of them', together([1, 2, 3, 4].map(demoBySeason)))
  put(
    '30 histories of 8 seasons by season',
    together(
      Array.from({ length: 30 }, (_, seed) =>
        leaveOut(inventedHistory(seed), ['kind', 'grafter', 'year'], ({ context }) => context.year!),
      ),
    ),
  )
  const { seeds, units12, cernua } = overdispersed.data
  const single = (observations: readonly Omit<RateObservation, 'batch'>[]) =>
    observations.map((one, i) => ({ ...one, batch: String(i) }))
  const row = ({ batch }: RateObservation) => batch!
  put(
    'Crowder 1978, seeds on plates',
    leaveOut(
      single(
        seeds.r.map((survived, i) => ({
          survived,
          entered: seeds.n[i]!,
          context: {
            seed: `${seeds.x1[i]}`,
            extract: `${seeds.x2[i]}`,
            cell: `${seeds.x1[i]}${seeds.x2[i]}`,
          },
        })),
      ),
      ['seed', 'extract', 'cell'],
      row,
    ),
  )
  put(
    'Crowder 1978, dilutions',
    leaveOut(
      single(
        cernua.y.map((survived, i) => ({
          survived,
          entered: cernua.n[i]!,
          context: { dilution: cernua.dilution[i]! },
        })),
      ),
      ['dilution'],
      row,
    ),
  )
  put(
    'twelve units',
    leaveOut(
      single(units12.r.map((survived, i) => ({ survived, entered: units12.n[i]!, context: {} }))),
      [],
      row,
    ),
  )
  put(
    'apple shoots, day length by hormone',
    leaveOut(
      single(
        rooting.data.map(({ photoperiod_h: day, bap_uM: hormone, n, shootsByRoots }) => ({
          entered: n,
          survived: n - shootsByRoots[0]!,
          context: { day: `${day}`, hormone: `${hormone}` },
        })),
      ),
      ['day', 'hormone'],
      row,
    ),
  )
  for (const [id, name] of [
    ['dishes-salt-temperature', 'seeds in dishes, salt by temperature'],
    ['cuttings-length-trial', 'blueberry cuttings, length by trial'],
  ] as const) {
    const table = trialTables.cases.find(known => known.id === id)!.inputs
    put(
      name,
      leaveOut(
        single(
          table.entered!.map((entered, i) => ({
            entered,
            survived: table.survived![i]!,
            context: {
              first: `${table.first![i]}`,
              second: `${table.second![i]}`,
              cell: `${table.cell![i]}`,
            },
          })),
        ),
        ['first', 'second', 'cell'],
        row,
      ),
    )
  }
  return {
    figures,
    rivals: {},
    notes: [
      'Batches of one season share its luck: 240 seasons give the invented histories a standard error of about 0.02.',
      'Published tables have 8 to 80 rows: standard errors of 0.05 to 0.15 are usual.',
    ],
  }
}
