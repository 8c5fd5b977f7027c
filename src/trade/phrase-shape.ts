import * as z from 'zod'
import type { Phrase as Said } from './phrase.ts'

export type Phrase = Said

/** Stands by itself: who only says phrases need not fetch the library that checks shapes. */
export const Phrase: z.ZodType<Phrase> = z
  .object({ says: z.string(), of: z.record(z.string(), z.any()) })
  .readonly()
