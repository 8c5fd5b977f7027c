import type { BatchId, BenchId, MotherId, PersonId } from '../../trade/index.ts'
import type { Day } from '../register.ts'
import type { Nursery } from '../state.ts'
import type { Ref } from './graph.ts'

/** A batch that stood on a bench at the same time as one of those asked about. */
export interface SharedBench {
  readonly batch: BatchId
  readonly bench: BenchId
  readonly from: Day
  /** Null: they stand there together still. */
  readonly to: Day | null
}

/** A batch or mother whose plants were cut by the same person on the same day, and so perhaps by the same blade. */
export interface SharedBlade {
  readonly ref: Ref
  readonly person: PersonId
  readonly on: Day
}

export interface SharedGround {
  readonly benches: readonly SharedBench[]
  readonly blades: readonly SharedBlade[]
}

type Asked = Pick<Nursery, 'batches' | 'mothers'>
type Span = { readonly from: Day; readonly to: Day | null }

const keyOf = ({ what, id }: Ref) => `${what} ${id}`
const bladeKey = (blade: { readonly person: PersonId; readonly on: Day }) => `${blade.on} ${blade.person}`

/**
 * The wider circle about some batches and mothers: what shared a bench or a day of one blade with any of them,
 * without being one of them. It is no lineage, and is shown apart from it.
 */
export function sharedGround(nursery: Asked, refs: readonly Ref[]): SharedGround {
  const inside = new Set(refs.map(keyOf))
  const stays = new Map<BenchId, Span[]>()
  const blades = new Set<string>()
  for (const ref of refs) {
    for (const blade of bladesOf(nursery, ref)) blades.add(bladeKey(blade))
    if (ref.what !== 'batch') continue
    for (const { bench, from, to } of nursery.batches.get(ref.id as BatchId)?.stays ?? []) {
      stays.set(bench, [...(stays.get(bench) ?? []), { from, to }])
    }
  }
  for (const [bench, spans] of stays) stays.set(bench, merge(spans))

  const benches: SharedBench[] = []
  const shared: SharedBlade[] = []
  for (const batch of nursery.batches.values()) {
    const ref: Ref = { what: 'batch', id: batch.id }
    if (inside.has(keyOf(ref))) continue
    for (const stay of batch.stays) {
      for (const span of stays.get(stay.bench) ?? []) {
        const overlap = overlapOf(stay, span)
        if (overlap) benches.push({ batch: batch.id, bench: stay.bench, ...overlap })
      }
    }
    for (const { person, on } of batch.blades) {
      if (blades.has(bladeKey({ person, on }))) shared.push({ ref, person, on })
    }
  }
  for (const id of nursery.mothers.keys()) {
    const ref: Ref = { what: 'mother', id }
    if (inside.has(keyOf(ref))) continue
    for (const blade of bladesOf(nursery, ref))
      if (blades.has(bladeKey(blade))) shared.push({ ref, ...blade })
  }
  return { benches, blades: shared }
}

/** Days on which a blade went through a batch or a mother. */
function* bladesOf(nursery: Asked, ref: Ref): Generator<{ readonly person: PersonId; readonly on: Day }> {
  if (ref.what === 'batch') yield* nursery.batches.get(ref.id as BatchId)?.blades ?? []
  if (ref.what !== 'mother') return
  const seen = new Set<string>()
  for (const { by, on, batch } of nursery.mothers.get(ref.id as MotherId)?.given ?? []) {
    const people = batch === null ? (by === null ? [] : [by]) : (nursery.batches.get(batch)?.workedBy ?? [])
    for (const person of people) {
      const key = bladeKey({ person, on })
      if (!seen.has(key)) yield { person, on }
      seen.add(key)
    }
  }
}

/** Spans that touch become one. */
function merge(spans: readonly Span[]): Span[] {
  const merged: Span[] = []
  for (const span of [...spans].sort((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0))) {
    const last = merged.at(-1)
    if (!last || (last.to !== null && last.to < span.from)) merged.push(span)
    else if (last.to !== null && (span.to === null || span.to > last.to))
      merged[merged.length - 1] = { ...last, to: span.to }
  }
  return merged
}

/** The time in which both spans run. Days are text, which compares as they do. */
function overlapOf(a: Span, b: Span): Span | null {
  const later = a.from > b.from ? a : b
  const ends = [a.to, b.to].filter(to => to !== null).sort()
  const to = ends[0] ?? null
  return to !== null && to < later.from ? null : { from: later.from, to }
}
