import type { Nursery } from '../../record/index.ts'
import type { BenchId } from '../../trade/index.ts'
import { DAY_OF_START } from '../rates/days-to-ready.ts'
import type { Season } from '../season.ts'
import type { ChosenStart } from './planned.ts'

/**
 * A bench for the first stretch of every start: of those that have room for it the fullest, so that large room stays
 * together; where none has room for all, the emptiest. Null where it begins on no bench.
 */
export function giveBenches(
  nursery: Nursery,
  season: Season,
  starts: readonly ChosenStart[],
): (BenchId | null)[] {
  const room = new Map<BenchId, Float64Array>()
  for (const place of season.places)
    for (const bench of place.benches) room.set(bench.id, bench.squareMetres.slice())
  standing(nursery, season, room)

  return starts.map(({ week, number, course }) => {
    const step = course.steps.find(({ place }) => place !== null)
    if (!step || step !== course.steps[0]) return null
    const area = number * step.squareMetresPerPlant
    const until = Math.min(season.weeks - 1, week + Math.floor((DAY_OF_START + step.medianDays) / 7))
    const free = (bench: BenchId) => {
      let least = Number.POSITIVE_INFINITY
      for (let w = week; w <= until; w++) least = Math.min(least, room.get(bench)![w]!)
      return least
    }
    const benches = season.places[step.place!]!.benches.map(({ id }) => ({ id, free: free(id) }))
    const fitting = benches.filter(bench => bench.free >= area).sort((a, b) => a.free - b.free)
    const best = fitting[0] ?? benches.sort((a, b) => b.free - a.free)[0]
    if (!best) return null
    for (let w = week; w <= until; w++) room.get(best.id)![w]! -= area
    return best.id
  })
}

/** Takes away what stands on each bench now, for as long as its step lasts. */
function standing(nursery: Nursery, season: Season, room: ReadonlyMap<BenchId, Float64Array>): void {
  for (const live of season.batches) {
    const batch = nursery.batches.get(live.id)
    for (const portion of batch?.portions ?? []) {
      const free = portion.bench ? room.get(portion.bench) : undefined
      const index = live.course.steps.findIndex(({ step }) => step === portion.step)
      const step = live.course.steps[index]
      if (!free || !step) continue
      const daysIn = live.portions.find(p => p.step === index)?.daysIn ?? 0
      const weeks = Math.ceil(Math.max(7, step.medianDays - daysIn) / 7)
      for (let w = 0; w < Math.min(weeks, season.weeks); w++)
        free[w]! -= portion.number * step.squareMetresPerPlant
    }
  }
}
