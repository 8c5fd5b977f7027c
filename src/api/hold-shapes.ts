import * as z from 'zod'
import { Day } from '../record/index.ts'
import { EntryId, PersonId } from '../trade/index.ts'

/** A hold, standing or released. */
export const HoldRow = z
  .object({
    id: EntryId,
    what: z.enum(['mother', 'batch', 'bench', 'lineage']),
    /** Of a lineage: what is at its root. */
    of: z.object({ what: z.enum(['mother', 'batch', 'bench']), id: z.string(), name: z.string() }).readonly(),
    why: z.string(),
    since: Day,
    by: PersonId.nullable(),
    released: z.object({ on: Day, why: z.string(), by: PersonId.nullable() }).readonly().nullable(),
  })
  .readonly()
export type HoldRow = z.infer<typeof HoldRow>
