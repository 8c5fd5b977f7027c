import type { ProtocolSummary } from '../../../api/index.ts'

const MOST = 6

/** Protocols that may begin this month and no more in the next. */
export const closingWindows = (
  protocols: readonly ProtocolSummary[],
  today: string,
): readonly ProtocolSummary[] => {
  const month = Number(today.slice(5, 7))
  const next = (month % 12) + 1
  return protocols
    .filter(({ window: { months } }) => months.includes(month) && !months.includes(next))
    .slice(0, MOST)
}
