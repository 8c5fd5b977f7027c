import { normalQuantile, seededRandom } from '../../science/index.ts'
import { taken } from '../assumptions/taken.ts'

/** One course that the years may take: the same for every way, so that ways are compared under the same winters. */
export interface Future {
  /** Deviations from the middle of what is unsure for good: site, cold borne, years to fruit, full crop, and so on. */
  readonly site: number
  readonly tolerance: number
  readonly clonalYears: number
  readonly seedlingYears: number
  readonly bearing: number
  readonly fullCrop: number
  readonly alone: number
  readonly seedlingShare: number
  readonly need: number
  /** Chances between 0 and 1. */
  readonly seedlingLuck: number
  readonly reworkShare: number
  readonly firstRework: number
  readonly secondRework: number
  readonly promise: number
  readonly sprout: number
  /** Year by year, from 1: how cold the coldest night is among years (0 to 1), deviations of warmth, and crop against the usual. */
  readonly coldness: Float64Array
  readonly warmth: Float64Array
  readonly season: Float64Array
}

const PARTS = [
  'site',
  'tolerance',
  'clonalYears',
  'seedlingYears',
  'bearing',
  'fullCrop',
  'alone',
  'seedlingShare',
  'need',
  'seedlingLuck',
  'reworkShare',
  'firstRework',
  'secondRework',
  'promise',
  'sprout',
] as const
/** Those that stay chances and are not turned into deviations. */
const CHANCES: ReadonlySet<(typeof PARTS)[number]> = new Set([
  'seedlingLuck',
  'firstRework',
  'secondRework',
  'promise',
  'sprout',
] as const)

const SEASON_SPREAD = taken.cropOfYears.value

const SEED = 20261125
const kept = new Map<string, readonly Future[]>()

/** Places 0.5/n, 1.5/n … in a shuffled order: each part of the range is met once. */
function spread(count: number, stream: { uniform(): number }): number[] {
  const places = Array.from({ length: count }, (_, i) => (i + 0.5) / count)
  for (let i = count - 1; i > 0; i--) {
    const other = Math.floor(stream.uniform() * (i + 1))
    const here = places[i]!
    places[i] = places[other]!
    places[other] = here
  }
  return places
}

/**
 * So many futures of so many years, always the same ones: an answer does not change by itself, and a small change of an
 * input changes it a little. Each unsure quantity is spread evenly over its chances (Latin hypercube).
 * @source McKay, Beckman & Conover 1979, Technometrics 21:239-245
 */
export function futures(count: number, years: number): readonly Future[] {
  const name = `${count}/${years}`
  const known = kept.get(name)
  if (known !== undefined) return known
  const random = seededRandom(SEED)
  const drawn = new Map(
    PARTS.map((part, place) => {
      const places = spread(count, random.stream(place))
      return [part, CHANCES.has(part) ? places : places.map(normalQuantile)]
    }),
  )
  const yearly = (stream: number, deviations: boolean) => {
    const out = Array.from({ length: count }, () => new Float64Array(years + 1))
    for (let year = 1; year <= years; year++) {
      const places = spread(count, random.stream(stream * 1000 + year))
      places.forEach((place, future) => {
        out[future]![year] = deviations ? normalQuantile(place) : place
      })
    }
    return out
  }
  const coldness = yearly(1, false)
  const warmth = yearly(2, true)
  const season = yearly(3, true).map(of =>
    of.map(deviation => Math.exp(SEASON_SPREAD * deviation - SEASON_SPREAD ** 2 / 2)),
  )
  const all = Array.from({ length: count }, (_, i) => ({
    ...(Object.fromEntries(PARTS.map(part => [part, drawn.get(part)![i]!])) as Record<
      (typeof PARTS)[number],
      number
    >),
    coldness: coldness[i]!,
    warmth: warmth[i]!,
    season: season[i]!,
  }))
  kept.set(name, all)
  return all
}
