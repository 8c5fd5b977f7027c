import * as z from 'zod'
import {
  BatchId,
  BenchId,
  EntryId,
  KindId,
  MethodId,
  MotherId,
  OrderId,
  PersonId,
  Phrase,
  PlaceKind,
  ProtocolId,
  Skill,
  StepId,
} from '../trade/index.ts'

/** The answer of the season model, as data. Weeks are ISO 8601 weeks, `2026-W48`; arrays by week begin at `firstWeek`. */

export const WeekText = z.string().regex(/^\d{4}-W\d{2}$/)

/** Where a rate comes from, and how much stands behind it. */
export const RateUsed = z
  .object({
    mean: z.number(),
    low: z.number(),
    high: z.number(),
    from: z.enum(['facts', 'records', 'set by the nursery']),
    basis: z.string(),
    sources: z.array(z.string()),
    /** Batches of this nursery behind it. */
    batches: z.number(),
  })
  .readonly()
export type RateUsed = z.infer<typeof RateUsed>

/** A planned beginning of a batch. */
export const PlannedStart = z
  .object({
    id: z.string(),
    kind: KindId,
    protocol: ProtocolId,
    method: MethodId,
    week: WeekText,
    number: z.number().int(),
    mothers: z.array(z.object({ mother: MotherId, material: z.string(), number: z.number() }).readonly()),
    rootstocks: z.array(
      z
        .object({ kind: KindId, batch: BatchId.nullable(), start: z.string().nullable(), number: z.number() })
        .readonly(),
    ),
    bench: BenchId.nullable(),
    people: z.array(z.object({ person: PersonId, skill: Skill, minutes: z.number() }).readonly()),
    /** The orders it is for, with how many finished trees of it go to each; the rest is cover for losses. */
    orders: z.array(z.object({ order: OrderId, number: z.number() }).readonly()),
    /** Rootstocks are made for later starts. */
    forStarts: z.array(z.string()),
    cost: z.number(),
    /** Its week and number were fixed by an entry, in the place of a start of a plan; null where the planner chose them. */
    set: z.object({ entry: EntryId.nullable(), insteadOf: z.string().nullable() }).readonly().nullable(),
  })
  .readonly()
export type PlannedStart = z.infer<typeof PlannedStart>

/** Mother trees to be planted now for wood in later years. */
export const Planting = z
  .object({
    name: z.string(),
    material: z.string(),
    week: WeekText,
    number: z.number().int(),
    sentence: Phrase,
  })
  .readonly()
export type Planting = z.infer<typeof Planting>

/** One rung of the count-back ladder, read from what is needed up to what is started. */
export const Rung = z
  .object({
    step: StepId.nullable(),
    name: z.string(),
    number: z.number(),
    /** Survival from this rung to the next below; null at the last. */
    rate: RateUsed.nullable(),
    week: WeekText,
  })
  .readonly()
export type Rung = z.infer<typeof Rung>

export const OrderForecast = z
  .object({
    order: OrderId,
    wanted: z.number(),
    already: z.number(),
    asked: z.number(),
    /** Share of simulated seasons, on which the plan was not settled, in which the whole number is ready by the due day, with its 95 % interval. */
    chance: z.number(),
    chanceLow: z.number(),
    chanceHigh: z.number(),
    /** The same when the last plan was accepted, if there was one. */
    chanceBefore: z.number().nullable(),
    expectedByDue: z.number(),
    lowByDue: z.number(),
    highByDue: z.number(),
    late: z.number(),
    short: z.number(),
    /** Why it is surer than asked or less sure, in words; empty when as asked. */
    why: z.array(Phrase),
    ladders: z.array(
      z
        .object({
          start: z.string().nullable(),
          batch: BatchId.nullable(),
          kind: KindId,
          protocol: ProtocolId,
          rungs: z.array(Rung),
        })
        .readonly(),
    ),
  })
  .readonly()
export type OrderForecast = z.infer<typeof OrderForecast>

/** What a place, skill or mother carries, week by week, against what it can. */
export const Load = z
  .object({
    what: z.enum(['place', 'skill', 'mother']),
    id: z.string(),
    name: z.string(),
    unit: z.enum(['m²', 'hours', 'sticks', 'cuttings', 'branches', 'seeds', 'pieces']),
    expected: z.array(z.number()),
    badYear: z.array(z.number()),
    capacity: z.array(z.number()),
  })
  .readonly()
export type Load = z.infer<typeof Load>

