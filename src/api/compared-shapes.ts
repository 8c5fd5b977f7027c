import * as z from 'zod'
import { MethodId, PersonId, ProtocolId, StepId } from '../trade/index.ts'

const members = <Member extends z.ZodType>(member: Member) =>
  z
    .object({
      member,
      name: z.string(),
      /** Share of the plants compared that would have come through, had all been like this one's. */
      share: z.number(),
      low: z.number(),
      high: z.number(),
      batches: z.number(),
      entered: z.number(),
      survived: z.number(),
    })
    .readonly()

/** What may be said of the best against the last. */
const Finding = z
  .object({
    kind: z.enum(['cannot-tell-yet', 'no-difference-shown', 'probably-different', 'hardly-chance']),
    chanceFirstBetter: z.number(),
    plantsMore: z.number(),
  })
  .readonly()

/** People in each method and months in each step beside each other: kinds, steps and years allowed for. Best first. */
export const RatesCompared = z
  .object({
    people: z.array(
      z
        .object({
          method: MethodId,
          methodName: z.string(),
          members: z.array(members(PersonId)),
          finding: Finding,
        })
        .readonly(),
    ),
    months: z.array(
      z
        .object({
          protocol: ProtocolId,
          protocolName: z.string(),
          step: StepId,
          stepName: z.string(),
          members: z.array(members(z.number().int())),
          finding: Finding,
        })
        .readonly(),
    ),
  })
  .readonly()
export type RatesCompared = z.infer<typeof RatesCompared>
