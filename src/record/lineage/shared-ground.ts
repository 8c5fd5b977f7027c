import { dayNumber } from '../../science/index.ts'
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
interface Span {
  readonly from: number
  readonly to: number
  readonly fromText: Day
  readonly toText: Day | null
}

/** Stands for a stay that has not ended. */
const open = 1_000_000_000

/** All stays on one bench, side by side. */
interface BenchStays {
  readonly batch: number[]
  readonly span: Span[]
}

interface Ground {
  readonly ids: readonly BatchId[]
  readonly placeOf: ReadonlyMap<string, number>
  readonly benches: ReadonlyMap<BenchId, BenchStays>
  readonly blades: ReadonlyMap<string, readonly SharedBlade[]>
}

const known = new WeakMap<Nursery['batches'], Ground>()

/**
 * The wider circle about some batches and mothers: what shared a bench or a day of one blade with any of them,
 * without being one of them. It is no lineage, and is shown apart from it.
 */
export function sharedGround(nursery: Asked, refs: readonly Ref[]): SharedGround {
  const ground = groundOf(nursery)
  const inside = new Set(refs.map(({ what, id }) => `${what} ${id}`))
  const insideBatch = new Uint8Array(ground.ids.length)
  const spans = new Map<BenchId, Span[]>()
  const bladeKeys = new Set<string>()
  for (const ref of refs) {
    for (const blade of bladesOf(nursery, ref)) bladeKeys.add(bladeKey(blade))
    const place = ref.what === 'batch' ? ground.placeOf.get(ref.id) : undefined
    if (place === undefined) continue
    insideBatch[place] = 1
    for (const { bench, from, to } of nursery.batches.get(ref.id as BatchId)!.stays) {
      const span = spanOf(from, to)
      const list = spans.get(bench)
      if (list) list.push(span)
      else spans.set(bench, [span])
    }
  }
  const benches: SharedBench[] = []
  for (const [bench, list] of spans) {
    const stays = ground.benches.get(bench)!
    for (const asked of merge(list)) {
      for (let i = 0; i < stays.span.length; i++) {
        const stay = stays.span[i]!
        const place = stays.batch[i]!
        if (insideBatch[place] || stay.from > asked.to || stay.to < asked.from) continue
        benches.push({
          batch: ground.ids[place]!,
          bench,
          from: stay.from > asked.from ? stay.fromText : asked.fromText,
          to: stay.to < asked.to ? stay.toText : asked.toText,
        })
      }
    }
  }
  const blades = [...bladeKeys]
    .flatMap(key => ground.blades.get(key) ?? [])
    .filter(({ ref }) => !inside.has(`${ref.what} ${ref.id}`))
  return { benches, blades }
}

/** Indexed at the first question. */
function groundOf(nursery: Asked): Ground {
  const before = known.get(nursery.batches)
  if (before) return before
  const ids = [...nursery.batches.keys()]
  const benches = new Map<BenchId, BenchStays>()
  const blades = new Map<string, SharedBlade[]>()
  const cut = (ref: Ref) => {
    for (const { person, on } of bladesOf(nursery, ref)) {
      const key = bladeKey({ person, on })
      const list = blades.get(key)
      if (list) list.push({ ref, person, on })
      else blades.set(key, [{ ref, person, on }])
    }
  }
  for (const [place, id] of ids.entries()) {
    for (const { bench, from, to } of nursery.batches.get(id)!.stays) {
      let stays = benches.get(bench)
      if (!stays) {
        stays = { batch: [], span: [] }
        benches.set(bench, stays)
      }
      stays.batch.push(place)
      stays.span.push(spanOf(from, to))
    }
    cut({ what: 'batch', id })
  }
  for (const id of nursery.mothers.keys()) cut({ what: 'mother', id })
  const ground = { ids, placeOf: new Map(ids.map((id, place) => [id, place])), benches, blades }
  known.set(nursery.batches, ground)
  return ground
}

const bladeKey = (blade: { readonly person: PersonId; readonly on: Day }) => `${blade.on} ${blade.person}`

const spanOf = (from: Day, to: Day | null): Span => ({
  from: dayNumber(from),
  to: to === null ? open : dayNumber(to),
  fromText: from,
  toText: to,
})

/** Days on which a blade went through a batch or a mother, each once. */
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
  for (const span of [...spans].sort((a, b) => a.from - b.from)) {
    const last = merged.at(-1)
    if (!last || last.to < span.from) merged.push(span)
    else if (span.to > last.to) merged[merged.length - 1] = { ...last, to: span.to, toText: span.toText }
  }
  return merged
}
