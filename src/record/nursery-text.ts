import { canonicalJson } from './entry-line.ts'
import { pack, unpack } from './packed.ts'
import type { Nursery } from './state.ts'

/** Rises with every change of the rules or the shape of the folded state, so that an old one is not taken for new. */
export const foldVersion = 17

const each = (record: object, change: (value: never) => unknown): object =>
  Object.fromEntries(Object.entries(record).map(([key, value]) => [key, change(value as never)]))

/** The folded state as bytes, for a fast start. */
export const nurseryToBytes = (nursery: Nursery): Uint8Array => pack(nursery)

/** Reads back what `nurseryToBytes` of the same `foldVersion` wrote. */
export const nurseryFromBytes = (bytes: Uint8Array): Nursery => unpack(bytes) as Nursery

/** The folded state as text in which nothing depends on the order of its maps: alike only if the states are. */
export const canonicalNursery = (nursery: Nursery): string => {
  const sorted = (value: unknown) => (value instanceof Map ? Object.fromEntries(value) : value)
  return canonicalJson({ ...each(nursery, sorted), former: each(nursery.former, sorted) })
}
