import { canonicalJson } from './entry-line.ts'
import type { Nursery } from './state.ts'

/** Rises with every change of the rules or the shape of the folded state, so that an old one is not taken for new. */
export const foldVersion = 2

type Written = { readonly map: readonly (readonly [unknown, unknown])[] } | { readonly plain: unknown }

const write = (value: unknown): Written => (value instanceof Map ? { map: [...value] } : { plain: value })
const read = (written: Written): unknown => ('map' in written ? new Map(written.map) : written.plain)

const each = (record: object, change: (value: never) => unknown): object =>
  Object.fromEntries(Object.entries(record).map(([key, value]) => [key, change(value as never)]))

/** The folded state as text in ASCII letters only, which is read back the fastest. */
export const nurseryToText = (nursery: Nursery): string =>
  JSON.stringify({ ...each(nursery, write), former: each(nursery.former, write) }).replace(
    /[\u007f-\uffff]/g,
    letter => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`,
  )

/** Reads back what `nurseryToText` of the same `foldVersion` wrote. */
export function nurseryFromText(text: string): Nursery {
  const { former, ...rest } = JSON.parse(text) as { readonly former: object }
  return { ...each(rest, read), former: each(former, read) } as Nursery
}

/** The folded state as text in which nothing depends on the order of its maps: alike only if the states are. */
export const canonicalNursery = (nursery: Nursery): string => {
  const sorted = (value: unknown) => (value instanceof Map ? Object.fromEntries(value) : value)
  return canonicalJson({ ...each(nursery, sorted), former: each(nursery.former, sorted) })
}
