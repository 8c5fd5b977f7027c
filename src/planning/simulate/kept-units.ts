import type { Season } from '../season.ts'
import type { Rows, UnitInput, UnitSeasons } from './run-unit.ts'
import type { Run, Runs } from './runs.ts'
import type { Unit } from './units.ts'

/** What is known of a unit: its seasons from `from` on. */
export interface KnownUnit extends UnitSeasons {
  readonly from: number
  readonly to: number
  /** Rootstocks that its grafts got, there or elsewhere, by the key of the run. */
  readonly got: ReadonlyMap<number, Int32Array>
}

/** The first seasons of units, by all that they began from but the rootstocks that were got elsewhere. */
export type KeptUnits = ReadonlyMap<string, KnownUnit>

/**
 * Runs the units of a season, of each only those seasons that are not known from before: where it begins from the same
 * and its grafts got the same rootstocks.
 * @returns what is known of each unit now, and what of it to keep
 */
export function runUnits(
  season: Pick<Season, 'orders'>,
  runs: Runs,
  units: readonly Unit[],
  { from, to, bought }: { readonly from: number; readonly to: number } & Pick<UnitInput, 'bought'>,
  kept: KeptUnits,
  run: (unit: Unit, rows: Rows, got: Map<Run, Int32Array>) => UnitSeasons,
): { readonly known: readonly KnownUnit[]; readonly keep: KeptUnits } {
  const elsewhere = new Map<Run, KnownUnit>()
  const keep = new Map<string, KnownUnit>()
  const known = units.map(unit => {
    const name = said(season, runs, unit, bought)
    const comes = unit.grafts.flatMap(({ run, takesHere }) => {
      const source = takesHere ? undefined : elsewhere.get(run)
      return source ? [{ run, from: source.from, got: source.got.get(run.key)! }] : []
    })
    const before = comes.every(source => source.from === 0) ? kept.get(name) : undefined
    const knownTo = before ? seasonsKnown(before, to, comes) : 0
    if (before && knownTo === to) {
      keep.set(name, before)
      tellOthers(unit, before)
      return before
    }
    const isGoneOn = knownTo >= from
    const rows = { from: isGoneOn ? knownTo : from, count: to - (isGoneOn ? knownTo : from), every: 1 }
    const got = new Map(comes.map(source => [source.run, source.got.subarray(rows.from - source.from)]))
    const more = run(unit, rows, got)
    const all =
      before && isGoneOn && knownTo > 0
        ? goneOn(before, knownTo, more, to, got)
        : { ...more, from: rows.from, to, got: byKey(got) }
    if (all.from === 0) keep.set(name, all)
    tellOthers(unit, all)
    return all
  })
  return { known, keep }

  function tellOthers(unit: Unit, all: KnownUnit) {
    for (const { run, takesHere, comesHere } of unit.grafts)
      if (takesHere && !comesHere) elsewhere.set(run, all)
  }
}

function said(
  season: Pick<Season, 'orders'>,
  { lines, standing }: Runs,
  { lines: own, orders, free, grafts }: Unit,
  bought: UnitInput['bought'],
): string {
  const kinds = new Set(own.map(line => lines[line]!.kind))
  return JSON.stringify([
    orders.map(o => season.orders[o]),
    own.map(line => lines[line]),
    free.map(({ key, number, ownDraw }) => [key, number, ownDraw]),
    grafts.map(({ run, takesHere, comesHere }) => [run.key, run.number, takesHere, comesHere]),
    standing.filter(({ line }) => own.includes(line)).map(({ weeksAgo, number }) => [weeksAgo, number]),
    bought.filter(({ kind }) => kinds.has(kind)),
  ])
}

/** How many of the first seasons are known: those of which each graft got as many rootstocks elsewhere as now. */
function seasonsKnown(
  before: KnownUnit,
  to: number,
  comes: readonly { readonly run: Run; readonly got: Int32Array }[],
): number {
  const most = Math.min(before.to, to)
  for (const { run, got } of comes) {
    const gotBefore = before.got.get(run.key)
    if (gotBefore === got) continue
    for (let s = 0; s < most; s++) if (gotBefore?.[s] !== got[s]) return 0
  }
  return most
}

function goneOn(
  before: KnownUnit,
  known: number,
  more: UnitSeasons,
  to: number,
  got: ReadonlyMap<Run, Int32Array>,
): KnownUnit {
  const all = <A extends Int32Array | Uint8Array>(of: (seasons: UnitSeasons) => readonly A[]) =>
    of(more).map((added, o) => joined(of(before)[o]!, known, added))
  return {
    from: 0,
    to,
    byDue: all(of => of.byDue),
    weeksLate: all(of => of.weeksLate),
    late: all(of => of.late),
    got: new Map(
      [...byKey(got)].map(([key, numbers]) => [key, joined(before.got.get(key)!, known, numbers)]),
    ),
  }
}

const byKey = (got: ReadonlyMap<Run, Int32Array>) =>
  new Map([...got].map(([run, numbers]) => [run.key, numbers]))

function joined<A extends Int32Array | Uint8Array>(before: A, known: number, more: A): A {
  const all = (
    more instanceof Uint8Array ? new Uint8Array(known + more.length) : new Int32Array(known + more.length)
  ) as A
  all.set(before.subarray(0, known))
  all.set(more, known)
  return all
}
