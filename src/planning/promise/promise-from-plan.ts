import type { Nursery } from '../../record/index.ts'
import { weekText } from '../../science/index.ts'
import type { KindId, ProtocolId } from '../../trade/index.ts'
import type { Plan } from '../plan.ts'
import { readSeason } from '../reading/read-season.ts'
import { simulateSeasons } from '../simulate/simulate-seasons.ts'
import { earliestPromise, promisableByWeek } from './promises.ts'
import { supplyOfPlan } from './starts-of-plan.ts'

export interface PromiseWish {
  readonly today: string
  readonly sure: number
  readonly seasons: number
  readonly seed: number
}

/** What may be promised more of one kind, by week from `firstWeek`. */
export interface Promisable {
  readonly kind: KindId
  readonly firstWeek: string
  readonly numbers: readonly number[]
}

/** What the plan leaves free beside all orders: numbers by week, each there as surely as wished. */
export function promisableFromPlan(
  nursery: Nursery,
  plan: Pick<Plan, 'starts'>,
  kinds: readonly KindId[],
  wish: PromiseWish,
): Promisable[] {
  const season = readSeason(nursery, wish.today)
  const watch = kinds.flatMap(id => {
    const index = season.kinds.findIndex(kind => kind.id === id)
    return index < 0 ? [] : [index]
  })
  const { starts, bought } = supplyOfPlan(season, plan)
  const { seasons, seed } = wish
  const simulated = simulateSeasons(season, starts, { from: 0, to: seasons, seed, bought, watch })
  return promisableByWeek(simulated, wish.sure).map(({ kind, numbers }) => ({
    kind: season.kinds[kind]!.id,
    firstWeek: weekText(season.firstWeek),
    numbers: [...numbers],
  }))
}

/** When so many of a kind can be promised: from what lives and is planned, and if it were begun for this. */
export interface EarliestWeek {
  readonly fromPlan: { readonly week: string; readonly chance: number } | null
  readonly ifBegun: {
    readonly protocol: ProtocolId
    readonly week: string
    readonly number: number
    readonly readyWeek: string
    readonly chance: number
  } | null
}

/** The earliest week for a number of a kind at the wished sureness; null for a kind that the nursery does not know. */
export function earliestWeekFor(
  nursery: Nursery,
  plan: Pick<Plan, 'starts'>,
  asked: { readonly kind: KindId; readonly number: number },
  wish: PromiseWish,
): EarliestWeek | null {
  const season = readSeason(nursery, wish.today)
  const kind = season.kinds.findIndex(({ id }) => id === asked.kind)
  if (kind < 0) return null
  const { starts, bought } = supplyOfPlan(season, plan)
  const { seasons, seed, sure } = wish
  const simulated = simulateSeasons(season, starts, { from: 0, to: seasons, seed, bought, watch: [kind] })
  const { fromPlan, ifBegun } = earliestPromise(season, simulated, { kind, number: asked.number, sure })
  const named = (week: number) => weekText(season.firstWeek + week)
  return {
    fromPlan: fromPlan && { week: named(fromPlan.week), chance: fromPlan.chance },
    ifBegun: ifBegun && {
      protocol: season.ways[ifBegun.way]!.protocol.id,
      week: named(ifBegun.week),
      number: ifBegun.number,
      readyWeek: named(ifBegun.readyWeek),
      chance: ifBegun.chance,
    },
  }
}
