import type { Figure } from '../../trade/index.ts'

/** Nine of ten cases lie from low to high: so many standard deviations to each side. */
const TO_THE_END = 1.6448536269514722

export const fromMemory = (low: number, typical: number, high: number, note?: string): Figure => ({
  low,
  typical,
  high,
  basis: 'from memory',
  sources: [],
  ...(note === undefined ? {} : { note }),
})

/** The value of a figure so many standard deviations from its middle, each side by its own spread. */
export const atDeviation = ({ low, typical, high }: Figure, deviations: number): number =>
  typical + (deviations / TO_THE_END) * (deviations < 0 ? typical - low : high - typical)

/** A figure overruled: the whole of it moves, its spread in proportion. */
export const setTo = (figure: Figure, value: number): Figure => {
  const times = figure.typical === 0 ? 1 : value / figure.typical
  return {
    low: Math.min(value, figure.low * times),
    typical: value,
    high: Math.max(value, figure.high * times),
    basis: 'set by the nursery',
    sources: [],
  }
}

/** A temperature overruled: the whole of it is moved. */
export const movedTo = (figure: Figure, value: number): Figure => ({
  low: figure.low + value - figure.typical,
  typical: value,
  high: figure.high + value - figure.typical,
  basis: 'set by the nursery',
  sources: [],
})

export const scaled = (figure: Figure, times: number): Figure => ({
  ...figure,
  low: figure.low * times,
  typical: figure.typical * times,
  high: figure.high * times,
})
