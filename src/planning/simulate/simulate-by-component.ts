import type { Solution } from '../model/season-model.ts'
import type { Season, SeasonStart } from '../season.ts'
import { LOADS_EVERY } from './loads.ts'
import { mergePartials } from './merge-partials.ts'
import { type OpenRunner, runHere } from './part-runs.ts'
import { partsOf } from './parts.ts'
import { type SimulatedSeasons, simulateSeasons } from './simulate-seasons.ts'

/** What was simulated last of each component, with what it began from. */
export type SimulationMemory = Map<string, { readonly from: string; readonly simulated: SimulatedSeasons }>

export interface SeasonsByComponent {
  run(starts: readonly SeasonStart[], bought: Solution['bought'], seasons: number): Promise<SimulatedSeasons>
  /** Begins with the components of these starts, of which all is known: the next run will ask for them. */
  begin(starts: readonly SeasonStart[], bought: Solution['bought'], seasons: number): void
}

/**
 * Simulates a season component by component and remembers each: a start, a batch and a year have their own luck, so
 * a component that begins from the same is the same, in the next round and in the next plan. Only what has changed
 * is run again.
 */
export function byComponent(
  season: Season,
  seed: number,
  memory: SimulationMemory = new Map(),
  open: OpenRunner = runHere,
): SeasonsByComponent {
  const parts = partsOf(season)
  const runner = open(season, parts)
  const partOfKind = new Int32Array(season.kinds.length)
  parts.forEach(({ kinds }, p) => {
    for (const kind of kinds) partOfKind[kind] = p
  })
  const running = new Map<
    number,
    { readonly from: string; readonly seasons: number; readonly all: Running }
  >()

  /** What comes of a part: remembered, running, or begun now. */
  const seasonsOf = (
    p: number,
    starts: readonly SeasonStart[],
    bought: Solution['bought'],
    seasons: number,
  ) => {
    const { says, name } = parts[p]!
    const from = [says, seed, ...starts.map(said), ...bought.map(saidBought)].join('\n')
    const begun = running.get(p)
    if (begun?.from === from && begun.seasons >= seasons) return begun.all
    const known = memory.get(name)
    const before = known?.from === from ? known.simulated : undefined
    if (before && before.to >= seasons) return Promise.resolve(before)
    const all = runner
      .run({ part: p, starts, input: { from: before?.to ?? 0, to: seasons, seed, bought } })
      .then(more => {
        const simulated = before ? mergePartials([before, more]) : more
        memory.set(name, { from, simulated })
        return simulated
      })
    running.set(p, { from, seasons, all })
    return all
  }
  const byPart = (starts: readonly SeasonStart[], bought: Solution['bought']) => {
    const own = parts.map(() => ({ starts: [] as SeasonStart[], bought: [] as Solution['bought'][number][] }))
    for (const start of starts) own[partOfKind[season.ways[start.way]!.kind]!]!.starts.push(start)
    for (const each of bought) own[partOfKind[each.kind]!]!.bought.push(each)
    return own
  }

  return {
    begin(starts, bought, seasons) {
      byPart(starts, bought).forEach((own, p) => {
        if (own.starts.length > 0) seasonsOf(p, own.starts, own.bought, seasons).catch(() => {})
      })
    },
    async run(starts, bought, seasons) {
      const results = byPart(starts, bought).flatMap((own, p) => {
        if (parts[p]!.isIdle && own.starts.length === 0 && own.bought.length === 0) return []
        return { part: parts[p]!, of: seasonsOf(p, own.starts, own.bought, seasons) }
      })
      if (results.length === 0) return simulateSeasons(season, starts, { from: 0, to: seasons, seed, bought })
      runner.help()
      const all: Result[] = []
      for (const { part, of } of results) all.push({ orders: part.orders, of: await of })
      running.clear()
      return together(season, all, seasons)
    },
  }
}

type Running = Promise<SimulatedSeasons>

interface Result {
  readonly orders: readonly number[]
  readonly of: SimulatedSeasons
}

/** Plans are solved to a millionth; a thousandth of a plant is none. */
const said = ({ way, week, number }: SeasonStart) => `${way} ${week} ${Math.round(number * 1000)}`
const saidBought = ({ kind, week, number }: Solution['bought'][number]) =>
  `${kind} ${week} ${Math.round(number * 1000)}`

/** Orders side by side again, the first so many seasons of each; areas and minutes add up. */
function together(season: Season, results: readonly Result[], seasons: number): SimulatedSeasons {
  const { weeks } = season
  const cells = season.orders.length * seasons
  const byDue = new Int32Array(cells)
  const weeksLate = new Uint8Array(cells)
  const late = new Int32Array(cells)
  const delivered = new Int32Array(cells)
  for (const { orders, of } of results)
    orders.forEach((order, own) => {
      const from = own * of.to
      byDue.set(of.byDue.subarray(from, from + seasons), order * seasons)
      weeksLate.set(of.weeksLate.subarray(from, from + seasons), order * seasons)
      late.set(of.late.subarray(from, from + seasons), order * seasons)
      delivered.set(of.delivered.subarray(from, from + seasons), order * seasons)
    })
  const first = results[0]!.of
  const places = [...new Set(results.flatMap(({ of }) => of.places))].sort((a, b) => a - b)
  const rowOf = new Map(places.map((place, row) => [place, row]))
  // A part of which more seasons are known has loads of more: those of the first are summed.
  const loaded = Math.ceil(seasons / LOADS_EVERY)
  const squareMetres = new Float32Array(loaded * places.length * weeks)
  const minutes = new Float32Array(loaded * first.skills.length * weeks)
  for (const { of } of results) {
    for (let i = 0; i < minutes.length; i++) minutes[i]! += of.minutes[i]!
    of.places.forEach((place, row) => {
      for (let s = 0; s < loaded; s++) {
        const from = (s * of.places.length + row) * weeks
        const to = (s * places.length + rowOf.get(place)!) * weeks
        for (let w = 0; w < weeks; w++) squareMetres[to + w]! += of.squareMetres[from + w]!
      }
    })
  }
  return {
    ...first,
    from: 0,
    to: seasons,
    orders: season.orders.length,
    byDue,
    weeksLate,
    late,
    delivered,
    places,
    squareMetres,
    minutes,
  }
}
