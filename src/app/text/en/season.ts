export const season = {} as const
