import { resolve } from 'node:path'
import { type Command, Trouble } from '../command.ts'
import { dataFlag, existingLog } from '../data-folder.ts'

export const backup: Command = {
  name: 'backup',
  says: 'Saves the whole nursery into one file, while it may be in use.',
  takes: ['FILE'],
  flags: [dataFlag],
  examples: ['budstick backup nursery-2026-11-24.budstick'],
  run: async (flags, [file]) => {
    if (file === undefined) throw new Trouble('Say into which file: budstick backup FILE', 2)
    const log = await existingLog(flags)
    try {
      await log.backup(resolve(file))
      process.stderr.write(`Saved to ${resolve(file)}.\n`)
    } finally {
      log.close()
    }
  },
}
