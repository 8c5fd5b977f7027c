import type { Nursery } from '../../record/index.ts'
import { weekNumber } from '../../science/index.ts'
import { type OrderId, type Phrase, phrase } from '../../trade/index.ts'
import type { HowFar } from '../how-far.ts'
import type { Plan } from '../plan.ts'
import { freeInstead } from '../promise/left-free.ts'
import { type PlanBeside, supplyOfPlan } from '../promise/starts-of-plan.ts'
import { seasonOf } from '../reading/season-of.ts'
import { partOfSeason } from '../replan/part-of-season.ts'
import type { Season } from '../season.ts'
import { componentsOf } from '../simulate/components.ts'
import { type OrderChance, orderChances } from '../simulate/outcome.ts'
import { simulateSeasons } from '../simulate/simulate-seasons.ts'

export interface MoveAsked {
  /** A start of the plan. */
  readonly start: string
  readonly week: string
  readonly number: number
  readonly today: string
}

/** What a start in another week or of another number does to the orders that it can touch, and what it lacks there. */
export interface StartMoved {
  /** Whether it may begin in that week at all. */
  readonly isOpen: boolean
  /** Room, hands, wood or licence that the plan leaves too little of, in words: "the mist bed is full in week 20". */
  readonly lacks: readonly Phrase[]
  /** By order that the start can touch, the chance that it is filled in time, with the plan as it is and as asked. */
  readonly orders: readonly { readonly order: OrderId; readonly before: number; readonly after: number }[]
}

/** Enough for a chance to within 2 points; both run through the same seasons, so that their difference is sharper. */
const SEASONS = 500
const SEED = 20_260_101

/** The chances of the plan as it is, by what the start can touch: asked again and again while a start is moved about. */
const asPlanned = new WeakMap<Season, { readonly plan: string; readonly of: Map<string, OrderChance[]> }>()

function knownOf(season: Season, plan: string): Map<string, OrderChance[]> {
  const known = asPlanned.get(season)
  if (known?.plan === plan) return known.of
  const of = new Map<string, OrderChance[]>()
  asPlanned.set(season, { plan, of })
  return of
}

/**
 * Nothing is planned anew: all other starts stay as they are. What the start lacks is told, and the chances are those if it
 * were found. Null where the plan has no such start to come.
 */
export function startMoved(
  nursery: Nursery,
  plan: PlanBeside,
  asked: MoveAsked,
  tell: HowFar = () => undefined,
): StartMoved | null {
  tell(0, phrase('Reading the nursery.'))
  const season = seasonOf(nursery, asked.today)
  const from = plan.starts.find(({ id }) => id === asked.start)
  const way = season.ways.find(
    ({ kind, protocol }) => season.kinds[kind]!.id === from?.kind && protocol.id === from.protocol,
  )
  if (from === undefined || way === undefined) return null
  const isOpen = way.open[weekNumber(asked.week) - season.firstWeek] === 1
  const own = new Set(componentsOf(season).find(kinds => kinds.includes(way.kind)))
  const part = partOfSeason(season, kind => own.has(kind))
  const chances = (starts: Plan['starts']) => {
    const supply = supplyOfPlan(season, { starts, bought: plan.bought })
    const ofKinds = supply.starts.filter(start => own.has(season.ways[start.way]!.kind))
    const bought = supply.bought.filter(({ kind }) => own.has(kind))
    return orderChances(part, simulateSeasons(part, ofKinds, { from: 0, to: SEASONS, seed: SEED, bought }))
  }
  tell(0.5, phrase('Going through {seasons} seasons.', { seasons: SEASONS }))
  const known = knownOf(season, plan.id)
  const touched = [...own].join(' ')
  const before = known.get(touched) ?? chances(plan.starts)
  known.set(touched, before)
  tell(0.75, phrase('Going through {seasons} seasons.', { seasons: SEASONS }))
  const { week, number } = asked
  const after = chances(
    plan.starts.flatMap(start =>
      start.id !== from.id ? [start] : isOpen ? [{ ...start, week, number }] : [],
    ),
  )
  return {
    isOpen,
    lacks: isOpen ? lacksOf(season, plan, from, asked) : [],
    orders: part.orders.map(({ id }, o) => ({
      order: id,
      before: before[o]!.chance,
      after: after[o]!.chance,
    })),
  }
}

function lacksOf(
  season: Season,
  plan: PlanBeside,
  from: Plan['starts'][number],
  { week, number }: MoveAsked,
): readonly Phrase[] {
  const inSeason = (starts: Plan['starts']) => supplyOfPlan(season, { starts, bought: [] }).starts
  const [was] = inSeason([from])
  const [is] = inSeason([{ ...from, week, number }])
  if (was === undefined || is === undefined) return []
  return freeInstead(season, plan, inSeason(plan.starts.filter(({ id }) => id !== from.id)), was)(is)
}
