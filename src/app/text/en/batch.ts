export const batch = {} as const
