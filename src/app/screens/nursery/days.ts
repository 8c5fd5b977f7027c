/** From one day to another, both with it; empty while they are being typed. */
export interface Days {
  readonly from: string
  readonly to: string
}

export const areDays = ({ from, to }: Days): boolean => from !== '' && to >= from

/** Those that are over first. */
export const byEnd = <D extends Days>(all: readonly D[]): readonly D[] =>
  [...all].sort((one, other) => (one.to < other.to ? -1 : one.to > other.to ? 1 : 0))

export const areOver = ({ to }: Days, today: string): boolean => to < today

/** Those of today and to come, the first to end first. */
export const notOver = <D extends Days>(all: readonly D[], today: string): readonly D[] =>
  byEnd(all.filter(days => !areOver(days, today)))
