const MILLION = 1e6

/** A solver's number to a millionth: what it says beyond that comes from where it began, not from the nursery. */
export const withoutNoise = (number: number): number => Math.round(number * MILLION) / MILLION
