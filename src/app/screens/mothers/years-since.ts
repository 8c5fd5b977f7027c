/** Whole years from one day to another, as an age is told. */
export const yearsSince = (from: string, to: string): number =>
  Math.max(0, Number(to.slice(0, 4)) - Number(from.slice(0, 4)) - (to.slice(5) < from.slice(5) ? 1 : 0))
