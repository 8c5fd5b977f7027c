import type { Supposed } from '../../../planning/index.ts'
import type { Bench, Person } from '../../../record/index.ts'
import { dayAfter, daysBetween, mondayOf, weekAfter } from '../../text/format.ts'

/** A bench or a person as it is tried: of another size or for other hours, from now on or on some days. */
export interface CapacityDraft {
  /** m², or hours a week. */
  readonly value: number
  /** Null: from now on. */
  readonly days: { readonly from: string; readonly to: string } | null
}

export type Able =
  | { readonly what: 'bench'; readonly bench: Bench }
  | { readonly what: 'person'; readonly person: Person }

export const nameOf = (able: Able): string => (able.what === 'bench' ? able.bench.name : able.person.name)

export const nowOf = (able: Able): number =>
  able.what === 'bench' ? able.bench.areaSquareMetres : able.person.hoursPerWeek

const MOST_HOURS = 60
/** A bench may be tried up to so many times its size. */
const MOST_TIMES = 3

/** How far it may be tried, and in what steps. */
export const boundsOf = (
  able: Able,
  { days }: CapacityDraft,
): { readonly most: number; readonly step: number } => {
  const now = nowOf(able)
  return able.what === 'person'
    ? { most: MOST_HOURS, step: 1 }
    : { most: days === null ? MOST_TIMES * now : now, step: Math.max(0.5, Math.round(now / 40)) }
}

/** The entry that would make it so; null where it is as it is. On some days a bench is closed in part, a person away. */
export function capacitySupposed(able: Able, { value, days }: CapacityDraft): Supposed | null {
  if (days !== null && (days.from === '' || days.to < days.from)) return null
  if (able.what === 'bench') {
    const { bench } = able
    const closed = bench.areaSquareMetres - value
    if (days === null)
      return closed === 0 ? null : { kind: 'bench-set/1', bench: { ...bench, areaSquareMetres: value } }
    return closed <= 0
      ? null
      : {
          kind: 'bench-set/1',
          bench: { ...bench, closed: [...bench.closed, { ...days, areaSquareMetres: closed, why: '' }] },
        }
  }
  const { person } = able
  if (days !== null) return { kind: 'person-set/1', person: { ...person, away: [...person.away, days] } }
  return value === person.hoursPerWeek
    ? null
    : { kind: 'person-set/1', person: { ...person, hoursPerWeek: value } }
}

const WORKING_DAYS = 5

/** Working days of a week, Monday to Friday, between two days. */
function workingDaysIn(week: string, { from, to }: { readonly from: string; readonly to: string }): number {
  const monday = mondayOf(week)
  const start = Math.max(0, daysBetween(monday, from))
  return Math.max(0, Math.min(WORKING_DAYS, daysBetween(monday, to) + 1) - start)
}

/** What a place or a skill could carry by week if the draft were so, m² or hours at the protocol's own pace. */
export function capacityTried(
  able: Able,
  { value, days }: CapacityDraft,
  capacity: readonly number[],
  firstWeek: string,
): readonly number[] {
  const now = nowOf(able)
  const pace = able.what === 'person' ? able.person.pace : 1
  return capacity.map((can, index) => {
    // Nothing in a week is a closure or a leave, and stays, unless there is nothing at all.
    if (can <= 0 && now > 0) return can
    const week = weekAfter(firstWeek, index)
    if (days === null) return Math.max(0, can + (value - now) * pace)
    if (able.what === 'person')
      return Math.max(0, can - (now * pace * workingDaysIn(week, days)) / WORKING_DAYS)
    const isTouched = days.from < mondayOf(weekAfter(week, 1)) && days.to >= mondayOf(week)
    return isTouched ? Math.max(0, can - (now - value)) : can
  })
}

const DAYS_AT_FIRST = 20

/** Some weeks from a day on: a bench closed whole, a person away. */
export const forSomeWeeks = (able: Able, from: string): CapacityDraft => ({
  value: able.what === 'bench' ? 0 : nowOf(able),
  days: { from, to: dayAfter(from, DAYS_AT_FIRST) },
})
