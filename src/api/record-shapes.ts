import * as z from 'zod'
import { Day } from '../record/index.ts'
import {
  Basis,
  BatchId,
  BenchId,
  EntryId,
  KindId,
  Material,
  MaterialLotId,
  MethodMark,
  OrderId,
  PersonId,
  StepId,
} from '../trade/index.ts'
import { HoldRow } from './hold-shapes.ts'
import { LicenceRow } from './licence-shapes.ts'
import { MotherRow, QueryRow, ShownEntry } from './shapes.ts'

/** Wood, cuttings or seed in hand. */
export const LotRow = z
  .object({
    lot: MaterialLotId,
    material: Material,
    on: Day,
    number: z.number(),
    /** Neither used nor thrown away. */
    left: z.number(),
    stored: z.string(),
    goodUntil: Day.nullable(),
    /** All that was said of it. */
    entries: z.array(ShownEntry),
  })
  .readonly()
export type LotRow = z.infer<typeof LotRow>

/** One mother tree with all that was said of her. */
export const MotherView = z
  .object({
    row: MotherRow,
    /** The cultivar as the code for cultivated plants has it written. */
    writing: z.string(),
    tests: z.array(
      z
        .object({
          entry: EntryId,
          on: Day,
          test: z.string(),
          result: z.enum(['clean', 'positive', 'unclear']),
          laboratory: z.string(),
          reference: z.string(),
          validUntil: Day.nullable(),
          /** The validity has run out. */
          isOver: z.boolean(),
        })
        .readonly(),
    ),
    observations: z.array(z.object({ on: Day, bbch: z.string().nullable(), health: z.string() }).readonly()),
    lots: z.array(LotRow),
    /** How this fruit's wood is kept, and how many days it is good. */
    keeping: z.object({ how: z.string(), days: z.number(), basis: Basis }).readonly().nullable(),
    /** How many days its seed is good, and how it must be kept where the facts say so. */
    seedKeeping: z.object({ how: z.string(), days: z.number(), basis: Basis }).readonly().nullable(),
    /** What she may still give this season, by what she gives. */
    season: z.array(
      z
        .object({
          material: Material,
          season: z.number().int(),
          months: z.array(z.number().int()).readonly(),
          perWeek: z.number().nullable(),
          given: z.number(),
          mayGive: z.number(),
          /** Those of `entries` by which it was given. */
          givenBy: z.array(EntryId),
        })
        .readonly(),
    ),
    licence: LicenceRow.nullable(),
    holds: z.array(HoldRow),
    queries: z.array(QueryRow),
    entries: z.array(ShownEntry),
  })
  .readonly()
export type MotherView = z.infer<typeof MotherView>

/** Where something found in a mother tree or a batch may have got to. */
export const AffectedView = z
  .object({
    of: z.object({ what: z.enum(['mother', 'batch']), id: z.string(), name: z.string() }).readonly(),
    carriers: z.array(
      z
        .object({
          batch: BatchId,
          name: z.string(),
          kindName: z.string(),
          mark: MethodMark,
          generation: z.number().int(),
          came: z.number(),
          since: Day,
          alive: z.number(),
          finished: z.number(),
          sent: z.number(),
          benches: z.array(BenchId),
          onHold: z.boolean(),
        })
        .readonly(),
    ),
    /** Who is to be written to: one row for an order, or for a buyer of trees that went out without one. */
    letters: z.array(
      z
        .object({
          order: OrderId.nullable(),
          buyer: z.string(),
          kindNames: z.array(z.string()),
          wanted: z.number().nullable(),
          due: Day.nullable(),
          /** Trees that they have and that may carry it, less those that came back. */
          sent: z.number(),
          sentBy: z.array(EntryId),
          lastSent: Day.nullable(),
          /** Trees of batches that carry it, by the latest plan. */
          promised: z.number(),
          /** Trees that the latest plan means to make with its wood. */
          planned: z.number(),
          batches: z.array(z.string()),
          /** Trees of a kind that is held wait to be sent, and none of them is promised by the plan. */
          isWaiting: z.boolean(),
        })
        .readonly(),
    ),
    sharedBenches: z.array(
      z
        .object({ batch: BatchId, name: z.string(), bench: BenchId, from: Day, to: Day.nullable() })
        .readonly(),
    ),
    sharedBlades: z.array(
      z
        .object({
          what: z.enum(['mother', 'lot', 'batch', 'bought']),
          id: z.string(),
          name: z.string(),
          person: PersonId,
          on: Day,
        })
        .readonly(),
    ),
    /** Holds that stop it or any batch that carries it. */
    holds: z.array(HoldRow),
  })
  .readonly()
export type AffectedView = z.infer<typeof AffectedView>

/** What the record has on a bench now, line by line, to be counted against. */
export const BenchStand = z
  .object({
    bench: BenchId,
    name: z.string(),
    lastCounted: Day.nullable(),
    lines: z.array(
      z
        .object({
          batch: BatchId,
          name: z.string(),
          kind: KindId,
          kindName: z.string(),
          mark: MethodMark,
          step: StepId,
          stepName: z.string(),
          number: z.number(),
          /** The entries that the number comes from. */
          behind: z.array(EntryId),
          onHold: z.boolean(),
        })
        .readonly(),
    ),
    holds: z.array(HoldRow),
  })
  .readonly()
export type BenchStand = z.infer<typeof BenchStand>
