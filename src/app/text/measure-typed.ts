import type { Format } from './format.ts'

/** Of what was turned into other units: the dust is left out. */
const FIGURES = 4
const FIGURES_KEPT = 8

/** A number as somebody typed it, the decimal sign a point or a comma; NaN where it is none. */
export const numberTyped = (text: string): number =>
  text.trim() === '' ? Number.NaN : Number(text.trim().replace(',', '.').replace('−', '-'))

/**
 * A measure in a field: written as the reader has it, read back in the metric unit. What was not touched stays what it
 * was, to the last figure; null where nothing stands, NaN where it is no number.
 */
export function measureTyped(
  value: number | null,
  metricUnit: string,
  format: Pick<Format, 'shown' | 'typed'>,
) {
  const { unit, to, from } = format.shown(metricUnit)
  const isAsItIs = to(1) === 1
  const was = value === null ? '' : format.typed(isAsItIs ? value : Number(to(value).toPrecision(FIGURES)))
  return {
    unit,
    was,
    read: (text: string): number | null => {
      if (text === was) return value
      if (text.trim() === '') return null
      const typed = numberTyped(text)
      return isAsItIs ? typed : Number(from(typed).toPrecision(FIGURES_KEPT))
    },
  }
}
