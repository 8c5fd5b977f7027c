import type { CapacityTried } from './capacity-what-if.tsx'

/** What is tried of which load. */
export interface LoadTried {
  readonly load: string
  readonly of: CapacityTried
}

/** As it stands in the address of the page. */
export const triedAs = ({ load, of: { able, draft } }: LoadTried): string =>
  [load, able, draft.value, ...(draft.days === null ? [] : [draft.days.from, draft.days.to])]
    .map(part => encodeURIComponent(part))
    .join('/')

/** Reads it back; null where it is not so written. */
export const triedIn = (text: string): LoadTried | null => {
  const [load, able, value, from, to] = text.split('/').map(part => readPart(part))
  const number = Number(value)
  if (!load || !able || value === undefined || !Number.isFinite(number) || number < 0) return null
  return {
    load,
    of: {
      able,
      draft: { value: number, days: from === undefined || to === undefined ? null : { from, to } },
    },
  }
}

const readPart = (part: string): string => {
  try {
    return decodeURIComponent(part)
  } catch {
    return ''
  }
}
