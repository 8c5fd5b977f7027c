import * as z from 'zod'
import { WeekText } from '../planning/index.ts'
import { Day } from '../record/index.ts'
import { BatchId, BenchId, Material, MaterialLotId, MotherId, PlaceKind } from '../trade/index.ts'
import { tableOf } from './table-shape.ts'

/** A bench on which more is to stand than it has room for: the first such week with its numbers, and all of them. */
export const FullBench = z
  .object({
    bench: BenchId,
    week: WeekText,
    squareMetres: z.number(),
    areaSquareMetres: z.number(),
    weeks: z.array(WeekText).readonly(),
  })
  .readonly()
export type FullBench = z.infer<typeof FullBench>

/**
 * Takes that do worse than before: whose, since when, how likely something is wrong, and by what. Of many batches the
 * steps are those that lost most against what was expected.
 */
export const Slumped = z
  .object({
    of: z.discriminatedUnion('by', [
      z.object({ by: z.literal('step'), protocolName: z.string(), stepName: z.string() }).readonly(),
      z.object({ by: z.literal('species'), methodName: z.string(), speciesName: z.string() }).readonly(),
      z.object({ by: z.literal('person'), methodName: z.string(), personName: z.string() }).readonly(),
    ]),
    since: Day,
    chance: z.number(),
    oddsRatio: z.number(),
    batches: z.number(),
    entered: z.number(),
    survived: z.number(),
    expectedShare: z.number(),
    steps: z
      .array(
        z
          .object({
            batch: BatchId,
            name: z.string(),
            kindName: z.string(),
            stepName: z.string(),
            entered: z.number(),
            survived: z.number(),
            expectedShare: z.number(),
            low: z.number(),
            high: z.number(),
          })
          .readonly(),
      )
      .readonly(),
  })
  .readonly()
export type Slumped = z.infer<typeof Slumped>

/** A batch that stays in a step longer than others did. */
export const LateBatch = z
  .object({
    batch: BatchId,
    name: z.string(),
    kindName: z.string(),
    stepName: z.string(),
    number: z.number(),
    days: z.number(),
    usualDays: z.number(),
    mostDays: z.number(),
  })
  .readonly()

/** A count that is lower than was to be expected. */
export const PoorTake = z
  .object({
    batch: BatchId,
    name: z.string(),
    kindName: z.string(),
    stepName: z.string(),
    on: Day,
    taken: z.number(),
    counted: z.number(),
    expectedShare: z.number(),
    chance: z.number(),
  })
  .readonly()

/** What wants eyes before it costs trees, each with the numbers behind it. */
export const NeedsLook = z
  .object({
    late: tableOf(LateBatch),
    poor: tableOf(PoorTake),
    slumps: z.array(Slumped),
    stale: z.array(
      z
        .object({
          lot: MaterialLotId,
          mother: MotherId,
          motherName: z.string(),
          material: Material,
          left: z.number(),
          goodUntil: Day,
          daysLeft: z.number(),
        })
        .readonly(),
    ),
    /** Places whose load in a bad season passes what they hold: the first such week of each. */
    full: z.array(
      z
        .object({ place: PlaceKind, week: WeekText, squareMetres: z.number(), capacity: z.number() })
        .readonly(),
    ),
    /** Benches that overflow within the quarter, this week by the entries, later as expected. */
    fullBenches: z.array(FullBench),
  })
  .readonly()
export type NeedsLook = z.infer<typeof NeedsLook>
