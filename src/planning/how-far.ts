import type { Phrase } from '../trade/index.ts'

/** Hears how far a long answer has come, and in what; it may throw to end it. */
export type HowFar = (share: number, says: Phrase) => void
