export const year = {} as const
