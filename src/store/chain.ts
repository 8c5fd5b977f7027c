import { createHash } from 'node:crypto'

/** The hash before the first entry. */
export const noHash = '0'.repeat(64)

/** Chains an entry to the one before: changing, moving or taking out any of them breaks every hash after it. */
export const chainHash = (before: string, receivedAt: string, line: string): string =>
  createHash('sha256').update(`${before}\n${receivedAt}\n${line}`).digest('hex')
