import type { Climate } from './climate.ts'
import { readClimate } from './read-climate.ts'

/** The usual warmth of the months at a place, January first, and how far it may be off. */
export interface MonthsAtPlace {
  readonly meansCelsius: readonly number[]
  readonly errorCelsius: Climate['monthMeansError']
}

/**
 * From latitude and height alone, some way off the sea: rough, as the climate of such a place is.
 * @param latitudeDegrees south is below 0
 */
export function monthsAtPlace(latitudeDegrees: number, heightMetres: number): MonthsAtPlace {
  const { monthMeansCelsius: fromColdest, monthMeansError } = readClimate({
    kind: 'place',
    latitude: latitudeDegrees,
    heightMetres,
    sea: 'some way off',
  })
  const coldest = latitudeDegrees < 0 ? 6 : 0
  return {
    meansCelsius: Array.from({ length: 12 }, (_, month) => fromColdest[(month - coldest + 12) % 12]!),
    errorCelsius: monthMeansError,
  }
}
