/** Figures by name; the unit is in the name, as in `secondsMedian` or `peakMB`. */
export type Figures = Readonly<Record<string, number | string>>

export interface Measured {
  readonly figures: Figures
  /** The same task by other means, measured in the same run. */
  readonly rivals: Readonly<Record<string, Figures>>
  readonly notes: readonly string[]
}

/** Median seconds of a task over several runs, after as many to warm up as `warm`. */
export function medianSeconds(task: () => unknown, runs: number, warm = 3): number {
  for (let i = 0; i < warm; i++) task()
  const seconds = Array.from({ length: runs }, () => {
    const begin = performance.now()
    task()
    return (performance.now() - begin) / 1000
  }).sort((a, b) => a - b)
  return seconds[Math.floor(runs / 2)]!
}
