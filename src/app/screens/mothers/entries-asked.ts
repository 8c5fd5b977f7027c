import type { ShownEntry } from '../../../api/index.ts'

/** A number that was asked for the entries behind it, in words, and these. */
export interface EntriesAsked {
  readonly says: string
  readonly entries: readonly ShownEntry[]
}
