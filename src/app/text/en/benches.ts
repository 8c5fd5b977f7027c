export const benches = {} as const
