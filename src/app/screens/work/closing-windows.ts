import type { ProtocolSummary } from '../../../api/index.ts'
import { windowNow } from '../../pictures/window-weeks.ts'

const MOST = 6
/** Warned of so many weeks ahead. Our choice. */
const WEEKS_LEFT = 4

/** Protocols that may begin this week and soon no more, with the last day on which they may; the first to close first. */
export const closingWindows = (
  protocols: readonly ProtocolSummary[],
  today: string,
): readonly { readonly protocol: ProtocolSummary; readonly closes: string }[] =>
  protocols
    .flatMap(protocol => {
      const now = windowNow(protocol.window.months, today)
      return now.isOpen && now.closes !== null && now.weeks <= WEEKS_LEFT
        ? [{ protocol, closes: now.closes }]
        : []
    })
    .sort((a, b) => a.closes.localeCompare(b.closes))
    .slice(0, MOST)
