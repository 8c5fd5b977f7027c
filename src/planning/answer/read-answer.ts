import { type Phrase, phrase } from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import type { Plan } from '../plan.ts'
import { poolSaid } from '../reading/pools.ts'
import { readStartSets } from '../reading/start-sets.ts'
import { beyondWhatThereIs } from './beyond-what-there-is.ts'
import { changesOf } from './changes.ts'
import { costParts } from './costs.ts'
import { giveBenches } from './give-benches.ts'
import { withPeople } from './give-people.ts'
import { limitsOf } from './limits.ts'
import { loadsOf } from './loads.ts'
import { matchStock } from './match-stock.ts'
import { orderForecasts } from './orders.ts'
import { type Planned, weekSaid } from './planned.ts'
import { plantingsOf } from './plantings.ts'
import { type LackingWood, shareMothers } from './share-mothers.ts'
import { plannedStarts } from './starts.ts'
import { tasksOf } from './tasks.ts'

export type Answer = Pick<
  Plan,
  | 'starts'
  | 'plantings'
  | 'overtime'
  | 'extraArea'
  | 'orders'
  | 'loads'
  | 'limits'
  | 'changes'
  | 'tasks'
  | 'costParts'
  | 'assumed'
>

/** The plan in the nursery's own words. */
export function readAnswer(planned: Planned): Answer {
  const { season, solution, nursery } = planned
  const matches = matchStock(season, solution, planned.starts)
  const { shares, lacking } = shareMothers(season, planned.starts)
  const benches = giveBenches(nursery, season, planned.starts)
  const begun = plannedStarts(planned, matches, shares, benches)
  const tasks = tasksOf(planned, begun, shares)
  const starts = withPeople(planned, begun, tasks)
  const orders = orderForecasts(planned, matches)
  return {
    starts,
    orders,
    loads: loadsOf(planned, shares),
    limits: limitsOf(planned),
    plantings: plantingsOf(planned),
    ...beyondWhatThereIs(planned),
    changes: changesOf(planned, orders),
    tasks,
    costParts: costParts(planned),
    assumed: [
      ...season.assumed,
      ...overfull(planned),
      ...boughtIn(planned),
      ...lackingWood(planned, lacking),
      ...lessThanSet(planned),
    ],
  }
}

/** Where what stands already takes more than the benches have. */
function overfull({ season }: Planned): Phrase[] {
  return season.places.flatMap(({ place, squareMetres }, p) => {
    let worst = 0
    for (let week = 0; week < season.weeks; week++) {
      let standing = 0
      for (const batch of season.batches)
        for (const area of batch.area) if (area.place === p) standing += area.squareMetres[week] ?? 0
      worst = Math.max(worst, standing - squareMetres[week]!)
    }
    return worst > 0.5
      ? [
          phrase('What stands in the {place} already takes up to {area} more than its benches have.', {
            place: phrase(place),
            area: { amount: Math.ceil(worst), unit: 'm²' },
          }),
        ]
      : []
  })
}

/** In the season before the first young mothers give, when nobody but those that stand can. */
const WEEKS_BEFORE_YOUNG_GIVE = 52

/** What is begun in whole trays may be a little more than the mothers give, one by one. */
function lackingWood({ season }: Planned, lacking: readonly LackingWood[]): Phrase[] {
  const ofMothers = lacking.filter(
    ({ pool, week }) => season.pools[pool]!.young === null || week < WEEKS_BEFORE_YOUNG_GIVE,
  )
  return [...grouped(ofMothers, ({ pool }) => pool)].map(([pool, of]) =>
    phrase(
      '{number} more than the mother trees may give are needed of {wood}: begin fewer, or find more wood.',
      {
        number: of.reduce((sum, { number }) => sum + number, 0),
        wood: poolSaid(season.pools[pool]!),
      },
    ),
  )
}

/** Starts that the nursery fixed and that the plan cannot begin so. */
function lessThanSet({ nursery, season, starts }: Planned): Phrase[] {
  const begun = new Map(starts.map(({ way, week, number }) => [way * season.weeks + week, number]))
  return readStartSets(nursery, season.firstWeek, season.weeks).set.flatMap(
    ({ kind, protocol, week, number }) => {
      const way = season.ways.findIndex(
        each => season.kinds[each.kind]!.id === kind && each.protocol.id === protocol,
      )
      const isOpen = season.ways[way]?.open[week] === 1
      const there = begun.get(way * season.weeks + week) ?? 0
      if (there >= number) return []
      const said = {
        number,
        begun: there,
        kind: nursery.kinds.get(kind)?.name ?? kind,
        week: weekSaid(season, week),
      }
      return [
        isOpen
          ? phrase(
              'Of {number} {kind} that were set to begin in week {week}, {begun} are planned: no order wants more, or room, hands, wood or rootstocks lack.',
              said,
            )
          : phrase('{number} {kind} were set to begin in week {week}, in which they may not begin.', said),
      ]
    },
  )
}

function boughtIn({ season, solution }: Planned): Phrase[] {
  return [...grouped(solution.bought, ({ kind }) => kind)].map(([kind, of]) => {
    const number = Math.round(of.reduce((sum, bought) => sum + bought.number, 0))
    return phrase('{number} of {kind} are bought in.', { number, kind: season.kinds[kind]!.name })
  })
}
