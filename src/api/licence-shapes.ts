import * as z from 'zod'
import { CultivarId, EntryId, Licence } from '../trade/index.ts'

/** What was made of a protected cultivar, and what is due for it, by calendar year. */
export const LicenceRow = z
  .object({
    cultivar: CultivarId,
    cultivarName: z.string(),
    licence: Licence,
    years: z.array(
      z
        .object({
          year: z.number().int(),
          begun: z.number(),
          sent: z.number(),
          due: z.number(),
          begunBy: z.array(EntryId),
          sentBy: z.array(EntryId),
        })
        .readonly(),
    ),
    left: z.number().nullable(),
    alive: z.number(),
    isOver: z.boolean(),
  })
  .readonly()
export type LicenceRow = z.infer<typeof LicenceRow>
