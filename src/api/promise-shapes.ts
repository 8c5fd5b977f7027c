import * as z from 'zod'
import { WeekText } from '../planning/index.ts'
import { BatchId, KindId, OrderId, Phrase, ProtocolId, StepId } from '../trade/index.ts'

/** What can be promised of one kind beside all orders, by week and as the earliest week for a number. */
export const CouldBePromised = z
  .object({
    kind: KindId,
    firstWeek: WeekText,
    /** By week: there as surely as asked, and there in one season of two. */
    numbers: z.array(z.number()).readonly(),
    middle: z.array(z.number()).readonly(),
    fromPlan: z.object({ week: WeekText, chance: z.number() }).readonly().nullable(),
    ifBegun: z
      .object({
        protocol: ProtocolId,
        week: WeekText,
        number: z.number(),
        readyWeek: WeekText,
        chance: z.number(),
      })
      .readonly()
      .nullable(),
    /** What stands in the way of beginning it earlier. */
    lack: Phrase.nullable(),
  })
  .readonly()
export type CouldBePromised = z.infer<typeof CouldBePromised>

/** What a start in another week or of another number does to the orders that it can touch, and what it lacks there. */
export const StartMoved = z
  .object({
    /** Whether it may begin in that week at all; if not, the chances are those without it. */
    isOpen: z.boolean(),
    /** Room, hands, wood or licence that the plan leaves too little of; the chances are those if it were found. */
    lacks: z.array(Phrase).readonly(),
    orders: z
      .array(z.object({ order: OrderId, before: z.number(), after: z.number() }).readonly())
      .readonly(),
  })
  .readonly()
export type StartMoved = z.infer<typeof StartMoved>

/** What still takes in a counted batch, and whether to work its failed stocks again. */
export const WorkAgain = z
  .object({
    batch: BatchId,
    step: StepId,
    undecided: z.number(),
    stillTake: z
      .object({ chance: z.number(), mean: z.number(), low: z.number(), high: z.number() })
      .readonly(),
    timedByBatches: z.number(),
    failed: z.number(),
    number: z.number(),
    trees: z.number(),
    worth: z.number(),
    cost: z.number(),
    lastWeek: WeekText.nullable(),
    helps: z.array(z.object({ order: OrderId, lastWeek: WeekText, trees: z.number() }).readonly()).readonly(),
  })
  .readonly()
export type WorkAgain = z.infer<typeof WorkAgain>
