import type { BoughtIn, Season, SeasonStart } from '../season.ts'
import type { SeasonLoads } from './loads.ts'
import { mergePartials } from './merge-partials.ts'
import { type OpenRunner, runHere } from './part-runs.ts'
import { partsOf } from './parts.ts'
import { type SimulatedSeasons, simulateSeasons } from './simulate-seasons.ts'
import { addLoads, nothingLoaded } from './sum-loads.ts'

/** What was simulated last of each component, with what it began from; the newest first. */
export type SimulationMemory = Map<string, readonly Remembered[]>

interface Remembered {
  readonly from: string
  /** From the first season on, and some that come later by themselves. */
  readonly simulated?: SimulatedSeasons
  readonly fresh?: SimulatedSeasons
  readonly loads?: { readonly seasons: number; readonly of: SeasonLoads }
}

/** The plan that is taken need not be that of the last round. */
const MOST_REMEMBERED = 3

export interface SeasonsByComponent {
  run(starts: readonly SeasonStart[], bought: readonly BoughtIn[], seasons: number): Promise<SimulatedSeasons>
  /**
   * As many seasons again, those that come after: a plan settled on the first was fitted to their luck, and fares a little
   * worse in these.
   */
  runFresh(
    starts: readonly SeasonStart[],
    bought: readonly BoughtIn[],
    seasons: number,
  ): Promise<SimulatedSeasons>
  /** The places and hands that the seasons take, of all components or of those of some kinds. */
  loads(
    starts: readonly SeasonStart[],
    bought: readonly BoughtIn[],
    seasons: number,
    isOf?: (kind: number) => boolean,
  ): Promise<SeasonLoads>
  /** Begins with the components of these starts, of which all is known: the next run will ask for them. */
  begin(starts: readonly SeasonStart[], bought: readonly BoughtIn[], seasons: number): void
}

/**
 * Simulates a season component by component and remembers each: a start, a batch and a year have their own luck, so
 * a component that begins from the same is the same, in the next round and in the next plan. Only what has changed
 * is run again.
 */
