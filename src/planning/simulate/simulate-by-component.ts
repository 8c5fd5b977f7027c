import type { Solution } from '../model/season-model.ts'
import type { Season, SeasonStart } from '../season.ts'
import { componentsOf } from './components.ts'
import { mergePartials } from './merge-partials.ts'
import { type SimulatedSeasons, type SimulationInput, simulateSeasons } from './simulate-seasons.ts'

export type Simulate = (
  season: Season,
  starts: readonly SeasonStart[],
  input: SimulationInput,
) => SimulatedSeasons | Promise<SimulatedSeasons>

/** What was simulated last of each component, with what it began from. */
export type SimulationMemory = Map<string, { readonly from: string; readonly simulated: SimulatedSeasons }>

/**
 * Simulates a season component by component and remembers each: a start, a batch and a year have their own luck, so
 * a component that begins from the same is the same, in the next round and in the next plan. Only what has changed
 * is run again.
 */
export function byComponent(
  season: Season,
  seed: number,
  memory: SimulationMemory = new Map(),
  simulate: Simulate = simulateSeasons,
) {
  const parts = componentsOf(season).map(kinds => partOf(season, kinds))
  const partOfKind = new Int32Array(season.kinds.length)
  parts.forEach(({ kinds }, p) => {
    for (const kind of kinds) partOfKind[kind] = p
  })
  return async (
    starts: readonly SeasonStart[],
    bought: Solution['bought'],
    seasons: number,
  ): Promise<SimulatedSeasons> => {
    const startsOf: SeasonStart[][] = parts.map(() => [])
    for (const start of starts) startsOf[partOfKind[season.ways[start.way]!.kind]!]!.push(start)
    const results: Result[] = []
    for (const [p, part] of parts.entries()) {
      const own = bought.filter(({ kind }) => partOfKind[kind] === p)
      if (part.isIdle && startsOf[p]!.length === 0 && own.length === 0) continue
      const from = [part.says, seed, ...startsOf[p]!.map(said), ...own.map(saidBought)].join('\n')
      const known = memory.get(part.name)
      const before = known?.from === from ? known.simulated : undefined
      let simulated = before
      if (!before || before.to < seasons) {
        const input = { from: before?.to ?? 0, to: seasons, seed, bought: own }
        const more = await simulate(part.season, startsOf[p]!, input)
        simulated = before ? mergePartials([before, more]) : more
        memory.set(part.name, { from, simulated })
      }
      const of = simulated!.to > seasons ? firstSeasons(simulated!, seasons) : simulated!
      results.push({ orders: part.orders, of })
    }
    return results.length > 0
      ? together(season, results, seasons)
      : simulate(season, starts, { from: 0, to: seasons, seed, bought })
  }
}

interface Result {
  readonly orders: Part['orders']
  readonly of: SimulatedSeasons
}

interface Part {
  readonly name: string
  readonly kinds: readonly number[]
  /** Indices of its orders in the whole season. */
  readonly orders: readonly number[]
  readonly season: Season
  /** Nothing is asked of it and nothing stands. */
  readonly isIdle: boolean
  /** All that a simulation of it rests on beside the starts. */
  readonly says: string
}

function partOf(season: Season, kinds: readonly number[]): Part {
  const isOwn = new Set(kinds)
  const orders = season.orders.flatMap(({ kinds: accepted }, o) => (isOwn.has(accepted[0]!.kind) ? [o] : []))
  const part: Season = {
    ...season,
    orders: orders.map(o => season.orders[o]!),
    batches: season.batches.filter(({ kind }) => isOwn.has(kind)),
  }
  const isIdle = orders.length === 0 && part.batches.length === 0
  return {
    name: season.kinds[kinds[0]!]!.id,
    kinds,
    orders,
    season: part,
    isIdle,
    says: isIdle ? '' : fingerprint(part, isOwn),
  }
}

function fingerprint(season: Season, isOwn: ReadonlySet<number>): string {
  const ways = season.ways.filter(({ kind }) => isOwn.has(kind))
  const pools = new Set(
    ways.flatMap(way => way.courses.flatMap(({ material }) => material.map(({ pool }) => pool))),
  )
  return JSON.stringify([
    season.firstWeek,
    season.weeks,
    season.orders,
    season.batches.map(({ id, portions, onHold, finishedWeeksAgo, course }) => [
      id,
      portions,
      onHold,
      finishedWeeksAgo,
      course.steps.map(stepSaid),
      course.caliper,
    ]),
    ways.map(({ name, courses, courseOfWeek }) => [
      name,
      courses.map(({ steps, rootstock, caliper, material }) => [
        steps.map(stepSaid),
        rootstock,
        caliper,
        material,
      ]),
      courses.length > 1 ? [...courseOfWeek] : 0,
    ]),
    [...isOwn].map(kind => season.kinds[kind]!.usableWeeks),
    [...pools].map(pool => {
      const { perYear, stored, keepsWeeks, young, perWeek } = season.pools[pool]!
      return [
        perYear,
        stored,
        keepsWeeks,
        young !== null,
        perWeek.reduce((sum, most, w) => sum + most * (w + 1), 0),
      ]
    }),
  ])
}

const stepSaid = (step: Season['ways'][number]['courses'][number]['steps'][number]) => [
  step.alpha,
  step.beta,
  step.yearShare,
  step.medianDays,
  step.sdLogDays,
  step.plantSdLogDays,
]
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
