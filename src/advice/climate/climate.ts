import * as z from 'zod'
import type { ExtremeValue } from '../../science/index.ts'

const celsius = z.number().min(-60).max(50)

/** Means of the twelve months from January on, where a weather file gives them. */
const monthMeansCelsius = z.array(celsius).length(12).readonly().optional()

/** What the buyer can say of the climate: a record of years, a few usual figures, or only the place. */
export const ClimateSaid = z.discriminatedUnion('kind', [
  z
    .object({
      kind: z.literal('record'),
      /** The coldest night of each year, from a weather file: five years or more. */
      yearlyMinimaCelsius: z.array(celsius).min(5).max(300).readonly(),
      coldestMonthCelsius: celsius,
      warmestMonthCelsius: celsius,
      monthMeansCelsius,
    })
    .readonly(),
  z
    .object({
      kind: z.literal('normals'),
      /** The coldest night of a usual year. */
      coldestNightCelsius: celsius,
      /** The coldest night in about ten years, where it is known. */
      coldestInTenYearsCelsius: celsius.nullable().default(null),
      coldestMonthCelsius: celsius,
      warmestMonthCelsius: celsius,
      monthMeansCelsius,
    })
    .readonly(),
  z
    .object({
      kind: z.literal('place'),
      latitude: z.number().min(-66).max(66),
      heightMetres: z.number().min(-400).max(4500),
      sea: z.enum(['near', 'some way off', 'far']),
    })
    .readonly(),
])
export type ClimateSaid = z.infer<typeof ClimateSaid>

/** A climate as the adviser reckons with it. */
export interface Climate {
  /** Distribution of minus the coldest night of a year, so that the largest is the coldest. */
  readonly coldestNight: ExtremeValue
  /** How far its location may be off, as a standard deviation. */
  readonly coldestNightError: number
  /** Means of the twelve months, whatever the order. */
  readonly monthMeansCelsius: readonly number[]
  readonly monthMeansError: number
  readonly from: ClimateSaid['kind']
}

/** Twelve months on a cosine from the coldest to the warmest and back. Common practice. */
export const monthsBetween = (coldest: number, warmest: number): readonly number[] =>
  Array.from({ length: 12 }, (_, month) => {
    const middle = (coldest + warmest) / 2
    return middle - ((warmest - coldest) / 2) * Math.cos((2 * Math.PI * month) / 12)
  })
