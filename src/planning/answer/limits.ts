import { listed, type Phrase, phrase } from '../../trade/index.ts'
import type { RowAbout } from '../model/season-model.ts'
import type { Limit } from '../plan.ts'
import { poolSaid } from '../reading/pools.ts'
import { skillsOf } from '../reading/skills.ts'
import type { Season } from '../season.ts'
import { type Planned, weekName, weeksSaid } from './planned.ts'
import { withoutNoise } from './without-noise.ts'

/** Under this a unit is worth nothing that is worth saying. */
const LEAST_WORTH = 0.05
const MINUTES = 60

type Dual = RowAbout & { readonly dual: number }

/**
 * What limits the season, from the duals of the relaxation: what one more unit would save. Neighbouring weeks of one
 * place or skill are joined and stand with what a unit in each of them is worth on average. Dearest first.
 */
export function limitsOf({ season, relaxed }: Pick<Planned, 'season' | 'relaxed'>): Limit[] {
  const stretches: { rows: Dual[] }[] = []
  const binding = relaxed.duals
    .filter(({ rule }) => rule in words)
    .filter(row => worthOf(row) >= LEAST_WORTH)
    .sort((a, b) => a.rule.localeCompare(b.rule) || a.about.localeCompare(b.about) || a.week - b.week)
  for (const row of binding) {
    const last = stretches.at(-1)?.rows.at(-1)
    const isNext =
      last?.rule === row.rule && last.about === row.about && isByWeek(row) && row.week <= last.week + 1
    if (isNext) stretches.at(-1)!.rows.push(row)
    else stretches.push({ rows: [row] })
  }
  return stretches
    .map(({ rows }) => limitOf(season, rows))
    .sort((a, b) => b.total - a.total)
    .map(({ limit }) => limit)
}

const isByWeek = ({ rule }: RowAbout) => rule === 'space' || rule === 'labour' || rule === 'motherWeek'
const worthOf = ({ rule, dual }: Dual) => (rule === 'labour' ? -dual * MINUTES : -dual)

const ONE_MORE = '{Subject}, {when}: one more {unit} is worth {worth}{per}.'
const MORE_AREA = '{Subject}, {when}: {unit} more is worth {worth}{per}.'

function limitOf(season: Season, rows: readonly Dual[]): { limit: Limit; total: number } {
  const first = rows[0]!
  const lastWeek = isByWeek(first) ? rows.at(-1)!.week : endOf(season, first)
  const fromWeek = Math.max(0, first.week)
  const total = rows.reduce((sum, row) => sum + worthOf(row), 0)
  const worthPerUnit = withoutNoise(total / rows.length)
  const { subject, unit, when, per } = words[first.rule]!(season, first, fromWeek, lastWeek, rows.length)
  const isArea = unit === 'm²'
  return {
    limit: {
      rule: first.rule,
      subject,
      from: weekName(season, fromWeek),
      to: weekName(season, lastWeek),
      worthPerUnit,
      unit,
      sentence: phrase(isArea ? MORE_AREA : ONE_MORE, {
        subject,
        when,
        unit: isArea ? { amount: 1, unit } : phrase(unit),
        worth: moneySaid(worthPerUnit),
        per,
      }),
    },
    total,
  }
}

interface Words {
  readonly subject: Phrase
  readonly unit: string
  readonly when: Phrase
  readonly per: Phrase | ''
}

const perWeek = (weeks: number): Words['per'] => (weeks > 1 ? phrase(' a week') : '')

const words: Record<string, (season: Season, row: Dual, from: number, to: number, weeks: number) => Words> = {
  space: (season, { about }, from, to, weeks) => ({
    subject: phrase(about),
    unit: 'm²',
    when: weeksSaid(season, from, to),
    per: perWeek(weeks),
  }),
  labour: (season, { subject }, from, to, weeks) => ({
    subject: listed(
      skillsOf(season)
        .filter((_, s) => subject & (1 << s))
        .map(skill => phrase(skill)),
    ),
    unit: 'hour',
    when: weeksSaid(season, from, to),
    per: perWeek(weeks),
  }),
  motherWeek: (season, row, from, to, weeks) => ({
    ...motherWords(season, row),
    when: weeksSaid(season, from, to),
    per: perWeek(weeks),
  }),
  motherYear: (season, row, from) => ({
    ...motherWords(season, row),
    when: phrase('season of {year}', { year: yearOf(season, from) }),
    per: '',
  }),
  motherGround: () => ({
    subject: phrase('mother block'),
    unit: 'young mother tree',
    when: phrase('its ground'),
    per: '',
  }),
  storedWood: (season, row) => ({ ...motherWords(season, row), when: phrase('in store'), per: '' }),
  licence: (season, { about }, from) => ({
    subject: phrase('licence of {kind}', { kind: about }),
    unit: 'plant begun',
    when: phrase('{year}', { year: yearOf(season, from) }),
    per: '',
  }),
}

function motherWords(season: Season, { subject }: RowAbout): { subject: Phrase; unit: string } {
  const pool = season.pools[subject]!
  return { subject: poolSaid(pool), unit: singular[pool.material] ?? pool.material }
}

const singular: Partial<Record<string, string>> = {
  cuttings: 'cutting',
  'scion sticks': 'scion stick',
  budwood: 'stick of budwood',
  branches: 'branch',
  shoots: 'shoot',
  offsets: 'offset',
  'standing trees': 'standing tree',
}

function endOf(season: Season, { rule, subject, week }: RowAbout): number {
  const stretches =
    rule === 'licence' ? season.licences[subject]!.perYear : (season.pools[subject]?.perYear ?? [])
  return stretches.find(({ fromWeek }) => fromWeek === week)?.toWeek ?? season.weeks - 1
}

const yearOf = (season: Season, week: number) => weekName(season, week).slice(0, 4)

/** Money as people say it: whole from ten on, else with one or two digits behind the point. */
export const moneySaid = (amount: number): number =>
  amount >= 10 ? Math.round(amount) : Number(amount.toFixed(amount >= 1 ? 1 : 2))
