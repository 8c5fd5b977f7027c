import type { Figure } from '../../trade/index.ts'
import type { Shown } from './shown-unit.ts'

/** As it is read and typed: three figures, without the dust of conversion. */
export const typed = (value: number): string => String(Number(value.toPrecision(3)))

/** Three typed numbers that rise, as a figure of the nursery's own in the units of the facts; null where they do not. */
export function figureTyped(
  typedIn: { readonly low: string; readonly typical: string; readonly high: string },
  { from }: Shown,
): Figure | null {
  const read = (text: string) =>
    text.trim() === '' ? Number.NaN : Number(text.trim().replace(',', '.').replace('−', '-'))
  const [low, typical, high] = [typedIn.low, typedIn.typical, typedIn.high]
    .map(read)
    .map(value => from(value))
  if (low === undefined || typical === undefined || high === undefined) return null
  if (![low, typical, high].every(Number.isFinite) || low > typical || typical > high) return null
  return { low, typical, high, basis: 'set by the nursery', sources: [] }
}
