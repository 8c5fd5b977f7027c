import type { CultivarId, KindId, Licence } from '../trade/index.ts'
import type { Nursery } from './state.ts'

/** One calendar year under a licence. */
export interface LicenceYear {
  readonly year: number
  /** Trees begun: what a yearly number allows or forbids, and what the plan counts. */
  readonly begun: number
  /** Trees sent out, less those that came back. */
  readonly sent: number
  /** `sent` times the fee for each tree. Whether the contract counts trees sent or trees begun is for its reader. */
  readonly due: number
}

export interface LicenceTally {
  readonly cultivar: CultivarId
  readonly licence: Licence
  /** Oldest first; the year asked about is always there. */
  readonly years: readonly LicenceYear[]
  /** How many may still be begun in the year asked about; null: no yearly number is set. */
  readonly left: number | null
  /** Alive and here. */
  readonly alive: number
  /** The licence ended before the day asked about. */
  readonly isOver: boolean
}

/**
 * Trees made of a protected cultivar, and what is due for them, by calendar year. A tree counts for every licensed
 * cultivar on it, its interstem's too. A batch split off is counted with the one that it was begun
 * in, and a tree worked over in the year in which that was done.
 */
export function licenceTally(nursery: Nursery, cultivar: CultivarId, today: string): LicenceTally | null {
  const licence = nursery.cultivars.get(cultivar)?.licence
  if (!licence) return null
  const carries = new Set<KindId>()
  for (const kind of [...nursery.kinds.values(), ...nursery.former.kinds.values()])
    if (kind.cultivars.includes(cultivar) || kind.interstem === cultivar) carries.add(kind.id)
  const thisYear = Number(today.slice(0, 4))
  const years = new Map<number, { begun: number; sent: number }>([[thisYear, { begun: 0, sent: 0 }]])
  const yearOf = (on: string) => {
    const year = Number(on.slice(0, 4))
    let sums = years.get(year)
    if (!sums) {
      sums = { begun: 0, sent: 0 }
      years.set(year, sums)
    }
    return sums
  }
  let alive = 0
  for (const batch of nursery.batches.values()) {
    const began = batch.reworks[0]?.was ?? batch.kind
    if (batch.splitFrom === null && carries.has(began)) yearOf(batch.startedOn).begun += batch.number
    for (const { on, number, kind } of batch.reworks) if (carries.has(kind)) yearOf(on).begun += number
    if (!carries.has(batch.kind)) continue
    for (const { on, number } of batch.dispatched) yearOf(on).sent += number
    for (const { on, number } of batch.cameBack) yearOf(on).sent -= number
    alive += batch.finished
    for (const { number } of batch.portions) alive += number
  }
  return {
    cultivar,
    licence,
    years: [...years]
      .sort(([a], [b]) => a - b)
      .map(([year, { begun, sent }]) => ({ year, begun, sent, due: sent * licence.feePerTree })),
    left: licence.treesPerYear === null ? null : licence.treesPerYear - years.get(thisYear)!.begun,
    alive,
    isOver: licence.until !== null && licence.until < today,
  }
}
