import { type BenchId, wayName } from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import type { PlannedStart } from '../plan.ts'
import type { Match } from './match-stock.ts'
import { type ChosenStart, type Planned, weekName } from './planned.ts'
import type { MotherShare } from './share-mothers.ts'

const whole = (number: number) => Math.round(number)

/** The starts as the nursery reads them: from which mothers and rootstocks, on which bench, for whom. */
export function plannedStarts(
  planned: Planned,
  matches: readonly Match[],
  shares: readonly MotherShare[],
  benches: readonly (BenchId | null)[],
): PlannedStart[] {
  const { season, starts } = planned
  const sharesOf = grouped(shares, share => share.start)
  const madeBy = grouped(
    matches.filter(match => match.maker.what === 'start'),
    match => (match.maker.what === 'start' ? match.maker.start : -1),
  )
  const takenBy = grouped(
    matches.filter(match => match.taker.what === 'start'),
    match => (match.taker.what === 'start' ? match.taker.start : -1),
  )
  const setOf = new Map(
    planned.nursery.startSets.map(({ entry, kind, protocol, week, insteadOf }) => [
      `${wayName(kind, protocol)} ${week}`,
      { entry, insteadOf },
    ]),
  )
  return starts.map((start, s) => {
    const way = season.ways[start.way]!
    const made = madeBy.get(s) ?? []
    return {
      id: start.id,
      kind: season.kinds[way.kind]!.id,
      protocol: way.protocol.id,
      method: way.method,
      week: weekName(season, start.week),
      number: start.number,
      mothers: [...grouped(sharesOf.get(s) ?? [], share => `${share.pool}\n${share.mother}`).values()].map(
        of => ({
          mother: of[0]!.mother,
          material: season.pools[of[0]!.pool]!.material,
          number: of.reduce((sum, share) => sum + share.number, 0),
        }),
      ),
      rootstocks: rootstocksOf(planned, start, takenBy.get(s) ?? []),
      bench: benches[s]!,
      people: [],
      orders: [
        ...grouped(
          made.flatMap(({ taker, number }) =>
            taker.what === 'order' ? [{ order: taker.order, number }] : [],
          ),
          ({ order }) => order,
        ),
      ]
        .map(([order, of]) => ({
          order: season.orders[order]!.id,
          number: whole(of.reduce((sum, { number }) => sum + number, 0)),
        }))
        .filter(({ number }) => number > 0),
      forStarts: [
        ...new Set(made.flatMap(({ taker }) => (taker.what === 'start' ? [starts[taker.start]!.id] : []))),
      ],
      cost: Math.round(costOf(planned, start) * 100) / 100,
      set: setOf.get(start.id) ?? null,
    }
  })
}

/** What is taken is what is worked; what was raised beyond it as cover stays on its bench. */
function rootstocksOf(
  { season, starts }: Planned,
  { number: begun, course }: ChosenStart,
  taken: readonly Match[],
): PlannedStart['rootstocks'] {
  const all = taken.reduce((sum, { number }) => sum + number, 0)
  const worked = Math.min(1, (begun * (course.rootstock?.perPlant ?? 0)) / Math.max(all, 1e-9))
  const byMaker = grouped(taken, ({ kind, maker }) =>
    maker.what === 'bought'
      ? `${kind} bought`
      : `${kind} ${maker.what} ${maker.what === 'batch' ? maker.batch : maker.start}`,
  )
  return [...byMaker.values()].flatMap(of => {
    const { kind, maker } = of[0]!
    const number = whole(worked * of.reduce((sum, match) => sum + match.number, 0))
    if (number === 0) return []
    return [
      {
        kind: season.kinds[kind]!.id,
        batch: maker.what === 'batch' ? season.batches[maker.batch]!.id : null,
        start: maker.what === 'start' ? starts[maker.start]!.id : null,
        number,
      },
    ]
  })
}

/** Material, work by the minute and area of a start over its whole life. */
export function costOf({ season }: Pick<Planned, 'season'>, { way, number, course }: ChosenStart): number {
  let cost = number * season.ways[way]!.costPerPlant
  for (const { perPlant, perBatch } of course.labour)
    for (let k = 0; k < perPlant.length; k++)
      cost += (number * perPlant[k]! + perBatch[k]!) * season.prices.minute
  for (const { place, squareMetres } of course.area) {
    const price = season.places[place]!.pricePerSquareMetreWeek
    for (const area of squareMetres) cost += number * area * price
  }
  return cost
}
