import type { ProtocolSummary } from '../../../api/index.ts'
import { windowNow } from '../../pictures/window-weeks.ts'

const MOST = 6
/** Told of so many weeks ahead. Our choice. */
const WEEKS_AHEAD = 4

export interface NearWindow {
  readonly protocol: ProtocolSummary
  /** The last day of the last week to begin, or the first day of the first one. */
  readonly day: string
}

const firstOf = (windows: readonly NearWindow[]): readonly NearWindow[] =>
  windows.toSorted((a, b) => a.day.localeCompare(b.day)).slice(0, MOST)

/** Protocols that may begin this week and soon no more, and those that soon may; the first to close or open first. */
export const nearWindows = (
  protocols: readonly ProtocolSummary[],
  today: string,
): { readonly closing: readonly NearWindow[]; readonly opening: readonly NearWindow[] } => {
  const near = protocols
    .map(protocol => ({ protocol, now: windowNow(protocol.window.months, today) }))
    .filter(({ now }) => !(now.isOpen && now.closes === null) && now.weeks <= WEEKS_AHEAD)
  return {
    closing: firstOf(
      near.flatMap(({ protocol, now }) =>
        now.isOpen && now.closes !== null ? [{ protocol, day: now.closes }] : [],
      ),
    ),
    opening: firstOf(near.flatMap(({ protocol, now }) => (now.isOpen ? [] : [{ protocol, day: now.opens }]))),
  }
}
