import type { Solution } from '../model/season-model.ts'
import type { Season, SeasonStart } from '../season.ts'
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
      for (const { part, of } of results) {
        const simulated = await of
        all.push({
          orders: part.orders,
          of: simulated.to > seasons ? firstSeasons(simulated, seasons) : simulated,
        })
      }
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

/** The beginning of what was simulated; loads are kept of all seasons that there are. */
function firstSeasons(simulated: SimulatedSeasons, seasons: number): SimulatedSeasons {
  const rows = seasons * simulated.orders
  return {
    ...simulated,
    to: seasons,
    byDue: simulated.byDue.subarray(0, rows),
    weeksLate: simulated.weeksLate.subarray(0, rows),
    late: simulated.late.subarray(0, rows),
    delivered: simulated.delivered.subarray(0, rows),
  }
}

/** Orders side by side again; areas and minutes add up. */
function together(season: Season, results: readonly Result[], seasons: number): SimulatedSeasons {
  const count = season.orders.length
  const byDue = new Int32Array(seasons * count)
  const weeksLate = new Uint8Array(seasons * count)
  const late = new Int32Array(seasons * count)
  const delivered = new Int32Array(seasons * count)
  results.forEach(({ orders, of }) => {
    orders.forEach((order, own) => {
      for (let row = 0; row < seasons; row++) {
        const from = row * orders.length + own
        const to = row * count + order
        byDue[to] = of.byDue[from]!
        weeksLate[to] = of.weeksLate[from]!
        late[to] = of.late[from]!
        delivered[to] = of.delivered[from]!
      }
    })
  })
  const first = results[0]!.of
  const sum = (arrays: readonly Float32Array[]) => {
    const total = new Float32Array(Math.min(...arrays.map(({ length }) => length)))
    for (const array of arrays) for (let i = 0; i < total.length; i++) total[i]! += array[i]!
    return total
  }
  return {
    ...first,
    from: 0,
    to: seasons,
    orders: count,
    byDue,
    weeksLate,
    late,
    delivered,
    squareMetres: sum(results.map(({ of }) => of.squareMetres)),
    minutes: sum(results.map(({ of }) => of.minutes)),
  }
}
