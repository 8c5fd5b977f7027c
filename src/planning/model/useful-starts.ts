import { courseOf, readySpan, type Span, survivalOf } from '../rules/season-draft.ts'
import type { Season } from '../season.ts'

/** The weeks in which each kind is of use, and by way and week whether a start then can be of use. */
export interface UsefulStarts {
  readonly spans: readonly (Span | null)[]
  /** `useful[way * weeks + week]`. */
  readonly useful: Uint8Array
  /** By way: no start is ever of use beyond so many. */
  readonly largestStart: Float64Array
}

/**
 * A start is useful when its window is open and something of it is ready, and still usable, in a week in which an
 * order or another useful start may take it. Rootstocks are wanted by grafts that are themselves wanted, so this is
 * repeated until nothing new is wanted (once for each storey of a tree: rootstock, interstem, scion).
 */
export function usefulStarts(season: Season): UsefulStarts {
  const { weeks, kinds, ways, orders } = season
  const spans: (Span | null)[] = kinds.map(() => null)
  const widen = (kind: number, from: number, to: number): boolean => {
    const old = spans[kind]
    if (old && old.from <= from && old.to >= to) return false
    spans[kind] = old ? { from: Math.min(old.from, from), to: Math.max(old.to, to) } : { from, to }
    return true
  }
  for (const order of orders) {
    if (order.number <= 0) continue
    for (const { kind } of order.kinds)
      widen(kind, Math.max(0, order.earliestWeek), Math.min(weeks - 1, order.latestWeek))
  }

  const useful = new Uint8Array(ways.length * weeks)
  for (let storey = 0, more = true; more && storey <= kinds.length; storey++) {
    more = false
    ways.forEach((way, w) => {
      const wanted = spans[way.kind]
      if (!wanted) return
      const usable = kinds[way.kind]!.usableWeeks
      for (let t = 0; t < weeks; t++) {
        if (!way.open[t] || useful[w * weeks + t]) continue
        const course = courseOf(season, w, t)
        const ready = readySpan(course)
        if (t + ready.from > wanted.to || t + ready.to + usable < wanted.from) continue
        useful[w * weeks + t] = 1
        if (!course.rootstock) continue
        const use = t + course.rootstock.offset
        if (use >= weeks) continue
        for (const kind of course.rootstock.kinds) more = widen(kind, use, use) || more
      }
    })
  }
  // What the nursery fixed itself is begun, of use or not, as long as anyone wants the kind.
  for (const { way, week } of season.set ?? []) if (spans[ways[way]!.kind]) useful[way * weeks + week] = 1
  return { spans, useful, largestStart: largestStarts(season, useful) }
}

/** How much more than the trees wanted may be begun for survival, lateness and sureness. */
const ROOM = 4

function largestStarts(season: Season, useful: Uint8Array): Float64Array {
  const { ways, kinds, orders, weeks } = season
  const wanted = new Float64Array(kinds.length)
  for (const order of orders) for (const { kind } of order.kinds) wanted[kind]! += order.number
  const largest = new Float64Array(ways.length)
  const done = new Uint8Array(ways.length)
  const isUseful = (w: number) => useful.subarray(w * weeks, (w + 1) * weeks).includes(1)
  // From the trees that are ordered down to the rootstocks under them.
  for (let storey = 0; storey < 6; storey++) {
    const below = new Float64Array(kinds.length)
    ways.forEach((way, w) => {
      if (wanted[way.kind] === 0 || !isUseful(w)) return
      const survival = Math.max(0.05, ...way.courses.map(survivalOf))
      const most = (ROOM * wanted[way.kind]!) / survival
      if (done[w] && largest[w]! >= most) return
      done[w] = 1
      largest[w] = most
      for (const kind of way.courses[0]?.rootstock?.kinds ?? []) below[kind]! += most
    })
    if (below.every((more, kind) => more <= wanted[kind]!)) break
    below.forEach((more, kind) => {
      wanted[kind] = Math.max(wanted[kind]!, more)
    })
  }
  return largest.map((most, w) => Math.max(most, ways[w]!.smallestBatch, ways[w]!.tray))
}