/** What limits the season, from the duals: neighbouring weeks joined. */
export const Limit = z
  .object({
    rule: z.string(),
    subject: Phrase,
    from: WeekText,
    to: WeekText,
    /** What one more unit in each of these weeks is worth, in the nursery's unit of money. */
    worthPerUnit: z.number(),
    unit: z.string(),
    sentence: Phrase,
  })
  .readonly()
export type Limit = z.infer<typeof Limit>

export const Change = z
  .object({
    sentence: Phrase,
    because: Phrase,
    order: OrderId.nullable(),
    start: z.string().nullable(),
    batch: BatchId.nullable(),
  })
  .readonly()
export type Change = z.infer<typeof Change>

/** What an order is planned with, so that it is as sure as asked: the next plan begins from this. */
export const PlannedWith = z
  .object({
    /** Finished trees planned for it, more than its number because some years are bad. */
    number: z.number(),
    /** Weeks before its due week by which they are planned to be ready. */
    weeksEarly: z.number().int(),
  })
  .readonly()
export type PlannedWith = z.infer<typeof PlannedWith>

export const PlaceOverflow = z
  .object({ place: PlaceKind, week: WeekText, squareMetres: z.number() })
  .readonly()

/** One thing to do: what, how many, from where, to where, by whom, how long. */
export const Task = z
  .object({
    id: z.string(),
    week: WeekText,
    /** The day of the week that it is given; null where it does not fit, and then `lacks` says why. */
    day: z.string().nullable(),
    lacks: Phrase.nullable(),
    task: Phrase,
    kindOfTask: z.enum(['start', 'prepare', 'collect', 'work', 'count', 'advance', 'finish', 'dispatch']),
    method: MethodId.nullable(),
    start: z.string().nullable(),
    batch: BatchId.nullable(),
    order: OrderId.nullable(),
    step: StepId.nullable(),
    kind: KindId.nullable(),
    number: z.number(),
    from: z.array(Phrase),
    bench: BenchId.nullable(),
    person: PersonId.nullable(),
    skill: Skill.nullable(),
    minutes: z.number(),
    caution: z.string().nullable(),
  })
  .readonly()
export type Task = z.infer<typeof Task>

export const Outcome = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('filled') }).readonly(),
  z.object({ kind: z.literal('short'), orders: z.array(OrderId) }).readonly(),
  z.object({ kind: z.literal('stopped early'), gapShare: z.number() }).readonly(),
  z.object({ kind: z.literal('nothing to plan'), why: Phrase }).readonly(),
])
export type Outcome = z.infer<typeof Outcome>

export const Plan = z
  .object({
    id: z.string(),
    madeOn: z.string(),
    /** The last entry that it knows of. */
    throughSeq: z.number(),
    firstWeek: WeekText,
    weeks: z.number().int(),
    outcome: Outcome,
    cost: z.number(),
    costParts: z.record(z.string(), z.number()),
    /** (cost − bound) ÷ cost of the whole-number plan against its relaxation. */
    gapShare: z.number(),
    seasonsSimulated: z.number().int(),
    starts: z.array(PlannedStart),
    orders: z.array(OrderForecast),
    loads: z.array(Load),
    limits: z.array(Limit),
    plantings: z.array(Planting),
    /** Plants bought in, by the week in which they come. */
    bought: z.array(z.object({ kind: KindId, week: WeekText, number: z.number() }).readonly()),
    /** Worked beyond their hours, by people who have the same skills. */
    overtime: z.array(z.object({ people: z.array(PersonId), week: WeekText, hours: z.number() }).readonly()),
    /** Lent beyond what the benches of a place have. */
    extraArea: z.array(z.object({ place: PlaceKind, week: WeekText, squareMetres: z.number() }).readonly()),
    plannedWith: z.record(OrderId, PlannedWith),
    /** Stands for all that was registered when it was made: prices, kinds, protocols, benches, people, mother trees. */
    restsOn: z.number(),
    changes: z.array(Change),
    /** Starts of the accepted plan that this one moves, and what that saved. */
    moved: z.object({ starts: z.number(), saved: z.number() }).readonly(),
    tasks: z.array(Task),
    /** What was assumed and could not be read from the records, in words. */
    assumed: z.array(Phrase),
  })
  .readonly()
export type Plan = z.infer<typeof Plan>

/** What the planning job tells while it runs. */
export interface Progress {
  readonly stage: 'reading' | 'relaxation' | 'margins' | 'whole numbers' | 'simulation' | 'answer'
  readonly share: number
  readonly says: Phrase
}
