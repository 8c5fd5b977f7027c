import { dayNumber } from '../../science/index.ts'
import type { EntryId } from '../../trade/index.ts'
import type { Nursery, Origin } from '../state.ts'

/** A thing that trees come from or become. */
export interface Ref {
  readonly what: 'mother' | 'lot' | 'batch' | 'bought'
  /** Its id; the supplier's name for what was bought. */
  readonly id: string
}

/** So many went from one into the other on a day. */
export interface Link {
  readonly from: Ref
  readonly to: Ref
  readonly number: number
  readonly on: string
  readonly as: Origin['as']
  readonly entry: EntryId
}

/** Everything came to it before its first day, or was in it from that day on. */
export const fromBirth = -1_000_000_000

/** All links of a nursery, with those out of and into each node side by side. */
export interface Graph {
  readonly refs: readonly Ref[]
  readonly links: readonly Link[]
  readonly nodeOf: (ref: Ref) => number | undefined
  readonly source: Int32Array
  readonly target: Int32Array
  /** Day number of each link: never before the first day of the node it comes from, whatever an entry says. */
  readonly day: Int32Array
  /** 1 where it was in every plant of the target from the first day. */
  readonly atBirth: Uint8Array
  /** Links out of node n: `out[outStart[n]]` up to `outStart[n + 1]`. */
  readonly outStart: Int32Array
  readonly out: Int32Array
  readonly intoStart: Int32Array
  readonly into: Int32Array
}

const keyOf = ({ what, id }: Ref) => `${what} ${id}`

export function graphOf(nursery: Pick<Nursery, 'batches' | 'lots' | 'mothers'>): Graph {
  const refs: Ref[] = []
  const nodes = new Map<string, number>()
  const born: number[] = []
  const node = (ref: Ref, day = fromBirth): number => {
    const key = keyOf(ref)
    let at = nodes.get(key)
    if (at === undefined) {
      at = refs.length
      nodes.set(key, at)
      refs.push(ref)
      born.push(day)
    } else if (day !== fromBirth) born[at] = day
    return at
  }
  const days = new Map<string, number>()
  const dayOf = (on: string): number => {
    let day = days.get(on)
    if (day === undefined) {
      day = dayNumber(on)
      days.set(on, day)
    }
    return day
  }
  for (const id of nursery.mothers.keys()) node({ what: 'mother', id })
  for (const { id, on } of nursery.lots.values()) node({ what: 'lot', id }, dayOf(on))
  for (const { id, startedOn } of nursery.batches.values()) node({ what: 'batch', id }, dayOf(startedOn))

  const links: Link[] = []
  const source: number[] = []
  const target: number[] = []
  const atBirth: number[] = []
  const add = (from: Ref, to: Ref, rest: Omit<Link, 'from' | 'to'>, birth: boolean) => {
    source.push(node(from))
    target.push(node(to))
    links.push({ from, to, ...rest })
    atBirth.push(birth ? 1 : 0)
  }
  for (const mother of nursery.mothers.values()) {
    for (const { lot, on, material, number, entry } of mother.given) {
      if (lot === null || nursery.lots.get(lot)?.mother !== mother.mother.id) continue
      add(
        { what: 'mother', id: mother.mother.id },
        { what: 'lot', id: lot },
        { number, on, as: material, entry },
        true,
      )
    }
  }
  for (const batch of nursery.batches.values()) {
    const to: Ref = { what: 'batch', id: batch.id }
    for (const { from, id, entry, on, as, number, atBirth: birth } of batch.origins) {
      add({ what: from, id }, to, { number, on, as, entry }, birth)
    }
  }
  const day = Int32Array.from(links, (link, i) => Math.max(dayOf(link.on), born[source[i]!]!))
  const [outStart, out] = bundle(source, refs.length)
  const [intoStart, into] = bundle(target, refs.length)
  return {
    refs,
    links,
    nodeOf: ref => nodes.get(keyOf(ref)),
    source: Int32Array.from(source),
    target: Int32Array.from(target),
    day,
    atBirth: Uint8Array.from(atBirth),
    outStart,
    out,
    intoStart,
    into,
  }
}

/** Link numbers sorted by one of their ends, and where each node's begin. */
function bundle(ends: readonly number[], nodes: number): [Int32Array, Int32Array] {
  const start = new Int32Array(nodes + 1)
  for (const end of ends) start[end + 1]! += 1
  for (let n = 0; n < nodes; n++) start[n + 1]! += start[n]!
  const next = start.slice()
  const sorted = new Int32Array(ends.length)
  for (const [link, end] of ends.entries()) sorted[next[end]!++] = link
  return [start, sorted]
}
