import type { Nursery } from '../../record/index.ts'
import { dayNumber, weekOfDay, weekText } from '../../science/index.ts'
import type { BenchId } from '../../trade/index.ts'
import { benchFill } from '../forecast/bench-fill.ts'
import type { Plan } from '../plan.ts'

/** A bench on which more is to stand than it has room for. */
export interface FullBench {
  readonly bench: BenchId
  /** The first such week, what is to stand there then, and the room that is not closed then. */
  readonly week: string
  readonly squareMetres: number
  readonly areaSquareMetres: number
  /** All such weeks, the first among them. */
  readonly weeks: readonly string[]
}

/** Half of the last digit in which areas are shown. */
const HAIR_SQUARE_METRES = 0.05

/**
 * The benches that overflow in one of so many weeks from this one on, the first to overflow first: this week by the
 * entries, later as expected from the batches and the plan.
 */
export function fullBenches(
  nursery: Nursery,
  plan: Pick<Plan, 'starts'> | null,
  today: string,
  weeks: number,
): readonly FullBench[] {
  const standing = new Map(
    [...nursery.batches].filter(([, { portions, finishedPortions }]) =>
      [...portions, ...finishedPortions].some(({ number }) => number > 0),
    ),
  )
  const first = weekOfDay(dayNumber(today))
  const full = new Map<BenchId, FullBench>()
  for (let ahead = 0; ahead < weeks; ahead++) {
    const week = weekText(first + ahead)
    for (const { bench, areaSquareMetres, stands } of benchFill(
      { ...nursery, batches: standing },
      plan,
      week,
      today,
    )) {
      const squareMetres = stands.reduce((sum, stand) => sum + stand.squareMetres, 0)
      if (squareMetres <= areaSquareMetres + HAIR_SQUARE_METRES) continue
      const known = full.get(bench) ?? { bench, week, squareMetres, areaSquareMetres, weeks: [] }
      full.set(bench, { ...known, weeks: [...known.weeks, week] })
    }
  }
  return [...full.values()]
}
