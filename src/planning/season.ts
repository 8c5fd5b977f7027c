import type {
  BatchId,
  BenchId,
  CultivarId,
  KindId,
  Material,
  MethodId,
  MotherId,
  OrderId,
  PersonId,
  Phrase,
  PlaceKind,
  Protocol,
  Skill,
  StepId,
} from '../trade/index.ts'
import type { RateUsed } from './plan.ts'

/**
 * The season as the model and the simulator read it: plain numbers by week. Week 0 is this week; index w is
 * `firstWeek + w`, weeks counted from the Monday of 1970-W01 (29 December 1969). Things refer to each other by
 * their index in the arrays of `Season`. The only code that both the linear model and the simulator rest on is
 * the reading that makes this.
 */
export interface Season {
  readonly firstWeek: number
  readonly weeks: number
  readonly kinds: readonly SeasonKind[]
  readonly places: readonly SeasonPlace[]
  readonly people: readonly SeasonPerson[]
  readonly pools: readonly MotherPool[]
  readonly ways: readonly SeasonWay[]
  readonly batches: readonly LiveBatch[]
  readonly orders: readonly SeasonOrder[]
  readonly licences: readonly SeasonLicence[]
  readonly prices: SeasonPrices
  /** Starts of the accepted plan that are still to come. Beginning fewer than accepted costs `worthOfMoving` a start. */
  readonly accepted: readonly SeasonStart[]
  readonly worthOfMoving: number
  /** Starts that the nursery fixed itself, still to come: so many in that week, no more and no fewer where that can be. */
  readonly set?: readonly SeasonStart[]
  /** Starts of the plan shown last that are still to come: people have seen them, so moving one costs something too. */
  readonly shown?: readonly SeasonStart[]
  /** Young mother trees that the plan plants, once it is made; absent: what they give is taken to be enough. */
  readonly planted?: readonly Planted[]
  /** Area and hours that are given away already, to what is not planned here. */
  readonly taken?: Pick<LiveBatch, 'area' | 'labour'>
  /** Young mother trees for which the mother block has ground; absent: no mother block is entered, and none limits. */
  readonly groundForMothers?: number
  /** 1 in weeks in which stems thicken, 0 in those in which they stand still; absent: they thicken all the year. */
  readonly growing?: Uint8Array
  /** Groups of method and species that share good and bad years. */
  readonly yearGroups: readonly string[]
  /** What had to be assumed, in words. */
  readonly assumed: readonly Phrase[]
}

export interface SeasonKind {
  readonly id: KindId
  readonly name: string
  readonly isRootstock: boolean
  /** Weeks after it is ready during which a plant may still be used or sold. */
  readonly usableWeeks: number
  readonly holdingCostPerWeek: number
  readonly price: number
  readonly buyIn: {
    readonly price: number
    readonly weeksNotice: number
    readonly mostPerWeek: number
  } | null
  /** Where finished plants stand, and what each takes. */
  readonly standsAt: { readonly place: number; readonly squareMetres: number } | null
}

export interface SeasonPlace {
  readonly place: PlaceKind
  readonly benches: readonly { readonly id: BenchId; readonly squareMetres: Float64Array }[]
  /** Sum over its benches, by week. */
  readonly squareMetres: Float64Array
  readonly extraPricePerSquareMetreWeek: number | null
  readonly pricePerSquareMetreWeek: number
}

export interface SeasonPerson {
  readonly id: PersonId
  readonly skills: readonly Skill[]
  /** Productive minutes by week at the protocol's own pace (hours × 60 × pace; 0 when away). */
  readonly minutes: Float64Array
  readonly overtimeMinutes: Float64Array
}

/** Mothers of one cultivar (or rootstock kind) that give one material, pooled while solving. */
export interface MotherPool {
  readonly cultivar: CultivarId | null
  readonly rootstockKind: KindId | null
  readonly material: Material
  readonly name: string
  readonly mothers: readonly PoolMother[]
  /** Most that all may give in a week (0 outside their months). */
  readonly perWeek: Float64Array
  /** Most that all may give within each season of giving (or what is left of this one): stretches of weeks, none over another. */
  readonly perYear: readonly { readonly fromWeek: number; readonly toWeek: number; readonly most: number }[]
  /** Collected and not yet used: `number` usable through `untilWeek`. */
  readonly stored: readonly { readonly number: number; readonly untilWeek: number }[]
  /** Weeks for which it keeps once cut, so that it may be cut before it is used. */
  readonly keepsWeeks: number
  /** Young mothers that may be planted for it; null where no more are wanted. */
  readonly young: YoungMothers | null
}

/** A mother tree planted now gives nothing at first and more each year. */
export interface YoungMothers {
  readonly costEach: number
  /** What one may give in a season that begins in its first, second … year after planting; the last goes on for ever. */
  readonly perSeasonByAge: readonly number[]
}

/** Young mother trees planted for a pool in a week. */
export interface Planted {
  readonly pool: number
  readonly week: number
  readonly number: number
}

/** What a mother gives in months of their own: one for most; she stands here once for each. */
export interface PoolMother {
  readonly id: MotherId
  readonly perWeek: Float64Array
  readonly perYear: readonly number[]
}

