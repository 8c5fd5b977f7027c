import { requireWhole } from '../bounds.ts'

/** Two lots worked differently: how many entered and how many survived in each. */
export interface TwoCounts {
  readonly survived1: number
  readonly entered1: number
  readonly survived2: number
  readonly entered2: number
}

export function requireTwoCounts(
  place: string,
  { survived1, entered1, survived2, entered2 }: TwoCounts,
): void {
  requireWhole(place, 'entered1', entered1, 1)
  requireWhole(place, 'entered2', entered2, 1)
  requireWhole(place, 'survived1', survived1, 0, entered1)
  requireWhole(place, 'survived2', survived2, 0, entered2)
}
