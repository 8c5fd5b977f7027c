import { join } from 'node:path'

/** The log's file in its folder. */
export const logFile = (folder: string): string => join(folder, 'nursery.budstick')
