import { extremeValueQuantile } from '../../science/index.ts'
import { atDeviation } from '../assumptions/figures.ts'
import { taken } from '../assumptions/taken.ts'
import type { TreeFigures } from '../assumptions/tree-figures.ts'
import { chillByWarmth, warmestMonthOf } from '../climate/chill-and-heat.ts'
import type { Climate } from '../climate/climate.ts'
import type { Ground } from '../question.ts'
import type { Future } from './futures.ts'

/** The years of one future at the site. */
export interface SiteYears {
  /** Coldest night as it reaches the tree, by year. */
  readonly coldestNight: Float64Array
  /** Share of the crop that chill and summer warmth allow, by year. */
  readonly weatherShare: Float64Array
  /** Years with chill enough and with warmth enough for a full crop. */
  readonly chilledYears: number
  readonly warmYears: number
}

const YEARLY_WARMTH = taken.warmthOfYears.value
const WALL_CELSIUS = taken.wall.value
/** A light frost-free room. */
const ROOM_CELSIUS = 5
const NO_CROP_AT_CHILL = taken.noCropAtChill.value
const NO_CROP_AT_SHORT = taken.noCropAtShort.value

const atLeast = (share: number): number => Math.min(1, Math.max(0, share))

export const chillShare = (hours: number, need: number): number =>
  need <= 0 ? 1 : atLeast(1 - (need - hours) / (need * (1 - NO_CROP_AT_CHILL)))

export const warmthShare = (warmestMonth: number, need: number): number =>
  atLeast(1 - (need - warmestMonth) / NO_CROP_AT_SHORT)

export function siteYears(
  climate: Climate,
  ground: Ground,
  figures: TreeFigures,
  years: number,
  all: readonly Future[],
): readonly SiteYears[] {
  const chill = chillByWarmth(climate)
  const warmest = warmestMonthOf(climate)
  // Every year meets the same chances in another order, so that each quantile is figured once.
  const nights = new Map(
    all.map(({ coldness }) => [coldness[1]!, -extremeValueQuantile(coldness[1]!, climate.coldestNight)]),
  )
  const winter = ground.kind === 'container' ? ground.winter : 'outside'
  return all.map(future => {
    const shift = -future.site * climate.monthMeansError
    const chillNeed = Math.max(0, atDeviation(figures.chillHours, future.need))
    const warmthNeed = atDeviation(figures.warmestMonthCelsius, future.need)
    const coldestNight = new Float64Array(years + 1)
    const weatherShare = new Float64Array(years + 1)
    let chilledYears = 0
    let warmYears = 0
    for (let year = 1; year <= years; year++) {
      const outside = nights.get(future.coldness[year]!)! - future.site * climate.coldestNightError
      coldestNight[year] =
        winter === 'moved inside'
          ? Math.max(outside, ROOM_CELSIUS)
          : outside + (winter === 'by a warm wall' ? WALL_CELSIUS : 0)
      const warmer = shift + future.warmth[year]! * YEARLY_WARMTH
      const chilled = chillShare(chill(warmer), chillNeed)
      const warmed = warmthShare(warmest + warmer, warmthNeed)
      if (chilled === 1) chilledYears += 1
      if (warmed === 1) warmYears += 1
      weatherShare[year] = chilled * warmed
    }
    return { coldestNight, weatherShare, chilledYears, warmYears }
  })
}
