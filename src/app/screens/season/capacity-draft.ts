import type { Supposed } from '../../../planning/index.ts'
import type { Bench, Person } from '../../../record/index.ts'

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

export const nowOf = (able: Able): number =>
  able.what === 'bench' ? able.bench.areaSquareMetres : able.person.hoursPerWeek

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
