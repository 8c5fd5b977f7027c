import * as z from 'zod'
import { type BatchSums, Day, Week } from '../record/index.ts'
import {
  BatchId,
  BenchId,
  CultivarId,
  EntryId,
  OrderId,
  Phrase,
  PlaceKind,
  Protocol,
  Sign,
  StepId,
} from '../trade/index.ts'
import { HoldRow } from './hold-shapes.ts'
import { LicenceRow } from './licence-shapes.ts'
import { BatchRow, QueryRow, ShownEntry } from './shapes.ts'

/** Plants alive expected so many days after the start: nine of ten such batches run between low and high. */
export const BandPoint = z
  .object({ day: z.number(), low: z.number(), middle: z.number(), high: z.number(), step: StepId })
  .readonly()
export type BandPoint = z.infer<typeof BandPoint>

/** What the plants of a batch add up from: first what came in, then what is there and what left. */
export const BATCH_SUMS = [
  'begun',
  'joinedIn',
  'returned',
  'found',
  'standing',
  'finished',
  'lost',
  'splitOff',
  'joinedAway',
  'used',
  'sent',
  'missing',
] as const satisfies readonly (keyof BatchSums)[]

/** One batch with all that was said of it. */
export const BatchView = z
  .object({
    row: BatchRow,
    /** The folded batch as `record/` has it. */
    portions: z.array(
      z
        .object({
          step: StepId,
          bench: BenchId.nullable(),
          since: Day,
          number: z.number(),
          taken: z.number(),
          countedOn: Day.nullable(),
        })
        .readonly(),
    ),
    steps: z.array(
      z
        .object({
          step: StepId,
          name: z.string(),
          sign: Sign,
          place: PlaceKind,
          entered: z.number(),
          left: z.number(),
          lost: z.number(),
          firstEntered: Day.nullable(),
        })
        .readonly(),
    ),
    counts: z.array(
      z
        .object({
          entry: EntryId,
          on: Day,
          day: z.number(),
          alive: z.number(),
          taken: z.number(),
          dead: z.number(),
          undecided: z.number(),
        })
        .readonly(),
    ),
    losses: z.array(z.object({ on: Day, step: StepId, number: z.number(), cause: z.string() }).readonly()),
    /** Where its plants came from and where they are: what came in adds up to what is there and what left. */
    sums: z.record(z.enum(BATCH_SUMS), z.number()),
    /** The finished plants, by bench and grade. */
    finished: z.array(
      z.object({ bench: BenchId.nullable(), grade: z.string(), number: z.number() }).readonly(),
    ),
    sent: z.array(z.object({ order: OrderId.nullable(), to: z.string(), number: z.number() }).readonly()),
    /** What was measured, graded and potted on, newest first; `says` as the entry does. */
    sizes: z.array(z.object({ entry: EntryId, on: Day, says: Phrase }).readonly()),
    /** What it may be, where its name is in doubt. */
    candidates: z.array(z.object({ cultivar: CultivarId, name: z.string() }).readonly()),
    from: z.array(
      z
        .object({
          what: z.enum(['mother', 'batch', 'bought', 'lot']),
          id: z.string(),
          name: z.string(),
          number: z.number(),
          as: z.string(),
        })
        .readonly(),
    ),
    into: z.array(z.object({ batch: BatchId, name: z.string(), number: z.number() }).readonly()),
    identity: Phrase,
    entries: z.array(ShownEntry),
    /** By number (a sum, or `entered`, `left` or `lost` with a step): the entries that have a part in it. */
    behind: z.record(z.string(), z.array(EntryId)),
    queries: z.array(QueryRow),
    /** Holds that stop it. */
    holds: z.array(HoldRow),
    /** Of its cultivars that are protected. */
    licences: z.array(LicenceRow),
    /** What is due next: by the plan, or by what the protocol says of the step that plants stand in; null when nothing is. */
    next: z
      .discriminatedUnion('by', [
        z
          .object({
            by: z.literal('plan'),
            task: Phrase,
            week: Week,
            /** Null where it does not fit into a day of its week. */
            day: Day.nullable(),
            number: z.number(),
          })
          .readonly(),
        z
          .object({
            by: z.literal('protocol'),
            step: StepId,
            /** When the step is over, if it takes as many days as is typical. */
            on: Day,
            days: z.number(),
            number: z.number(),
          })
          .readonly(),
      ])
      .nullable(),
    orders: z.array(z.object({ order: OrderId, chance: z.number() }).readonly()),
    protocol: Protocol,
  })
  .readonly()
export type BatchView = z.infer<typeof BatchView>
