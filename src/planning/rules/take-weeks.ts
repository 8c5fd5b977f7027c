import type { DeliveryColumn, RootstockUseColumn } from '../model/season-model.ts'
import type { Season } from '../season.ts'

/**
 * The weeks in which plants of a kind can be taken, rising: stock is balanced in these weeks alone, for between them
 * nothing can leave. Where finished plants stand now, this week is one of them, so that they may be thrown out.
 */
export function takeWeeks(
  season: Season,
  kind: number,
  deliveries: readonly DeliveryColumn[],
  uses: readonly RootstockUseColumn[],
): Int32Array {
  const weeks = new Set<number>()
  for (const { week } of deliveries) weeks.add(week)
  for (const { useWeek } of uses) if (useWeek < season.weeks) weeks.add(useWeek)
  if (weeks.size > 0 && season.batches.some(batch => batch.kind === kind && batch.ready[0]! > 0)) weeks.add(0)
  return Int32Array.from(weeks).sort()
}

/** For each week, the index of the first take week in or after it; −1 after the last. */
export function nextTake(weeks: number, takes: Int32Array): Int32Array {
  const next = new Int32Array(weeks).fill(-1)
  let index = takes.length - 1
  for (let week = takes.at(-1) ?? -1; week >= 0; week--) {
    while (index > 0 && takes[index - 1]! >= week) index--
    next[week] = index
  }
  return next
}
