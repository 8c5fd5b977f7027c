import * as z from 'zod'
import { weeksInYear } from '../science/index.ts'
import {
  BenchId,
  CultivarId,
  KindId,
  Material,
  MotherId,
  OrderId,
  PersonId,
  PlaceKind,
  Skill,
} from '../trade/index.ts'

/** A day is text, `2026-05-04`, the nursery's own date. */
export const Day = z.iso.date()
export type Day = z.infer<typeof Day>

/** A week as ISO 8601 writes it, `2026-W19`, that its year has. */
export const Week = z.string().refine(text => {
  const [, year, week] = /^(\d{4})-W(\d{2})$/.exec(text) ?? []
  return Number(week) >= 1 && Number(week) <= weeksInYear(Number(year))
}, 'a week is written as 2026-W19, and the year must have it')

const Span = z.object({ from: Day, to: Day }).readonly()
const Metres = z.number().min(0)
const Position = z.object({ xMetres: Metres, yMetres: Metres }).readonly()

/** Where the nursery lies: weeks, months and windows follow from it. */
export const Site = z
  .object({
    name: z.string().min(1),
    latitudeDegrees: z.number().min(-90).max(90),
    longitudeDegrees: z.number().min(-180).max(180),
    heightMetres: z.number().default(0),
  })
  .readonly()
export type Site = z.infer<typeof Site>

export const Bench = z
  .object({
    id: BenchId,
    name: z.string().min(1),
    place: PlaceKind,
    areaSquareMetres: z.number().min(0),
    lengthMetres: Metres.nullable().default(null),
    widthMetres: Metres.nullable().default(null),
    position: Position.nullable().default(null),
    /** Days on which part or all of it cannot be used. */
    closed: z
      .array(
        z.object({ from: Day, to: Day, areaSquareMetres: z.number().min(0), why: z.string() }).readonly(),
      )
      .readonly()
      .default([]),
  })
  .readonly()
export type Bench = z.infer<typeof Bench>

export const Person = z
  .object({
    id: PersonId,
    name: z.string().min(1),
    skills: z.array(Skill).readonly(),
    hoursPerWeek: z.number().min(0).max(120),
    overtimeHoursPerWeek: z.number().min(0).max(60).default(0),
    /** 1 is the protocol's own pace; 0.5 takes twice as long. */
    pace: z.number().positive().max(10).default(1),
    away: z.array(Span).readonly().default([]),
  })
  .readonly()
export type Person = z.infer<typeof Person>

/** What a mother tree may give of one material, in which calendar months, without harm to it. */
export const Supply = z
  .object({
    material: Material,
    months: z.array(z.number().int().min(1).max(12)).readonly(),
    perYear: z.number().min(0),
    perWeek: z.number().min(0).nullable().default(null),
  })
  .readonly()
export type Supply = z.infer<typeof Supply>

export const Mother = z
  .object({
    id: MotherId,
    name: z.string().min(1),
    cultivar: CultivarId,
    /** For rootstock stool beds and seed trees: the kind it gives. */
    rootstockKind: KindId.nullable().default(null),
    block: z.string().default(''),
    position: Position.nullable().default(null),
    planted: Day.nullable().default(null),
    /** Where its wood came from and who verified it. */
    provenance: z.string().default(''),
    /** Who saw that it is true to name, and how. */
    verifiedBy: z.string().optional(),
    heightMetres: z.number().positive().optional(),
    /**
     * Passport data by the names of the standard.
     * @source FAO and Bioversity International, Multi-crop passport descriptors V.2.1, 2015
     */
    passport: z.record(z.string(), z.string()).readonly().optional(),
    gives: z.array(Supply).readonly(),
  })
  .readonly()
export type Mother = z.infer<typeof Mother>

/** A kind that the order would take, and how much less it is worth to the buyer than the one asked for. */
export const Accepted = z.object({ kind: KindId, lessWorth: z.number().min(0).default(0) }).readonly()

export const Order = z
  .object({
    id: OrderId,
    buyer: z.string(),
    kind: KindId,
    /** Other kinds accepted instead. */
    instead: z.array(Accepted).readonly().default([]),
    number: z.number().int().min(1),
    /** Not wanted before this day. */
    earliest: Day,
    due: Day,
    /** After this day they are not taken at all. */
    latest: Day,
    /** Chance asked that the whole number is ready by `due`, 0.5 to 0.99. */
    sure: z.number().min(0.5).max(0.99),
    /** For each tree, in the nursery's unit of money; null: the kind's price. */
    price: z.number().min(0).nullable().default(null),
    placed: Day.nullable().default(null),
    note: z.string().default(''),
  })
  .readonly()
  .refine(o => o.earliest <= o.due && o.due <= o.latest, 'earliest, due and latest must rise')
export type Order = z.infer<typeof Order>

/** What costs money when the plan bends: overtime, lent area, lateness, shortage. */
export const Prices = z
  .object({
    hour: z.number().min(0).default(20),
    overtimeHour: z.number().min(0).default(32),
    /** An extra square metre for a week, by kind of place; a place not named cannot be extended. */
    extraSquareMetreWeek: z.partialRecord(PlaceKind, z.number().min(0)).default({}),
    squareMetreWeek: z.number().min(0).default(0.4),
    /** Of the order's price, lost for each week late and for each tree never delivered. */
    latePerWeekShare: z.number().min(0).default(0.05),
    shortShare: z.number().min(0).default(1.5),
  })
  .readonly()
export type Prices = z.infer<typeof Prices>

export const Settings = z
  .object({
    units: z.enum(['metric', 'us']).default('metric'),
    language: z.string().default('en'),
    /** A start already accepted moves only when that saves more than this. */
    worthOfMoving: z.number().min(0).default(50),
  })
  .readonly()
export type Settings = z.infer<typeof Settings>
