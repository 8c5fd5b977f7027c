import type { Nursery } from '../../record/index.ts'
import { weekText } from '../../science/index.ts'
import { type KindId, type Phrase, type ProtocolId, phrase } from '../../trade/index.ts'
import type { HowFar } from '../how-far.ts'
import { seasonOf } from '../reading/season-of.ts'
import { partOfSeason } from '../replan/part-of-season.ts'
import type { Season } from '../season.ts'
import { componentsOf } from '../simulate/components.ts'
import { type SimulatedSeasons, simulateSeasons } from '../simulate/simulate-seasons.ts'
import { earliestStart } from './earliest-start.ts'
import { leftFree } from './left-free.ts'
import { earliestFromPlan, promisableByWeek } from './promises.ts'
import { type PlanBeside, supplyOfPlan } from './starts-of-plan.ts'

export interface PromiseAsked {
  readonly kind: KindId
  readonly number: number
  /** Chance that the whole number is there. */
  readonly sure: number
  readonly today: string
}

/** What can be promised of one kind beside all orders. */
export interface CouldBePromised {
  readonly kind: KindId
  readonly firstWeek: string
  /** By week from `firstWeek`: how many are there as surely as asked, and in one season of two. */
  readonly numbers: readonly number[]
  readonly middle: readonly number[]
  /** The earliest week with the number asked, from what lives and is planned. */
  readonly fromPlan: { readonly week: string; readonly chance: number } | null
  /** The same if it were begun for this, in the room, hands and wood that the plan leaves free. */
  readonly ifBegun: {
    readonly protocol: ProtocolId
    readonly week: string
    readonly number: number
    readonly readyWeek: string
    readonly chance: number
  } | null
  /** What stands in the way of beginning it earlier; null where nothing does. */
  readonly lack: Phrase | null
}

/** Enough for a chance to within 2 points, in a few hundredths of a second. */
const SEASONS = 500
const SEED = 20_260_101

const simulatedOf = new WeakMap<
  Season,
  { readonly plan: string; readonly of: Map<number, SimulatedSeasons> }
>()

/** What was simulated already, by kind: another number or sureness asks for nothing new. */
function knownOf(season: Season, plan: string): Map<number, SimulatedSeasons> {
  const known = simulatedOf.get(season)
  if (known?.plan === plan) return known.of
  const of = new Map<number, SimulatedSeasons>()
  simulatedOf.set(season, { plan, of })
  return of
}

/** The number by week, and the earliest week for the number asked; null for a kind that the nursery does not know. */
export function couldBePromised(
  nursery: Nursery,
  plan: PlanBeside,
  asked: PromiseAsked,
  tell: HowFar = () => undefined,
): CouldBePromised | null {
  const { number, sure } = asked
  tell(0, phrase('Reading the nursery.'))
  const season = seasonOf(nursery, asked.today)
  const kind = season.kinds.findIndex(({ id }) => id === asked.kind)
  if (kind < 0) return null
  const { starts, bought } = supplyOfPlan(season, plan)

  // Only what can touch the kind is simulated: its rootstocks, what is worked on it, what shares its mothers and orders.
  const own = new Set(componentsOf(season).find(kinds => kinds.includes(kind)))
  const part = partOfSeason(season, of => own.has(of))
  const stocks = season.ways
    .filter(way => way.kind === kind)
    .flatMap(({ courses }) => courses.flatMap(({ rootstock }) => rootstock?.kinds ?? []))
  const known = knownOf(season, plan.id)
  tell(0.5, phrase('Going through {seasons} seasons.', { seasons: SEASONS }))
  const simulated =
    known.get(kind) ??
    simulateSeasons(
      part,
      starts.filter(({ way }) => own.has(season.ways[way]!.kind)),
      {
        from: 0,
        to: SEASONS,
        seed: SEED,
        bought: bought.filter(of => own.has(of.kind)),
        watch: [...new Set([kind, ...stocks])],
      },
    )
  known.set(kind, simulated)
  const surely = promisableByWeek(simulated, sure)
  tell(0.9, phrase('Looking for the earliest week.'))
  const freeStocks = new Map(surely.map(({ kind: of, numbers }) => [of, numbers]))
  const begun = earliestStart(season, { kind, number, sure }, leftFree(season, plan, starts, freeStocks))
  const fromPlan = earliestFromPlan(simulated, { kind, number, sure })
  const named = (week: number) => weekText(season.firstWeek + week)
  return {
    kind: asked.kind,
    firstWeek: named(0),
    numbers: [...surely[0]!.numbers],
    middle: [...promisableByWeek(simulated, 0.5)[0]!.numbers],
    fromPlan: fromPlan && { week: named(fromPlan.week), chance: fromPlan.chance },
    ifBegun: begun.start && {
      protocol: season.ways[begun.start.way]!.protocol.id,
      week: named(begun.start.week),
      number: begun.start.number,
      readyWeek: named(begun.start.readyWeek),
      chance: begun.start.chance,
    },
    lack: begun.lack,
  }
}
