import { resolve } from 'node:path'
import { restoreLog } from '../../store/index.ts'
import { type Command, Trouble } from '../command.ts'
import { dataFlag, dataFolder } from '../data-folder.ts'

export const restore: Command = {
  name: 'restore',
  says: 'Brings a nursery back from a backup file into a folder that holds none yet.',
  takes: ['FILE'],
  flags: [dataFlag],
  examples: ['budstick restore nursery-2026-11-24.budstick --data ./restored'],
  run: async (flags, [file]) => {
    if (file === undefined) throw new Trouble('Say from which file: budstick restore FILE', 2)
    const entries = await restoreLog(resolve(file), dataFolder(flags))
    process.stderr.write(`${entries} entries restored into ${dataFolder(flags)}, unbroken.\n`)
  },
}
