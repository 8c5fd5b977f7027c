import { existsSync } from 'node:fs'
import { resolve } from 'node:path'
import { type Log, openLog } from '../store/index.ts'
import { type Answers, type Flag, Trouble } from './command.ts'

export const dataFlag: Flag = {
  name: 'data',
  value: 'FOLDER',
  says: 'where the nursery’s log is kept',
  otherwise: './data',
}

export const dataFolder = (flags: Answers): string => resolve(String(flags.data ?? 'data'))

/** The log of a nursery that is there already. */
export const existingLog = async (flags: Answers): Promise<Log> => {
  const folder = dataFolder(flags)
  if (!existsSync(folder))
    throw new Trouble(
      `No nursery is kept in ${folder}. Name another with --data, or begin one with: budstick serve`,
    )
  return openLog(folder)
}
