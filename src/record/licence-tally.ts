import type { CultivarId, EntryId, KindId, Licence } from '../trade/index.ts'
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
  /** The entries that `begun` and `sent` add up from. */
  readonly begunBy: readonly EntryId[]
  readonly sentBy: readonly EntryId[]
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
  const noneYet = () => ({ begun: 0, sent: 0, begunBy: [] as EntryId[], sentBy: [] as EntryId[] })
  const years = new Map([[thisYear, noneYet()]])
  const yearOf = (on: string) => {
    const year = Number(on.slice(0, 4))
    let sums = years.get(year)
    if (!sums) {
      sums = noneYet()
      years.set(year, sums)
    }
    return sums
  }
  const begin = (on: string, number: number, entry: EntryId): void => {
    const year = yearOf(on)
    year.begun += number
    year.begunBy.push(entry)
  }
  const send = (on: string, number: number, entry: EntryId): void => {
    const year = yearOf(on)
    year.sent += number
    year.sentBy.push(entry)
  }
  let alive = 0
  for (const batch of nursery.batches.values()) {
    const began = batch.reworks[0]?.was ?? batch.kind
    if (batch.splitFrom === null && carries.has(began)) begin(batch.startedOn, batch.number, batch.begunBy)
    for (const { on, number, kind, entry } of batch.reworks) if (carries.has(kind)) begin(on, number, entry)
    if (!carries.has(batch.kind)) continue
    for (const { on, number, entry } of batch.dispatched) send(on, number, entry)
    for (const { on, number, entry } of batch.cameBack) send(on, -number, entry)
    alive += batch.finished
    for (const { number } of batch.portions) alive += number
  }
  return {
    cultivar,
    licence,
    years: [...years]
      .sort(([a], [b]) => a - b)
      .map(([year, sums]) => ({ year, ...sums, due: sums.sent * licence.feePerTree })),
    left: licence.treesPerYear === null ? null : licence.treesPerYear - years.get(thisYear)!.begun,
    alive,
    isOver: licence.until !== null && licence.until < today,
  }
}