export function byComponent(
  season: Season,
  seed: number,
  kept?: SimulationMemory,
  open: OpenRunner = runHere,
): SeasonsByComponent {
  const memory: SimulationMemory = kept ?? new Map()
  const isKept = kept !== undefined
  const parts = partsOf(season)
  const runner = open(season, parts)
  const partOfKind = new Int32Array(season.kinds.length)
  parts.forEach(({ kinds }, p) => {
    for (const kind of kinds) partOfKind[kind] = p
  })
  const running = new Map<number, Asked & { readonly all: Running }>()

  const beginning = (p: number, starts: readonly SeasonStart[], bought: readonly BoughtIn[]) =>
    [parts[p]!.says, seed, ...starts.map(said), ...bought.map(saidBought)].join('\n')
  const rememberedOf = (name: string, begun: string) => memory.get(name)?.find(each => each.from === begun)
  const remember = (name: string, begun: string, more: Partial<Remembered>) => {
    const others = memory.get(name)?.filter(each => each.from !== begun) ?? []
    const all = [{ ...rememberedOf(name, begun), ...more, from: begun }, ...others]
    memory.set(name, all.slice(0, MOST_REMEMBERED))
  }
  /** What comes of a part: remembered, running, or begun now. */
  const seasonsOf = (
    p: number,
    starts: readonly SeasonStart[],
    bought: readonly BoughtIn[],
    from: number,
    to: number,
  ): Running => {
    const { name } = parts[p]!
    const begun = beginning(p, starts, bought)
    const now = running.get(p)
    if (now?.begun === begun && now.from === from && now.to >= to) return now.all
    const { simulated: before, fresh } = rememberedOf(name, begun) ?? {}
    const known = [before, fresh].find(each => each && each.from <= from && each.to >= to)
    if (known) return Promise.resolve(known)
    const goesOn = from === 0 && before
    const input = { from: goesOn ? before.to : from, to, seed, bought }
    const all = runner.run({ part: p, starts, input }).then(more => {
      const simulated = goesOn ? mergePartials([before, more]) : more
      remember(name, begun, from === 0 ? { simulated } : { fresh: simulated })
      return simulated
    })
    running.set(p, { begun, from, to, all })
    return all
  }
  const loadsOf = async (
    p: number,
    starts: readonly SeasonStart[],
    bought: readonly BoughtIn[],
    seasons: number,
  ): Promise<SeasonLoads> => {
    const { name } = parts[p]!
    const begun = beginning(p, starts, bought)
    const known = rememberedOf(name, begun)
    if (known?.loads?.seasons === seasons) return known.loads.of
    const of = await runner.loads({ part: p, starts, input: { from: 0, to: seasons, seed, bought } })
    // This is the plan that is shown. Nobody asks for it again who does not plan again, and its loads are large.
    if (isKept) memory.set(name, [{ ...known, from: begun, loads: { seasons, of } }])
    return of
  }
  const byPart = (starts: readonly SeasonStart[], bought: readonly BoughtIn[]) => {
    const own = parts.map(() => ({ starts: [] as SeasonStart[], bought: [] as BoughtIn[] }))
    for (const start of starts) own[partOfKind[season.ways[start.way]!.kind]!]!.starts.push(start)
    for (const each of bought) own[partOfKind[each.kind]!]!.bought.push(each)
    return own
  }
  const busyParts = (starts: readonly SeasonStart[], bought: readonly BoughtIn[]) =>
    byPart(starts, bought).flatMap((own, part) =>
      parts[part]!.isIdle && own.starts.length === 0 && own.bought.length === 0 ? [] : [{ part, ...own }],
    )

  return {
    begin(starts, bought, seasons) {
      byPart(starts, bought).forEach((own, p) => {
        if (own.starts.length > 0) seasonsOf(p, own.starts, own.bought, 0, seasons).catch(() => {})
      })
    },
    async loads(starts, bought, seasons, isOf = () => true) {
      const results = busyParts(starts, bought)
        .filter(({ part }) => isOf(parts[part]!.kinds[0]!))
        .map(own => loadsOf(own.part, own.starts, own.bought, seasons))
      runner.help()
      const sum = nothingLoaded(season, seasons)
      for (const each of results) addLoads(sum, await each)
      return sum
    },
    run: (starts, bought, seasons) => run(starts, bought, 0, seasons),
    runFresh: (starts, bought, seasons) => run(starts, bought, seasons, 2 * seasons),
  }

  async function run(
    starts: readonly SeasonStart[],
    bought: readonly BoughtIn[],
    from: number,
    to: number,
  ): Promise<SimulatedSeasons> {
    // Of what stands for no order only the places and hands that it takes are asked.
    const results = busyParts(starts, bought)
      .filter(({ part }) => parts[part]!.orders.length > 0)
      .map(own => ({
        part: parts[own.part]!,
        of: seasonsOf(own.part, own.starts, own.bought, from, to),
      }))
    if (results.length === 0) return simulateSeasons(season, starts, { from, to, seed, bought })
    runner.help()
    const all: Result[] = []
    for (const { part, of } of results) all.push({ orders: part.orders, of: await of })
    running.clear()
    return together(season, all, from, to)
  }
}

interface Asked {
  readonly begun: string
  readonly from: number
  readonly to: number
}

type Running = Promise<SimulatedSeasons>

interface Result {
  readonly orders: readonly number[]
  readonly of: SimulatedSeasons
}

/** Plans are solved to a millionth; a thousandth of a plant is none. */
const said = ({ way, week, number }: SeasonStart) => `${way} ${week} ${Math.round(number * 1000)}`
const saidBought = ({ kind, week, number }: BoughtIn) => `${kind} ${week} ${Math.round(number * 1000)}`

/** Orders side by side again, some of the seasons that are known of each. */
function together(season: Season, results: readonly Result[], from: number, to: number): SimulatedSeasons {
  const seasons = to - from
  const cells = season.orders.length * seasons
  const byDue = new Int32Array(cells)
  const weeksLate = new Uint8Array(cells)
  const late = new Int32Array(cells)
  for (const { orders, of } of results)
    orders.forEach((order, own) => {
      const first = own * (of.to - of.from) + from - of.from
      byDue.set(of.byDue.subarray(first, first + seasons), order * seasons)
      weeksLate.set(of.weeksLate.subarray(first, first + seasons), order * seasons)
      late.set(of.late.subarray(first, first + seasons), order * seasons)
    })
  return {
    ...results[0]!.of,
    from,
    to,
    orders: season.orders.length,
    byDue,
    weeksLate,
    late,
  }
}
