import * as z from 'zod'
import { SpeciesId, TreeForm } from '../trade/index.ts'
import { ClimateSaid } from './climate/climate.ts'

/** A figure that the adviser assumes and that may be overruled. */
export const AssumptionKey = z.enum([
  'yearsToFruitSeedling',
  'yearsToFruitClonal',
  'yearsFirstToFull',
  'fullCropKgPerSquareMetre',
  'trueFromSeedShare',
  'worthKeepingShare',
  'cropAloneShare',
  'reworkTakeShare',
  'minYoungCelsius',
  'minMatureCelsius',
  'chillHours',
  'warmestMonthCelsius',
  'heightMetres',
  'rowSpacingMetres',
  'inRowSpacingMetres',
  'fruitWorthPerKg',
  'plantingCost',
  'stakeCost',
  'reworkCost',
  'carePerSquareMetre',
  'careLeastPerTree',
])
export type AssumptionKey = z.infer<typeof AssumptionKey>

/** What the nursery can hand over of one form of the fruit, and when. Plain data: a price and a promise. */
export const Offer = z
  .object({
    form: TreeForm,
    /** Id of the usual rootstock it stands on, where that is known. */
    rootstock: z.string().nullable().default(null),
    label: z.string().min(1),
    price: z.number().min(0),
    /** Years until it can be had: 0 for a tree in stock. */
    waitYears: z.number().min(0).max(15).default(0),
    /** Chance that it is there by then. */
    chance: z.number().min(0).max(1).default(1),
  })
  .readonly()
export type Offer = z.infer<typeof Offer>

export const Ground = z.discriminatedUnion('kind', [
  z
    .object({
      kind: z.literal('ground'),
      exposure: z.enum(['sheltered', 'open', 'windy']).default('open'),
      staked: z.boolean().default(true),
      /** Young trees are covered on frosty nights. */
      covered: z.boolean().default(true),
    })
    .readonly(),
  z
    .object({
      kind: z.literal('container'),
      litres: z.number().min(1).max(2000),
      winter: z.enum(['outside', 'by a warm wall', 'moved inside']).default('outside'),
    })
    .readonly(),
])
export type Ground = z.infer<typeof Ground>

export const Amount = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('trees'), trees: z.number().int().min(1).max(100_000) }).readonly(),
  z.object({ kind: z.literal('area'), squareMetres: z.number().min(1).max(10_000_000) }).readonly(),
])
export type Amount = z.infer<typeof Amount>

/** What a buyer asks: which fruit, where, how many, and what is wished. */
export const Question = z
  .object({
    species: SpeciesId,
    /** A named fruit, or any that is worth eating. */
    wanted: z.enum(['named', 'any']).default('named'),
    cultivar: z.string().max(120).default(''),
    amount: Amount.default({ kind: 'trees', trees: 1 }),
    ground: Ground.default({ kind: 'ground', exposure: 'open', staked: true, covered: true }),
    climate: ClimateSaid,
    yearsAhead: z.number().int().min(1).max(40).default(15),
    /** A partner for pollination: there already, planted with it, or none. */
    partner: z.enum(['near', 'planted too', 'none']).default('planted too'),
    wouldRework: z.boolean().default(false),
    heightAtMostMetres: z.number().min(0.3).max(40).nullable().default(null),
    firstFruitWithinYears: z.number().min(0.5).max(40).nullable().default(null),
    spendAtMost: z.number().min(0).nullable().default(null),
    /** What money earns elsewhere in a year, as a share. */
    interest: z.number().min(0).max(0.5).default(0.05),
    offers: z.array(Offer).max(200).readonly().default([]),
    /** Only what is on offer may lead; the rest is shown beside it. */
    onlyOffered: z.boolean().default(false),
    /** Assumptions overruled, by their middle value. */
    set: z.partialRecord(AssumptionKey, z.number()).readonly().default({}),
  })
  .readonly()
export type Question = z.infer<typeof Question>
