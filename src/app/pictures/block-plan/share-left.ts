import type { MotherRow } from '../../../api/index.ts'

/** What a mother tree may still give this year, as a share over all its materials alike; null where it gives nothing. */
export const shareLeft = ({ givenThisYear }: Pick<MotherRow, 'givenThisYear'>): number | null => {
  const may = givenThisYear.filter(({ mayGive }) => mayGive > 0)
  if (may.length === 0) return null
  return may.reduce((sum, { number, mayGive }) => sum + Math.max(0, 1 - number / mayGive), 0) / may.length
}
