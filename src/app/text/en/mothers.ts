export const mothers = {} as const
