import * as z from 'zod'
import { KindId, OrderId, ProtocolId } from '../../trade/index.ts'
import { Limit, WeekText } from '../plan.ts'

/** What would change if something were otherwise. */
export const WhatIf = z
  .object({
    /**
     * What the season would cost less, in the nursery's unit of money, late and missing trees counted in; below 0 where it
     * would cost more. Of the relaxation: whole trays aside.
     */
    saves: z.number(),
    /** What of that is paid by nobody: trees short, late or of another kind, and starts moved, would weigh so much less. */
    weighsLess: z.number(),
    /** Orders whose chance of being filled in time would be another. */
    orders: z
      .array(
        z.object({ order: OrderId, asked: z.number(), before: z.number(), after: z.number() }).readonly(),
      )
      .readonly(),
    limits: z.object({ gone: z.array(Limit).readonly(), added: z.array(Limit).readonly() }).readonly(),
    /** Starts that would be of another number, not at all or new. */
    starts: z
      .array(
        z
          .object({
            start: z.string(),
            kind: KindId,
            protocol: ProtocolId,
            week: WeekText,
            before: z.number(),
            after: z.number(),
          })
          .readonly(),
      )
      .readonly(),
  })
  .readonly()
export type WhatIf = z.infer<typeof WhatIf>