/** One way to make one kind: when it may begin and what becomes of what is begun. */
export interface SeasonWay {
  readonly name: string
  readonly kind: number
  readonly protocol: Protocol
  readonly method: MethodId
  readonly yearGroup: number
  /** By week: may it begin then (window, holds, licence, notice for preparation). */
  readonly open: Uint8Array
  readonly tray: number
  readonly smallestBatch: number
  /** Cost of seed and material for one plant begun, spread over its life and survival. */
  readonly costPerPlant: number
  /** The course for a start in week t is `courses[courseOfWeek[t]]`: rates and durations may differ by season. */
  readonly courseOfWeek: Int16Array
  readonly courses: readonly Course[]
}

/**
 * What is expected of one plant begun, by whole weeks since the start.
 *
 * Time: a batch of week t is begun, on average, in the middle of that week (day 3.5). A plant is ready after its
 * batch's days, times a factor of its own; both are log-normal. So the days of a plant picked at random are
 * log-normal with the mean of the steps' sum and the two variances together, and
 * `ready[k]` = survival of the whole course × chance that 3.5 + days falls in week k (7k ≤ 3.5 + days < 7k + 7).
 * What is ready in week k can be used or delivered in week k.
 */
export interface Course {
  readonly steps: readonly CourseStep[]
  /** Offset of index 0 of `area` and `labour`: 0, or negative where preparation comes before the start. */
  readonly firstOffset: number
  /** m² at a place for one plant begun, by week since the start. */
  readonly area: readonly { readonly place: number; readonly squareMetres: Float64Array }[]
  /** Minutes of a skill: for one plant begun, and for the batch as a whole. */
  readonly labour: readonly {
    readonly skill: Skill
    readonly perPlant: Float64Array
    readonly perBatch: Float64Array
  }[]
  /** Material taken from pools: `perPlant` in week `start + offset`. */
  readonly material: readonly { readonly pool: number; readonly offset: number; readonly perPlant: number }[]
  /** Rootstocks taken in week `start + offset`, any of `kinds`, of stems within the caliper window. */
  readonly rootstock: {
    readonly kinds: readonly number[]
    readonly offset: number
    /** Rootstocks for one plant begun (fewer than 1 where they are worked later and some are lost before). */
    readonly perPlant: number
    readonly minMm: number
    readonly maxMm: number
  } | null
  /** Share of what was begun that becomes finished in each week since the start; sums to the whole survival. */
  readonly ready: Float64Array
  /** Caliper of the stems when finished and after, for rootstocks. */
  readonly caliper: Protocol['caliper']
}

/** A step as the simulator draws it. */
export interface CourseStep {
  readonly step: StepId
  readonly name: string
  /** Predictive Beta of the share that survives it, for a future batch. */
  readonly alpha: number
  readonly beta: number
  /** Part of the rate's variance on the logit scale that a good or bad year shares between batches, 0 to 1. */
  readonly yearShare: number
  readonly rate: RateUsed
  /** Log-normal duration in days: median, and sd of the logarithm between batches (the batch as a whole). */
  readonly medianDays: number
  readonly sdLogDays: number
  /** Sd of the logarithm between the plants of one batch. */
  readonly plantSdLogDays: number
  readonly place: number | null
  readonly squareMetresPerPlant: number
}

/** A batch alive now, carried on from its counts. It moves through the rest of its course. */
export interface LiveBatch {
  readonly id: BatchId
  readonly name: string
  readonly kind: number
  readonly yearGroup: number
  readonly onHold: boolean
  /** Weeks since its finished plants were ready; 0 while none are. */
  readonly finishedWeeksAgo: number
  readonly portions: readonly {
    readonly number: number
    /** Index of the step it stands in; `steps.length` when it is finished. */
    readonly step: number
    /** Days already spent in that step. */
    readonly daysIn: number
    /** Beta for the share of those standing that will leave this step (given what was counted). */
    readonly alpha: number
    readonly beta: number
  }[]
  readonly course: Course
  /** Expected to be finished in each week from now; index 0 is this week. */
  readonly ready: Float64Array
  readonly area: readonly { readonly place: number; readonly squareMetres: Float64Array }[]
  readonly labour: readonly { readonly skill: Skill; readonly minutes: Float64Array }[]
}

export interface SeasonOrder {
  readonly id: OrderId
  /** The kind asked for first, then those accepted instead, with what each is worth less. */
  readonly kinds: readonly { readonly kind: number; readonly lessWorth: number }[]
  /** Still to be delivered. */
  readonly number: number
  readonly earliestWeek: number
  /** Whole number ready by the end of this week (the last week that ends on or before the due day). */
  readonly dueWeek: number
  readonly latestWeek: number
  readonly sure: number
  readonly price: number
}

/** A protected cultivar: no more than `most` trees begun in a calendar year. */
export interface SeasonLicence {
  /** Of the cultivar. */
  readonly name: string
  readonly kinds: readonly number[]
  readonly perYear: readonly { readonly fromWeek: number; readonly toWeek: number; readonly most: number }[]
}

/** What a plan decides, for the model and the simulator alike. */
export interface SeasonStart {
  readonly way: number
  readonly week: number
  readonly number: number
}

/** Plants bought in, on hand in their week. */
export interface BoughtIn {
  readonly kind: number
  readonly week: number
  readonly number: number
}

export interface SeasonPrices {
  readonly minute: number
  readonly overtimeMinute: number
  /** What one separate batch less is worth beyond its own work; nothing unless told. It is weighed, and not paid. */
  readonly batch?: number
  /** Share of the price lost once when a tree is planned for later than its due week, and again for each week. */
  readonly missedShare: number
  readonly latePerWeekShare: number
  readonly shortShare: number
}
