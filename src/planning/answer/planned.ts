import type { Entry, Nursery } from '../../record/index.ts'
import { weekText } from '../../science/index.ts'
import { type MethodId, type Phrase, phrase } from '../../trade/index.ts'
import type { Margins, SeasonModel, Solution } from '../model/season-model.ts'
import type { Plan } from '../plan.ts'
import { courseOf } from '../rules/season-draft.ts'
import type { Course, Season } from '../season.ts'
import type { OrderOutcome, SimulatedLoads } from '../simulate/outcome.ts'

/** What the answer is read from: the season, the plan in whole trays, its relaxation, and what the seasons said. */
export interface Planned {
  readonly nursery: Nursery
  readonly season: Season
  readonly margins: Margins
  readonly model: SeasonModel
  readonly solution: Solution
  readonly relaxed: Solution
  readonly outcomes: readonly OrderOutcome[]
  readonly loads: SimulatedLoads
  /** Starts in order of week, as the rest of the answer refers to them. */
  readonly starts: readonly ChosenStart[]
  readonly today: string
  /** The plan shown before this one. */
  readonly before: Plan | null
  /** Entries since the plan that this one is compared with: the one accepted, else the one before. */
  readonly news: readonly Entry[]
}

export interface ChosenStart {
  readonly id: string
  readonly way: number
  readonly week: number
  readonly number: number
  readonly course: Course
}

/** The name of a start, the same in the next plan: so that a plan can be compared with the one accepted. */
export const startId = (season: Season, way: number, week: number): string =>
  `${season.ways[way]!.name} ${weekName(season, week)}`

/** `2026-W12`. */
export const weekName = (season: Season, week: number): string => weekText(season.firstWeek + week)

/** The number of the week in its year, as people say it. */
export const weekSaid = (season: Season, week: number): number => Number(weekName(season, week).slice(6))

/** "week 12", "weeks 12 to 15". */
export const weeksSaid = (season: Season, from: number, to: number): Phrase =>
  from === to
    ? phrase('week {week}', { week: weekSaid(season, from) })
    : phrase('weeks {from} to {to}', { from: weekSaid(season, from), to: weekSaid(season, to) })

/** Plants can be counted: a number within rounding of a whole one is that one. */
export const wholePlants = (number: number): number => Math.round(number)

export function chosenStarts(season: Season, starts: Solution['starts']): ChosenStart[] {
  return starts
    .map(({ way, week, number }) => ({
      id: startId(season, way, week),
      way,
      week,
      number: wholePlants(number),
      course: courseOf(season, way, week),
    }))
    .filter(({ number }) => number > 0)
    .sort((a, b) => a.week - b.week || a.way - b.way)
}

/** What is counted when a batch of this method begins. */
export function startedNoun(method: MethodId, number: number): Phrase {
  const [one, more] = nouns(method)
  return phrase(number === 1 ? one : more)
}

function nouns(method: MethodId): readonly [string, string] {
  if (method === 'seed') return ['seed', 'seeds']
  if (method.endsWith('_cutting')) return ['cutting', 'cuttings']
  if (method.endsWith('_layer')) return ['layer', 'layers']
  if (method.endsWith('_bud')) return ['bud', 'buds']
  if (method.includes('graft')) return ['graft', 'grafts']
  return ['plant', 'plants']
}
