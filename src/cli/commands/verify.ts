import { type Command, Trouble } from '../command.ts'
import { dataFlag, existingLog } from '../data-folder.ts'

export const verify: Command = {
  name: 'verify',
  says: 'Checks that no entry of the log was lost or changed since it was written.',
  takes: [],
  flags: [dataFlag],
  examples: ['budstick verify', 'budstick verify --data /media/stick/nursery'],
  run: async flags => {
    const log = await existingLog(flags)
    try {
      const found = log.verify()
      if (!found.ok)
        throw new Trouble(
          `Entry ${found.seq} is not as it was written: ${found.why}. Restore the last good backup with: budstick restore`,
        )
      process.stdout.write(`${found.entries} entries, unbroken. Head ${found.head}\n`)
    } finally {
      log.close()
    }
  },
}
