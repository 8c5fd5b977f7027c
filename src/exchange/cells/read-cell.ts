/**
 * What a cell says, read as a number, a day and so on. `noted` tells of something that was taken for granted in
 * reading it and is worth a look; a blank cell says nothing, and that is no fault.
 */
export type CellReading<T> =
  | { readonly kind: 'value'; readonly value: T; readonly noted?: string }
  | { readonly kind: 'blank' }
  | { readonly kind: 'wrong'; readonly wrong: string }

export const blank = { kind: 'blank' } as const
export const means = <T>(value: T, noted?: string): CellReading<T> =>
  noted === undefined ? { kind: 'value', value } : { kind: 'value', value, noted }
export const wrong = (what: string): { readonly kind: 'wrong'; readonly wrong: string } => ({
  kind: 'wrong',
  wrong: what,
})
