import type { Margins, SeasonModel, Solution } from '../model/season-model.ts'
import { besideTheRest, partOfSeason } from '../replan/part-of-season.ts'
import type { Taken } from '../rules/capacity.ts'
import type { Season } from '../season.ts'
import { componentsOf } from '../simulate/components.ts'
import { boughtWhole } from './bought-whole.ts'
import { lackingIn, type Rounding, roundAgain, roundTrays } from './round-trays.ts'

/** What is begun and bought in, in whole trays, and what would be delivered if trays need not be whole. */
export interface Trays extends Pick<Solution, 'starts' | 'bought' | 'deliveries'> {
  /** By order, what would come in time if trays need not be whole, and does not. */
  readonly roundedOff: Float64Array
}

export interface WholeTrays {
  round(input: RoundAllInput): Promise<Trays>
}

export interface WholeTraysInput {
  readonly season: Season
  /** The solved relaxation and its model: its starts are rounded. */
  readonly relaxed: Solution
  readonly model: SeasonModel
  /** Most that may be begun, `way · weeks + week`, where starts are spread over weeks; up to whole trays of it. */
  readonly most?: ReadonlyMap<number, number> | undefined
}

export interface RoundAllInput {
  readonly margins: Margins
  /** Seconds to spend on bettering the rounded plan; 0 for none. */
  readonly proveSeconds: number
  readonly isStopped?: (() => boolean) | undefined
  /** Hears of each part when it is rounded; the others may still be waiting. */
  readonly onPart?: (trays: Pick<Solution, 'starts' | 'bought'>) => void
}

/** Room that parts leave to each other, in m² and minutes: what each overruns by rounding errors adds up to less. */
const LEFT = 1e-3
/** Up to so many starts are rounded all together the first time; of more, each part by itself. */
const MOST_TOGETHER = 40
/** Of more starts than these a search takes longer than it betters. */
const MOST_SEARCHED = 200

/**
 * The season in whole trays. A season of many starts is rounded part by part: kinds that share neither mothers nor
 * rootstocks nor orders by themselves, in the room that the others leave, as rounded before or as relaxed. A part of
 * which no order is planned otherwise than in the last round keeps its trays; another keeps its batches where more or
 * fewer trays of them serve its orders, and then its other kinds keep theirs.
 */
export function wholeTrays({ season, relaxed, model, most }: WholeTraysInput): WholeTrays {
  const parts = componentsOf(season)
    .map(kinds => partOf(season, kinds))
    .filter(({ orders }) => orders.length > 0)
  let rounded: readonly (Rounded | undefined)[] = parts.map(() => undefined)

  const allTogether = async ({ margins, proveSeconds, isStopped }: RoundAllInput) => {
    const { starts: seen } = relaxed
    const found = await roundTrays(season, { margins, seen, most, proveSeconds, isStopped })
    return parts.map(part => ofPart(part, margins, found))
  }

  const partByPart = async ({ margins, proveSeconds, isStopped, onPart }: RoundAllInput) => {
    const all = relaxed.starts.length
    const now = parts.map(
      (part, p) => rounded[p] ?? ofPart(part, margins, { model, solution: relaxed, free: relaxed }),
    )
    const taken = noneTaken()
    for (const part of now) taken.add(part.taken)
    for (const [p, part] of parts.entries()) {
      const own = ofOrders(part, margins)
      const last = rounded[p]
      const moved = last ? movedOrders(last.margins, own) : []
      if (last && moved.length === 0) {
        onPart?.(last)
        continue
      }
      taken.add(now[p]!.taken, -1)
      const room = besideTheRest(
        part.season,
        taken.andLittleMore(),
        now.flatMap(({ starts }, other) => (other === p ? [] : starts)),
      )
      const seen = ofKinds(season, part, relaxed).starts
      const again = last && (await roundAgain(room, { margins: own, most }, last, servedKinds(room, moved)))
      const found =
        again ??
        (await roundTrays(room, {
          margins: own,
          seen,
          kept: last?.starts,
          most,
          proveSeconds: all > MOST_SEARCHED ? 0 : proveSeconds * (seen.length / Math.max(1, all)),
          isStopped,
        }))
      const made = rounding(part, own, found)
      now[p] = again && last ? withLimitsOf(last, made, part, moved) : made
      taken.add(made.taken)
      onPart?.(made)
    }
    return now
  }

  return {
    async round(input) {
      const isFirst = rounded.every(each => each === undefined)
      const now =
        isFirst && relaxed.starts.length <= MOST_TOGETHER ? await allTogether(input) : await partByPart(input)
      rounded = now
      return {
        starts: now.flatMap(({ starts }) => starts),
        bought: now.flatMap(({ bought }) => bought),
        deliveries: now.flatMap(({ deliveries }) => deliveries),
        roundedOff: byOrder(parts, now, season.orders.length),
      }
    },
  }
}

interface Part {
  readonly isOwn: (kind: number) => boolean
  /** Indices of its orders in the whole season. */
  readonly orders: readonly number[]
  readonly season: Season
}

interface Rounded extends Trays {
  readonly margins: Margins
  /** By order, what does not come in time though trays need not be whole. */
  readonly lacking: Float64Array
  readonly taken: Taken
}

function partOf(season: Season, kinds: readonly number[]): Part {
  const own = new Set(kinds)
  const isOwn = (kind: number) => own.has(kind)
  return {
    isOwn,
    orders: season.orders.flatMap(({ kinds: accepted }, o) => (own.has(accepted[0]!.kind) ? [o] : [])),
    // Batches of other kinds stand and are cared for as before.
    season: { ...partOfSeason(season, isOwn), batches: season.batches },
  }
}

