import * as z from 'zod'
import { Setting } from '../protocol.ts'
import { MethodId } from '../vocabulary.ts'
import { GuideCaution } from './caution.ts'
import { Drawing } from './drawing.ts'

/** One move of the hands: what to do, what to look at while doing it, and why it matters. */
export const GuideStep = z
  .object({ drawing: Drawing, act: z.string().min(1), look: z.string().min(1), why: z.string().min(1) })
  .readonly()
export type GuideStep = z.infer<typeof GuideStep>

/** How a method is done with the hands. Its words are common practice; each figure says where it comes from. */
export const Guide = z
  .object({
    method: MethodId,
    /** The step that one knows the method by. */
    pictured: Drawing,
    summary: z.string().min(1),
    goodFor: z.string().min(1),
    notFor: z.string().min(1),
    needs: z
      .object({
        tools: z.array(z.string().min(1)).min(1).readonly(),
        wood: z.string().min(1),
        /** Null where nothing is worked upon a stock. */
        stock: z.string().min(1).nullable(),
        season: z.string().min(1),
      })
      .readonly(),
    steps: z.array(GuideStep).min(3).max(6).readonly(),
    /** Measures of the hand that the facts of the method do not hold. */
    measures: z.array(Setting).readonly(),
    failures: z
      .array(
        z
          .object({ sign: z.string().min(1), causes: z.array(z.string().min(1)).min(1).readonly() })
          .readonly(),
      )
      .min(2)
      .readonly(),
    /** Weeks are counted from the act; common practice, and the plan goes by the days of the protocol. */
    aftercare: z
      .array(
        z
          .object({
            fromWeek: z.number().int().min(0),
            toWeek: z.number().int().min(0),
            care: z.string().min(1),
          })
          .readonly()
          .refine(({ fromWeek, toWeek }) => fromWeek <= toWeek, 'weeks must rise'),
      )
      .min(2)
      .readonly(),
    cautions: z.array(GuideCaution).min(1).readonly(),
  })
  .readonly()
export type Guide = z.infer<typeof Guide>
