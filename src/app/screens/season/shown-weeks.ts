import type { SeasonPlan } from '../../../api/index.ts'
import { weeksBetween } from '../../text/format.ts'

export const SPANS = ['13', '26', '52', '104'] as const
export type Span = (typeof SPANS)[number]

/** The weeks of the plan that strip and loads show: the first, and how many. */
export const shownWeeks = (
  plan: Pick<SeasonPlan, 'firstWeek' | 'weeks'>,
  from: string | undefined,
  span: Span,
): { readonly first: string; readonly weeks: number } => ({
  first: from ?? plan.firstWeek,
  weeks: span === '104' ? plan.weeks : Number(span),
})

/** As far and as near as fits the window, until one is chosen. */
export const spanAtFirst = (): Span => (innerWidth < 720 ? '26' : '52')

/** What a load says of these weeks; beyond the plan's own there is nothing. */
export const loadInWeeks = <L extends Pick<SeasonPlan['loads'][number], 'expected' | 'badYear' | 'capacity'>>(
  load: L,
  planned: string,
  { first, weeks }: { readonly first: string; readonly weeks: number },
): L => {
  const skip = weeksBetween(planned, first)
  const part = (values: readonly number[]) =>
    Array.from({ length: weeks }, (_, index) => values[index + skip] ?? 0)
  return {
    ...load,
    expected: part(load.expected),
    badYear: part(load.badYear),
    capacity: part(load.capacity),
  }
}
