import type { SimulatedSeasons } from '../simulate/simulate-seasons.ts'

/** What may be promised more, beside all orders: by week, the number that is there as surely as stated. */
export interface PromisableKind {
  readonly kind: number
  readonly numbers: Int32Array
}

/** The number that may be promised in each week: exceeded or met in the stated share of the seasons. */
export function promisableByWeek(simulated: SimulatedSeasons, sure: number): PromisableKind[] {
  const { watched, weeks } = simulated
  const seasons = simulated.to - simulated.from
  const rank = Math.min(seasons - 1, Math.max(0, Math.ceil((1 - sure) * seasons) - 1))
  return watched.map((kind, index) => ({
    kind,
    numbers: Int32Array.from({ length: weeks }, (_, week) => {
      const inWeek = Int32Array.from(
        { length: seasons },
        (_, row) => simulated.promisable[(row * watched.length + index) * weeks + week]!,
      ).sort()
      return seasons === 0 ? 0 : inWeek[rank]!
    }),
  }))
}

/** From what lives and is planned: the first week in which a number is there as surely as stated, beside all orders. */
export function earliestFromPlan(
  simulated: SimulatedSeasons,
  asked: { readonly kind: number; readonly number: number; readonly sure: number },
): { readonly week: number; readonly chance: number } | null {
  const { kind, number, sure } = asked
  const index = simulated.watched.indexOf(kind)
  const seasons = simulated.to - simulated.from
  if (index < 0) return null
  for (let week = 0; week < simulated.weeks; week++) {
    let enough = 0
    for (let row = 0; row < seasons; row++)
      if (simulated.promisable[(row * simulated.watched.length + index) * simulated.weeks + week]! >= number)
        enough++
    if (enough >= sure * seasons) return { week, chance: enough / seasons }
  }
  return null
}
