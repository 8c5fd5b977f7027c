export const work = {} as const
