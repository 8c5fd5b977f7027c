import type { RateUsed, Rung } from '../../../planning/index.ts'

/** The rungs of a count-back from what has to be worked down to what is needed, each with the rate that leads to the next below. */
export function rungsDown(
  rungs: readonly Rung[],
): readonly { readonly rung: Rung; readonly rate: RateUsed | null }[] {
  const isUp = (rungs[0]?.number ?? 0) < (rungs.at(-1)?.number ?? 0)
  const down = isUp ? [...rungs].reverse() : rungs
  // Wherever the plan wrote it.
  return down.map((rung, index) => ({
    rung,
    rate: rung.rate ?? (isUp ? (down[index + 1]?.rate ?? null) : null),
  }))
}
