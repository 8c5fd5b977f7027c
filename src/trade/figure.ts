import * as z from 'zod'

/** Where a number comes from. Shown beside every assumption that the program makes. */
export const Basis = z.enum([
  'published',
  'common practice',
  'from memory',
  'recorded here',
  'set by the nursery',
])
export type Basis = z.infer<typeof Basis>

const figureShape = {
  basis: Basis,
  /** Ids of `sources.json`; empty where no document confirms the figure. */
  sources: z.array(z.string()).readonly().default([]),
  /** Of a published figure whose source gives only the two ends. */
  typicalBasis: z.literal('interpolated').optional(),
  /** Of a published figure whose source gives only the middle. */
  rangeBasis: z.literal('from memory').optional(),
  note: z.string().optional(),
}

const ordered = (figure: { low: number; typical: number; high: number }) =>
  figure.low <= figure.typical && figure.typical <= figure.high

/** A number with its spread: nine of ten cases lie from `low` to `high`. The unit is in the key that holds it. */
export const Figure = z
  .object({ low: z.number(), typical: z.number(), high: z.number(), ...figureShape })
  .readonly()
  .refine(ordered, 'low, typical and high must rise')
export type Figure = z.infer<typeof Figure>

/** A figure that is a share of those entering, 0 to 1. */
export const ShareFigure = z
  .object({
    low: z.number().min(0).max(1),
    typical: z.number().min(0).max(1),
    high: z.number().min(0).max(1),
    ...figureShape,
  })
  .readonly()
  .refine(ordered, 'low, typical and high must rise')
export type ShareFigure = z.infer<typeof ShareFigure>

/** A rule of the trade without a document behind it. */
export const commonPractice = (low: number, typical: number, high: number, note?: string): Figure => ({
  low,
  typical,
  high,
  basis: 'common practice',
  sources: [],
  ...(note === undefined ? {} : { note }),
})
