import type { Margins, Solution } from './season-model.ts'

/** By order, what a solution delivers by the planned week. */
export function deliveredInTime(
  { plannedNumber, plannedDueWeek }: Margins,
  { deliveries }: Pick<Solution, 'deliveries'>,
): Float64Array {
  const inTime = new Float64Array(plannedNumber.length)
  for (const { order, week, number } of deliveries)
    if (week <= plannedDueWeek[order]!) inTime[order]! += number
  return inTime
}
