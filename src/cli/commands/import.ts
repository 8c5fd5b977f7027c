import { existsSync, readFileSync, statSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { ENTRIES_FILE, readEntryLines } from '../../exchange/index.ts'
import { openLog } from '../../store/index.ts'
import { type Command, Trouble } from '../command.ts'
import { dataFlag, dataFolder } from '../data-folder.ts'
import { takePictures } from '../pictures.ts'

const WRONG_SHOWN = 20

export const importRecord: Command = {
  name: 'import',
  says: 'Takes a record in again that export wrote. What the log has already is not written twice.',
  takes: ['FOLDER'],
  flags: [dataFlag],
  examples: ['budstick import ./nursery-2026 --data ./restored'],
  run: async (flags, [folder]) => {
    if (folder === undefined) throw new Trouble('Say from which folder: budstick import ./nursery-2026', 2)
    const file = existsSync(folder) && statSync(folder).isFile() ? folder : join(folder, ENTRIES_FILE)
    if (!existsSync(file)) throw new Trouble(`There is no ${resolve(file)}.`)
    const { entries, wrong } = readEntryLines({ bytes: readFileSync(file) })
    for (const { line, what } of wrong.slice(0, WRONG_SHOWN))
      process.stderr.write(`${file}, line ${line} is no entry: ${what}\n`)
    if (wrong.length > 0)
      throw new Trouble(
        `Nothing was taken in: ${wrong.length} lines of ${resolve(file)} are no entries. Mend them, or export again.`,
      )
    const log = await openLog(dataFolder(flags))
    try {
      takePictures(log, entries, folder)
      const { accepted, known, conflicting } = log.append(entries, new Date().toISOString())
      process.stderr.write(`${accepted.length} entries taken in, ${known.length} were there already.\n`)
      if (conflicting.length > 0)
        throw new Trouble(
          `${conflicting.length} entries were not taken: the log has others under the same ids, such as ${conflicting[0]}.`,
        )
    } finally {
      log.close()
    }
  },
}
