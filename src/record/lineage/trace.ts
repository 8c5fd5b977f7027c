import { dayNumber, dayText } from '../../science/index.ts'
import type { Day } from '../register.ts'
import type { Nursery } from '../state.ts'
import { fromBirth, type Graph, graphOf, type Link, type Ref } from './graph.ts'
import { isSameDescent } from './same-descent.ts'

/** Something that a trace comes upon. */
export interface Reached {
  readonly ref: Ref
  /** Plants, sticks or seeds that came over to it (or went out of it, on the way up), over all its links. */
  readonly number: number
  /** Generations away: the fewest links. */
  readonly steps: number
  /**
   * On the way down, the first day on which it may carry what was asked about; on the way up, the last on which
   * something went from it. Null: from its own beginning.
   */
  readonly day: Day | null
}

/** All that was reached, nearest first, and every link that leads there: enough to draw it. */
export interface Trace {
  readonly reached: readonly Reached[]
  readonly links: readonly Link[]
}

export interface Lineage {
  /**
   * Everything that carries wood or roots from a mother, lot or batch; with `since`, only what left it from that
   * day on. What left a batch before something joined it does not count as carrying it.
   */
  readonly descendants: (of: Ref, since?: Day) => Trace
  /** Everything that a batch, or a lot, comes from. */
  readonly ancestors: (of: Ref) => Trace
}

type Descending = Pick<Nursery, 'batches' | 'lots' | 'mothers'>

/** By batches; of other lots or mother trees, say of a lot told of later, it is another. */
const known = new WeakMap<Nursery['batches'], { readonly of: Descending; readonly lineage: Lineage }>()
/** The last one indexed, for the next nursery is most often of the same descent. */
let last: { readonly of: Descending; readonly lineage: Lineage } | null = null

/** The lineage of a nursery. It is indexed at the first question; later questions take milliseconds. */
export function lineageOf(nursery: Descending): Lineage {
  const before = known.get(nursery.batches)
  const isOfIt = before?.of.lots === nursery.lots && before.of.mothers === nursery.mothers
  let lineage = isOfIt ? before.lineage : undefined
  if (!lineage && last !== null && isSameDescent(last.of, nursery)) lineage = last.lineage
  if (!lineage) {
    const graph = graphOf(nursery)
    lineage = {
      descendants: (of, since) => traceDown(graph, of, since === undefined ? fromBirth : dayNumber(since)),
      ancestors: of => traceUp(graph, of),
    }
  }
  const { batches, lots, mothers } = nursery
  last = { of: { batches, lots, mothers }, lineage }
  known.set(batches, last)
  return lineage
}

const nothing: Trace = { reached: [], links: [] }

/** Finds for each node the first day on which it may carry what comes from the root; links before that day do not. */
function traceDown(graph: Graph, of: Ref, since: number): Trace {
  const root = graph.nodeOf(of)
  if (root === undefined) return nothing
  const { outStart, out, target, day, atBirth } = graph
  const first = new Map<number, number>([[root, since]])
  const queue = [root]
  for (let node = queue.pop(); node !== undefined; node = queue.pop()) {
    const carries = first.get(node)!
    for (let i = outStart[node]!; i < outStart[node + 1]!; i++) {
      const link = out[i]!
      if (day[link]! < carries) continue
      const child = target[link]!
      const arrives = atBirth[link] ? fromBirth : day[link]!
      const before = first.get(child)
      if (before !== undefined && before <= arrives) continue
      first.set(child, arrives)
      queue.push(child)
    }
  }
  return gather(graph, root, first, {
    start: outStart,
    links: out,
    end: target,
    goes: (link, at) => day[link]! >= at,
  })
}

/** Finds for each node the last day on which something went from it towards the root; links into it after that do not. */
function traceUp(graph: Graph, of: Ref): Trace {
  const root = graph.nodeOf(of)
  if (root === undefined) return nothing
  const { intoStart, into, source, day, atBirth } = graph
  const last = new Map<number, number>([[root, Number.POSITIVE_INFINITY]])
  const goes = (link: number, at: number) => atBirth[link] === 1 || day[link]! <= at
  const queue = [root]
  for (let node = queue.pop(); node !== undefined; node = queue.pop()) {
    const leaves = last.get(node)!
    for (let i = intoStart[node]!; i < intoStart[node + 1]!; i++) {
      const link = into[i]!
      if (!goes(link, leaves)) continue
      const parent = source[link]!
      const before = last.get(parent)
      if (before !== undefined && before >= day[link]!) continue
      last.set(parent, day[link]!)
      queue.push(parent)
    }
  }
  return gather(graph, root, last, { start: intoStart, links: into, end: source, goes })
}

interface Way {
  readonly start: Int32Array
  readonly links: Int32Array
  readonly end: Int32Array
  readonly goes: (link: number, at: number) => boolean
}

/** Walks the links that count once more, generation by generation. */
function gather(graph: Graph, root: number, times: ReadonlyMap<number, number>, way: Way): Trace {
  const found = new Map<number, { number: number; readonly steps: number }>()
  const links: Link[] = []
  let generation = [root]
  const seen = new Set(generation)
  for (let steps = 1; generation.length > 0; steps++) {
    const next: number[] = []
    for (const node of generation) {
      for (let i = way.start[node]!; i < way.start[node + 1]!; i++) {
        const link = way.links[i]!
        if (!way.goes(link, times.get(node)!)) continue
        links.push(graph.links[link]!)
        const end = way.end[link]!
        if (!seen.has(end)) {
          seen.add(end)
          next.push(end)
          found.set(end, { number: 0, steps })
        }
        const reached = found.get(end)
        if (reached) reached.number += graph.links[link]!.number
      }
    }
    generation = next
  }
  return {
    reached: [...found].map(([node, { number, steps }]) => {
      const day = times.get(node)!
      return { ref: graph.refs[node]!, number, steps, day: day === fromBirth ? null : dayText(day) }
    }),
    links,
  }
}
