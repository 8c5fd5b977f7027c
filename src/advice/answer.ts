import type { Figure } from '../trade/index.ts'
import type { PartnerNeed } from './assumptions/partner.ts'
import type { Rootstock } from './assumptions/rootstock.ts'
import type { Stand } from './planting/stand.ts'
import type { AssumptionKey } from './question.ts'
import type { TreeWay } from './ways.ts'

/** Eight futures of ten lie from low to high, five of ten below the middle. */
export interface Spread {
  readonly low: number
  readonly middle: number
  readonly high: number
}

/** The same by year from 0 (now), with the mean over all futures. */
export interface YearlySpread {
  readonly low: readonly number[]
  readonly middle: readonly number[]
  readonly high: readonly number[]
  readonly mean: readonly number[]
}

/** What a way of planting gives at the place asked about. */
export interface WayAnswer {
  readonly way: TreeWay
  readonly stand: Stand
  readonly rootstock: Rootstock | null
  /** Years to the first wanted fruit; the ends may be infinite where it may not come in the years looked at. */
  readonly firstFruit: Spread
  /** Share of futures with a first wanted fruit by each year. */
  readonly fruitBy: readonly number[]
  /** Share of the trees that bear the wanted fruit, expected. */
  readonly trueShare: number
  /** Seedlings to plant for nine chances of ten of so many good ones; null for trees that are true. */
  readonly seedlingsForGood: { readonly good: number; readonly plant: number } | null
  /** Crop of each year, expected; and all of it so far, with its spread. */
  readonly crop: readonly number[]
  readonly cropSoFar: YearlySpread
  /** Share of planted trees still living as the wanted tree, by year. */
  readonly standing: readonly number[]
  /** The same after ten winters, or at the end of the years looked at where they are fewer. */
  readonly survives: number
  /** First year in which fewer than half still live as the wanted tree; null where more do to the end. */
  readonly halfLostBy: number | null
  readonly price: number
  /** Trees, planting, stakes, partners, first-year losses, and reworking. */
  readonly spend: number
  readonly presentValue: Spread & { readonly mean: number }
  readonly equivalentYearlyValue: number
  readonly presentValuePerSquareMetre: number
  /** Year by which the spend is back for good, in the middle future; null where it never is. */
  readonly payback: number | null
  readonly paysBackShare: number
  /** Wishes of the buyer that it does not meet. */
  readonly against: readonly Against[]
}

export type Against = 'not offered' | 'too late' | 'too dear' | 'too big' | 'needs pruning' | 'crowded'

/** What a buyer may care about most. */
export type WishId = 'soonest' | 'most fruit' | 'money' | 'sure to live' | 'cheapest'
export const WISHES: readonly WishId[] = ['soonest', 'most fruit', 'money', 'sure to live', 'cheapest']

/** A way that another is as good as or better than in everything that is compared. */
export interface Beaten {
  readonly way: string
  readonly by: string
}

export interface Answer {
  readonly years: number
  readonly need: PartnerNeed
  readonly ways: readonly WayAnswer[]
  /** Which way leads in wanted fruit so far, from a year on. */
  readonly leaders: readonly { readonly fromYear: number; readonly way: string }[]
  /** The way that serves each wish best; null where none does. */
  readonly best: Readonly<Record<WishId, string | null>>
  readonly beaten: readonly Beaten[]
  readonly climate: {
    readonly coldestNightUsual: number
    readonly coldestNightOnceInTen: number
    readonly coldestNightError: number
    /** Shares of years with enough chill, and with a summer warm enough, for a full crop. */
    readonly enoughChill: number
    readonly enoughWarmth: number
    readonly chillHours: number
  }
  readonly assumptions: readonly Assumption[]
  readonly cautions: readonly Caution[]
}

export interface Assumption {
  readonly key: AssumptionKey
  readonly figure: Figure
}

export interface Caution {
  readonly kind: 'fruit' | 'structure' | 'frost' | 'law' | 'container' | 'partner' | 'climate'
  readonly text: string
}
