import { phrase } from '../../trade/index.ts'
/**
 * Minutes for which one would rather not have another batch, beside its set-up: it has a label and a card of its own, is
 * counted and potted on its own, and its pots stand apart. Common practice, no source.
 */
export const BATCH_MINUTES = 30

/** What a plan says of it. */
export const batchMinutesSaid = phrase(
  'One batch fewer is taken to be worth {minutes} minutes beside its own work, for its bench, label, card and counts: common practice, no source. It is weighed and not paid.',
  { minutes: BATCH_MINUTES },
)
