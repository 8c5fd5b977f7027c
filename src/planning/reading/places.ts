import type { HeldThings, Nursery } from '../../record/index.ts'
import type { PlaceKind } from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import type { SeasonPlace } from '../season.ts'
import { daysShared, type Weeks } from './weeks.ts'

/**
 * Benches by kind of place with their area by week. A bench is without its closed part in every week that the closure
 * touches, and without any area while it is on hold.
 */
export function readPlaces(nursery: Nursery, weeks: Weeks, held: HeldThings): SeasonPlace[] {
  const byPlace = grouped(nursery.benches.values(), bench => bench.place)
  return [...byPlace].map(([place, benches]) => {
    const read = benches.map(bench => ({
      id: bench.id,
      squareMetres: Float64Array.from({ length: weeks.count }, (_, week) => {
        if (held.benches.has(bench.id)) return 0
        const closed = bench.closed.reduce(
          (sum, closure) => sum + (daysShared(weeks, week, closure) > 0 ? closure.areaSquareMetres : 0),
          0,
        )
        return Math.max(0, bench.areaSquareMetres - closed)
      }),
    }))
    return {
      place: place as PlaceKind,
      benches: read,
      squareMetres: Float64Array.from({ length: weeks.count }, (_, week) =>
        read.reduce((sum, bench) => sum + bench.squareMetres[week]!, 0),
      ),
      extraPricePerSquareMetreWeek: nursery.prices.extraSquareMetreWeek[place] ?? null,
      pricePerSquareMetreWeek: nursery.prices.squareMetreWeek,
    }
  })
}
