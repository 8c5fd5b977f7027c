import * as z from 'zod'
import { BatchId, BenchId, MotherId } from '../trade/index.ts'
import { BandPoint, BatchView } from './batch-shapes.ts'
import { BenchStand, MotherView } from './record-shapes.ts'

/** So many of a sort are answered at once, that nobody else waits for long. */
const MOST_AT_ONCE = 25

/** Batches, mother trees and benches that a device wants to have at hand where no server answers. */
export const AheadAsked = z
  .object({
    batches: z.array(BatchId).max(MOST_AT_ONCE),
    mothers: z.array(MotherId).max(MOST_AT_ONCE),
    benches: z.array(BenchId).max(MOST_AT_ONCE),
  })
  .readonly()
export type AheadAsked = z.infer<typeof AheadAsked>

/** Those of them that there are, each as its own page has it. */
export const Ahead = z
  .object({
    batches: z.array(BatchView),
    /** In what the counts of those batches are expected to run. */
    expected: z.array(z.object({ batch: BatchId, band: z.array(BandPoint) }).readonly()),
    mothers: z.array(MotherView),
    benches: z.array(BenchStand),
  })
  .readonly()
export type Ahead = z.infer<typeof Ahead>
