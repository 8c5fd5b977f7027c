import { netPresentValue, paybackYear } from '../../science/index.ts'
import { type CourseInput, courseOf, ledgerOf } from './course.ts'
import type { Future } from './futures.ts'
import type { SiteYears } from './site-years.ts'

/** What one way of planting comes to in all futures: by year the mean or a value for each future, else one for each. */
export interface Courses {
  /** Kilograms of the wanted fruit in each year, expected. */
  readonly crop: readonly number[]
  /** The same until the end of each year, in each future. */
  readonly cropSoFar: readonly Float64Array[]
  readonly standing: readonly number[]
  readonly firstFruit: Float64Array
  readonly trueShare: Float64Array
  readonly presentValue: Float64Array
  /** Infinite where the money does not come back within the years looked at. */
  readonly payback: Float64Array
}

/** One way through all futures, each with its years at the site. */
export function coursesOf(input: CourseInput, all: readonly Future[], site: readonly SiteYears[]): Courses {
  const { yearsAhead: years, interest } = input.question
  const count = all.length
  const crop = new Float64Array(years + 1)
  const standing = new Float64Array(years + 1)
  const cropSoFar = Array.from(crop, () => new Float64Array(count))
  const firstFruit = new Float64Array(count)
  const trueShare = new Float64Array(count)
  const presentValue = new Float64Array(count)
  const payback = new Float64Array(count)
  const ledger = ledgerOf(years)
  for (let i = 0; i < count; i++) {
    const course = courseOf(input, all[i]!, site[i]!, ledger)
    firstFruit[i] = course.firstFruit
    trueShare[i] = course.trueShare
    presentValue[i] = netPresentValue(interest, course.flows)
    payback[i] = paybackYear(0, course.flows) ?? Number.POSITIVE_INFINITY
    let soFar = 0
    for (let year = 0; year <= years; year++) {
      soFar += course.crop[year]!
      cropSoFar[year]![i] = soFar
      crop[year]! += course.crop[year]!
      standing[year]! += course.standing[year]!
    }
  }
  return {
    crop: Array.from(crop, sum => sum / count),
    cropSoFar,
    standing: Array.from(standing, sum => sum / count),
    firstFruit,
    trueShare,
    presentValue,
    payback,
  }
}