/** A part rounded by itself, its orders by their place in the whole season. */
const rounding = ({ orders }: Part, margins: Margins, { model, solution, free }: Rounding): Rounded => ({
  margins,
  starts: solution.starts,
  bought: boughtWhole(solution.bought),
  lacking: lackingIn(margins, free),
  roundedOff: roundedOff(margins, solution, free),
  deliveries: free.deliveries.map(delivery => ({ ...delivery, order: orders[delivery.order]! })),
  taken: takenBy(model, solution.columnValue),
})

/** What a part begins, buys, delivers and takes in a solution of the whole season. */
function ofPart(part: Part, margins: Margins, { model, solution, free }: Rounding): Rounded {
  const { season } = model
  const isOwn = (column: { readonly way: number } | { readonly kind: number }) =>
    part.isOwn('way' in column ? season.ways[column.way]!.kind : column.kind)
  const lacking = lackingIn(margins, free)
  const off = roundedOff(margins, solution, free)
  const own = new Float64Array(solution.columnValue.length)
  for (const list of [model.starts, model.holds])
    for (const each of list) if (isOwn(each)) own[each.column] = solution.columnValue[each.column]!
  for (const start of model.wholeStarts)
    if (isOwn(start)) own[start.begun] = solution.columnValue[start.begun]!
  return {
    ...ofKinds(season, part, solution),
    deliveries: free.deliveries.filter(({ kind }) => part.isOwn(kind)),
    lacking: Float64Array.from(part.orders, o => lacking[o]!),
    roundedOff: Float64Array.from(part.orders, o => off[o]!),
    margins: ofOrders(part, margins),
    taken: takenBy(model, own),
  }
}

function roundedOff(margins: Margins, whole: Solution, free: Solution): Float64Array {
  const lacking = lackingIn(margins, free)
  return lackingIn(margins, whole).map((number, o) => Math.max(0, number - lacking[o]!))
}

function byOrder(parts: readonly Part[], rounded: readonly Rounded[], orders: number): Float64Array {
  const off = new Float64Array(orders)
  parts.forEach((part, p) => {
    part.orders.forEach((order, o) => {
      off[order] = rounded[p]!.roundedOff[o]!
    })
  })
  return off
}

const ofKinds = (
  { ways }: Season,
  { isOwn }: Part,
  { starts, bought }: Pick<Trays, 'starts' | 'bought'>,
) => ({
  starts: starts.filter(({ way }) => isOwn(ways[way]!.kind)),
  bought: boughtWhole(bought.filter(({ kind }) => isOwn(kind))),
})

const takenBy = ({ capacities }: SeasonModel, columnValue: Float64Array): Taken => {
  const taken = capacities.map(capacity => capacity.taken(columnValue))
  return { area: taken.flatMap(({ area }) => area), labour: taken.flatMap(({ labour }) => labour) }
}

/** What several parts take, added up. */
function noneTaken() {
  const area = new Map<number, Float64Array>()
  const labour = new Map<Taken['labour'][number]['skill'], Float64Array>()
  const addTo = <Key>(sums: Map<Key, Float64Array>, key: Key, more: Float64Array, times: number) => {
    const sum = sums.get(key) ?? new Float64Array(more.length)
    sums.set(key, sum)
    more.forEach((each, week) => {
      sum[week]! += times * each
    })
  }
  return {
    add(taken: Taken, times = 1) {
      for (const { place, squareMetres } of taken.area) addTo(area, place, squareMetres, times)
      for (const { skill, minutes } of taken.labour) addTo(labour, skill, minutes, times)
    },
    andLittleMore: (): Taken => ({
      area: [...area].map(([place, sum]) => ({ place, squareMetres: sum.map(each => each + LEFT) })),
      labour: [...labour].map(([skill, sum]) => ({ skill, minutes: sum.map(each => each + LEFT) })),
    }),
  }
}

const ofOrders = ({ orders }: Part, { plannedNumber, plannedDueWeek }: Margins): Margins => ({
  plannedNumber: Float64Array.from(orders, o => plannedNumber[o]!),
  plannedDueWeek: Int32Array.from(orders, o => plannedDueWeek[o]!),
})

/** Orders planned otherwise than before. */
const movedOrders = (before: Margins, { plannedNumber, plannedDueWeek }: Margins): readonly number[] =>
  [...plannedNumber.keys()].filter(
    o => plannedNumber[o] !== before.plannedNumber[o] || plannedDueWeek[o] !== before.plannedDueWeek[o],
  )

/** The kinds that serve some orders: rootstocks serve all. */
function servedKinds({ orders, kinds }: Season, some: readonly number[]): (kind: number) => boolean {
  const own = new Set(some.flatMap(o => orders[o]!.kinds.map(({ kind }) => kind)))
  return kind => own.has(kind) || kinds[kind]!.isRootstock
}

/** A kind that kept its trays lacks what was rounded down, which is no limit of the nursery: what is shows in the round before. */
function withLimitsOf(last: Rounded, now: Rounded, { orders }: Part, moved: readonly number[]): Rounded {
  const isMoved = new Set(moved.map(o => orders[o]!))
  const ofMoved = (now: Float64Array, last: Float64Array) =>
    now.map((number, o) => (isMoved.has(orders[o]!) ? number : last[o]!))
  return {
    ...now,
    lacking: ofMoved(now.lacking, last.lacking),
    roundedOff: ofMoved(now.roundedOff, last.roundedOff),
    deliveries: [
      ...last.deliveries.filter(({ order }) => !isMoved.has(order)),
      ...now.deliveries.filter(({ order }) => isMoved.has(order)),
    ],
  }
}
