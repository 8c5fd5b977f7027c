import type { Nursery } from '../../record/index.ts'
import type { CultivarId, Kind, KindId } from '../../trade/index.ts'
import type { SeasonLicence } from '../season.ts'
import type { Weeks } from './weeks.ts'
import { yearsOf } from './weeks.ts'

export const cultivarsOf = (kind: Kind): CultivarId[] => [
  ...kind.cultivars,
  ...(kind.interstem ? [kind.interstem] : []),
]

/** What may still be begun of each protected cultivar, by calendar year. */
export function readLicences(
  nursery: Nursery,
  weeks: Weeks,
  kindIndex: ReadonlyMap<KindId, number>,
): SeasonLicence[] {
  const licences: SeasonLicence[] = []
  for (const { id, name, licence } of nursery.cultivars.values()) {
    if (licence?.treesPerYear == null) continue
    const kinds = [...nursery.kinds.values()].filter(kind => cultivarsOf(kind).includes(id))
    const most = licence.treesPerYear
    licences.push({
      name,
      kinds: kinds.map(kind => kindIndex.get(kind.id)!),
      perYear: yearsOf(weeks).map(({ year, fromWeek, toWeek }) => {
        const begun = [...nursery.batches.values()].reduce(
          (sum, batch) =>
            sum +
            (batch.splitFrom === null &&
            batch.startedOn.startsWith(`${year}-`) &&
            kinds.some(kind => kind.id === batch.kind)
              ? batch.number
              : 0),
          0,
        )
        return { fromWeek, toWeek, most: Math.max(0, most - begun) }
      }),
    })
  }
  return licences
}

/** The last day on which a kind may be begun under the licences of its cultivars; null: no end. */
export function licensedUntil(nursery: Nursery, kind: Kind): string | null {
  const ends = cultivarsOf(kind).flatMap(id => nursery.cultivars.get(id)?.licence?.until ?? [])
  return ends.length === 0 ? null : ends.sort()[0]!
}
