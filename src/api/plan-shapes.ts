import * as z from 'zod'
import { OrderForecast, Plan } from '../planning/index.ts'
import { BatchId, EntryId, Phrase } from '../trade/index.ts'

/** The planning job: one at a time, stoppable, with what is going on in words. */
export const PlanJob = z
  .object({
    id: z.string(),
    state: z.enum(['running', 'done', 'stopped', 'failed']),
    stage: z.string(),
    share: z.number(),
    says: Phrase,
    why: z.string().nullable(),
  })
  .readonly()
export type PlanJob = z.infer<typeof PlanJob>

/** What every screen knows of the latest plan. Its parts are asked for by the screen that shows them. */
export const PlanHead = Plan.unwrap()
  .pick({ id: true, madeOn: true, throughSeq: true, firstWeek: true, outcome: true })
  .extend({
    /** Hours of all hands together by week, and whether those of one skill are more than there are. */
    hands: z.array(z.object({ hours: z.number(), isOver: z.boolean() }).readonly()),
  })
  .readonly()
export type PlanHead = z.infer<typeof PlanHead>

export const PlanState = z
  .object({
    plan: PlanHead.nullable(),
    /** The log has grown since the plan was made. */
    entriesSince: z.number(),
    accepted: z.string().nullable(),
    /** The entry by which it was accepted: struck, the plan before it is the accepted one again. */
    acceptedBy: EntryId.nullable(),
    job: PlanJob.nullable(),
  })
  .readonly()
export type PlanState = z.infer<typeof PlanState>

/** The plan as the season is drawn. Its tasks are asked for by the week, the ladders of an order by the order. */
export const SeasonPlan = Plan.unwrap()
  .pick({
    id: true,
    madeOn: true,
    throughSeq: true,
    firstWeek: true,
    weeks: true,
    outcome: true,
    cost: true,
    costParts: true,
    gapShare: true,
    seasonsSimulated: true,
    starts: true,
    plantings: true,
    bought: true,
    overtime: true,
    extraArea: true,
    loads: true,
    limits: true,
    changes: true,
    moved: true,
    assumed: true,
  })
  .extend({
    orders: z.array(
      OrderForecast.unwrap()
        .pick({ order: true, asked: true, chance: true })
        .extend({
          /** Batches that stand and help to fill it. */
          batches: z.array(BatchId),
        })
        .readonly(),
    ),
  })
  .readonly()
export type SeasonPlan = z.infer<typeof SeasonPlan>
