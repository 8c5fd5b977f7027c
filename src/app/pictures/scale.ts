/** From values to places on a drawing, and back to round numbers for an axis. */

export interface Scale {
  (value: number): number
  readonly from: number
  readonly to: number
}

export const linear = (from: number, to: number, start: number, end: number): Scale => {
  const span = to - from || 1
  return Object.assign((value: number) => start + ((value - from) / span) * (end - start), { from, to })
}

/** Round values from 0 to at least `most`, about `count` of them: steps of 1, 2 or 5 times a power of ten. */
export const ticks = (most: number, count: number): readonly number[] => {
  if (!(most > 0)) return [0]
  const rough = most / Math.max(1, count)
  const power = 10 ** Math.floor(Math.log10(rough))
  const step = power * ([1, 2, 5, 10].find(times => times * power >= rough) ?? 10)
  const values: number[] = []
  for (let index = 0; (index - 1) * step < most; index++) values.push(Number((index * step).toPrecision(12)))
  return values
}
