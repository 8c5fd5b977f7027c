import * as z from 'zod'
import { Basis } from '../figure.ts'

/** A statement about a fruit or a method, with where it comes from. */
export const TextFact = z
  .object({ text: z.string().min(1), basis: Basis, sources: z.array(z.string()).readonly().default([]) })
  .readonly()
export type TextFact = z.infer<typeof TextFact>
