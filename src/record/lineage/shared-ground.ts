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

/** All stays on one bench, side by side, in the order of their first days. */
interface BenchStays {
  readonly batch: Int32Array
  readonly from: Int32Array
  readonly to: Int32Array
  /** The latest last day of a stay and all before it: it rises, so what ended too early is skipped by halving. */
  readonly latest: Int32Array
  /** The whole stay, as it is told where all of it was shared. */
  readonly line: readonly SharedBench[]
}

/** What was cut on one day by one person; `place` is that of the batch, and -1 for a mother. */
interface BladeDay {
  readonly place: number[]
  readonly lines: SharedBlade[]
}

interface Ground {
  readonly ids: readonly BatchId[]
  readonly placeOf: ReadonlyMap<string, number>
  /** By place of the batch. */
  readonly stays: readonly (readonly { readonly bench: BenchId; readonly span: Span }[])[]
  readonly days: readonly (readonly BladeDay[])[]
  readonly benches: ReadonlyMap<BenchId, BenchStays>
  readonly blades: ReadonlyMap<string, BladeDay>
}

const known = new WeakMap<Nursery['batches'], Ground>()

/**
 * The wider circle about some batches and mothers: what shared a bench or a day of one blade with any of them,
 * without being one of them. It is no lineage, and is shown apart from it.
 */
export function sharedGround(nursery: Asked, refs: readonly Ref[]): SharedGround {
  const ground = groundOf(nursery)
  const insideBatch = new Uint8Array(ground.ids.length)
  const insideMothers = new Set<string>()
  const spans = new Map<BenchId, Span[]>()
  const days = new Set<BladeDay>()
  for (const ref of refs) {
    const place = ref.what === 'batch' ? ground.placeOf.get(ref.id) : undefined
    if (place === undefined) {
      if (ref.what === 'mother') insideMothers.add(ref.id)
      for (const blade of bladesOf(nursery, ref)) days.add(ground.blades.get(bladeKey(blade))!)
      continue
    }
    insideBatch[place] = 1
    for (const day of ground.days[place]!) days.add(day)
    for (const { bench, span } of ground.stays[place]!) {
      const list = spans.get(bench)
      if (list) list.push(span)
      else spans.set(bench, [span])
    }
  }
  const benches: SharedBench[] = []
  for (const [bench, list] of spans) {
    const stays = ground.benches.get(bench)!
    for (const asked of merge(list)) {
      for (let i = firstAtLeast(stays.latest, asked.from); i < stays.line.length; i++) {
        if (stays.from[i]! > asked.to) break
        const place = stays.batch[i]!
        if (insideBatch[place] || stays.to[i]! < asked.from) continue
        const stay = stays.line[i]!
        const isFirst = stays.from[i]! < asked.from
        const isLast = stays.to[i]! > asked.to
        if (!isFirst && !isLast) benches.push(stay)
        else
          benches.push({
            ...stay,
            from: isFirst ? asked.fromText : stay.from,
            to: isLast ? asked.toText : stay.to,
          })
      }
    }
  }
  const blades: SharedBlade[] = []
  for (const { place, lines } of days) {
    for (let i = 0; i < lines.length; i++) {
      const line = lines[i]!
      const isInside = place[i]! < 0 ? insideMothers.has(line.ref.id) : insideBatch[place[i]!] === 1
      if (!isInside) blades.push(line)
    }
  }
  return { benches, blades }
}

/** Indexed at the first question. */
function groundOf(nursery: Asked): Ground {
  const before = known.get(nursery.batches)
  if (before) return before
  const ids = [...nursery.batches.keys()]
  const found = new Map<BenchId, { readonly place: number; readonly span: Span }[]>()
  const blades = new Map<string, BladeDay>()
  const cut = (ref: Ref, place: number): BladeDay[] =>
    [...bladesOf(nursery, ref)].map(({ person, on }) => {
      const key = bladeKey({ person, on })
      const day = blades.get(key) ?? { place: [], lines: [] }
      blades.set(key, day)
      day.place.push(place)
      day.lines.push({ ref, person, on })
      return day
    })
  const days: BladeDay[][] = []
  const stays = ids.map((id, place) => {
    days.push(cut({ what: 'batch', id }, place))
    return nursery.batches.get(id)!.stays.map(({ bench, from, to }) => {
      const span = spanOf(from, to)
      const list = found.get(bench)
      if (list) list.push({ place, span })
      else found.set(bench, [{ place, span }])
      return { bench, span }
    })
  })
  for (const id of nursery.mothers.keys()) cut({ what: 'mother', id }, -1)
  const benches = new Map([...found].map(([bench, list]) => [bench, sideBySide(bench, ids, list)]))
  const placeOf = new Map(ids.map((id, place) => [id, place]))
  const ground = { ids, placeOf, stays, days, benches, blades }
  known.set(nursery.batches, ground)
  return ground
}

function sideBySide(
  bench: BenchId,
  ids: readonly BatchId[],
  stays: { readonly place: number; readonly span: Span }[],
): BenchStays {
  stays.sort((a, b) => a.span.from - b.span.from)
  const to = Int32Array.from(stays, ({ span }) => span.to)
  const latest = to.slice()
  for (let i = 1; i < latest.length; i++) if (latest[i]! < latest[i - 1]!) latest[i] = latest[i - 1]!
  return {
    batch: Int32Array.from(stays, ({ place }) => place),
    from: Int32Array.from(stays, ({ span }) => span.from),
    to,
    latest,
    line: stays.map(({ place, span: { fromText: from, toText: to } }) => ({
      batch: ids[place]!,
      bench,
      from,
      to,
    })),
  }
}

/** The first place in a rising list whose number is at least so much. */
function firstAtLeast(rising: Int32Array, least: number): number {
  let low = 0
  let high = rising.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (rising[middle]! < least) low = middle + 1
    else high = middle
  }
  return low
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
