import * as z from 'zod'
import { Basis } from './figure.ts'

const Month = z.number().int().min(1).max(12)

/**
 * When a protocol may begin. The condition of plant or weather comes first; the months are only its local
 * default, and a nursery corrects them. Months are calendar months at a northern (or southern) site.
 */
export const Window = z
  .object({
    condition: z.string(),
    northMonths: z.array(Month).readonly(),
    southMonths: z.array(Month).readonly(),
    basis: Basis,
    sources: z.array(z.string()).readonly().default([]),
    note: z.string().optional(),
  })
  .readonly()
export type Window = z.infer<typeof Window>

export type Hemisphere = 'north' | 'south'

export const windowMonths = (window: Window, hemisphere: Hemisphere): readonly number[] =>
  hemisphere === 'north' ? window.northMonths : window.southMonths
