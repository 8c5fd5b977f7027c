import {
  type ExtremeValue,
  extremeValueQuantile,
  fitByLikelihood,
  fitByLMoments,
} from '../../science/index.ts'
import { type Climate, type ClimateSaid, monthsBetween } from './climate.ts'

/** The upper end of cold: winters do not get colder without bound. From memory for yearly minima of temperature. */
const SHAPE = -0.15
/** Degrees by which the yearly figures of a typed or recorded climate may be off. Our choice. */
const TYPED_ERROR = 1
const MONTHS_ERROR = 0.7
/** The atmosphere cools by this much for each kilometre: ICAO standard atmosphere. */
const CELSIUS_PER_KILOMETRE = 6.5

/** A climate from what was said of it. */
export function readClimate(said: ClimateSaid): Climate {
  switch (said.kind) {
    case 'record':
      return fromRecord(said)
    case 'normals':
      return fromNormals(said)
    case 'place':
      return fromPlace(said)
  }
}

const monthsOf = (said: Exclude<ClimateSaid, { readonly kind: 'place' }>): readonly number[] =>
  said.monthMeansCelsius ?? monthsBetween(said.coldestMonthCelsius, said.warmestMonthCelsius)

function fromRecord(said: ClimateSaid & { readonly kind: 'record' }): Climate {
  const turned = said.yearlyMinimaCelsius.map(value => -value)
  const months = monthsOf(said)
  const alike = turned.every(value => value === turned[0])
  const fit = alike ? { location: turned[0]!, scale: 0.3, shape: SHAPE } : fitOf(turned)
  return {
    coldestNight: { location: fit.location, scale: fit.scale, shape: fit.shape },
    /** Of a Gumbel location by likelihood the standard error is 1.05 · scale / √n. */
    coldestNightError:
      'standardErrors' in fit ? fit.standardErrors.location : (1.05 * fit.scale) / Math.sqrt(turned.length),
    monthMeansCelsius: months,
    monthMeansError: MONTHS_ERROR,
    from: 'record',
  }
}

/** With few years the likelihood strays: L-moments below twenty-five, and no shape beyond what winters show. */
function fitOf(values: readonly number[]) {
  const long = values.length >= 25 ? fitByLikelihood(values) : undefined
  if (long !== undefined && Math.abs(long.shape) < 0.45) return long
  const short = fitByLMoments(values)
  return { ...short, shape: Math.min(0.2, Math.max(-0.45, short.shape)) }
}

function fromNormals(said: ClimateSaid & { readonly kind: 'normals' }): Climate {
  const { coldestNightCelsius, coldestInTenYearsCelsius, coldestMonthCelsius, warmestMonthCelsius } = said
  const unit: ExtremeValue = { location: 0, scale: 1, shape: SHAPE }
  const middle = extremeValueQuantile(0.5, unit)
  const tenth = extremeValueQuantile(0.9, unit)
  const drop =
    coldestInTenYearsCelsius === null
      ? usualScale(coldestMonthCelsius, warmestMonthCelsius) * (tenth - middle)
      : Math.max(0.3, coldestNightCelsius - coldestInTenYearsCelsius)
  const scale = drop / (tenth - middle)
  return {
    coldestNight: { location: -coldestNightCelsius - scale * middle, scale, shape: SHAPE },
    coldestNightError: TYPED_ERROR,
    monthMeansCelsius: monthsOf(said),
    monthMeansError: MONTHS_ERROR,
    from: 'normals',
  }
}

/** Winters differ more where summer and winter differ more. From memory. */
const usualScale = (coldestMonth: number, warmestMonth: number): number =>
  1.2 + 0.06 * Math.max(0, warmestMonth - coldestMonth)

/** Half the swing from summer to winter, in degrees for each degree of latitude. From memory. */
const swingPerDegree = { near: 0.15, 'some way off': 0.2, far: 0.25 } as const
/** How much warmer or colder the coldest night is for the distance from the sea. From memory. */
const nightBySea = { near: 2, 'some way off': 0, far: -3 } as const

/**
 * A climate from latitude and height alone: rough, and it says so by its error. Yearly mean at sea level
 * 27.5 − 0.0065 · latitude²; 6.5 degrees colder for each kilometre up; the coldest night lies ten degrees and half the
 * swing below the coldest month.
 */
function fromPlace({ latitude, heightMetres, sea }: ClimateSaid & { readonly kind: 'place' }): Climate {
  const degrees = Math.abs(latitude)
  const mean = 27.5 - 0.0065 * degrees ** 2 - (CELSIUS_PER_KILOMETRE * heightMetres) / 1000
  const swing = 1 + swingPerDegree[sea] * degrees
  const coldestMonth = mean - swing
  const warmestMonth = mean + swing
  const scale = usualScale(coldestMonth, warmestMonth)
  const night = coldestMonth - 10 - swing / 2 + nightBySea[sea]
  const middle = extremeValueQuantile(0.5, { location: 0, scale, shape: SHAPE })
  return {
    coldestNight: { location: -night - middle, scale, shape: SHAPE },
    coldestNightError: degrees < 23.5 ? 2.5 : 5,
    monthMeansCelsius: monthsBetween(coldestMonth, warmestMonth),
    monthMeansError: 3,
    from: 'place',
  }
}

/** The coldest night that comes once in so many years, in degrees Celsius. */
export const coldestNightOnceIn = (climate: Climate, years: number): number =>
  -extremeValueQuantile(1 - 1 / years, climate.coldestNight)
