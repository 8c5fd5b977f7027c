import { EntryId } from '../trade/index.ts'
import { Body, type Entry } from './entry.ts'

/** Entries for tests and examples, told one after the other: each body is checked, and its id rises. */
export function teller(): (on: string, body: object) => Entry {
  let told = 0
  return (on, body) => {
    told += 1
    const id = EntryId.parse(`019e0000-0000-7000-8000-${String(told).padStart(12, '0')}`)
    return { id, on, at: null, by: null, device: 'example', body: Body.parse(body) as Entry['body'] }
  }
}

/** A start with everything that a test does not speak of left at its plainest. */
export const startOf = (
  batch: string,
  number: number,
  sources: readonly object[] = [],
  more: object = {},
): object => ({
  kind: 'batch-started/1',
  batch,
  name: batch,
  kindOfTree: 'tree',
  protocol: 'cuttings',
  number,
  sources,
  bench: null,
  workedBy: [],
  ...more,
})
