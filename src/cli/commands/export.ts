import { mkdirSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { packageFile, packageFiles } from '../../exchange/index.ts'
import { foldEntries } from '../../record/index.ts'
import { type Command, Trouble } from '../command.ts'
import { dataFlag, existingLog } from '../data-folder.ts'
import { saveNew } from '../files.ts'
import { PICTURES, picturesOf } from '../pictures.ts'

export const exportRecord: Command = {
  name: 'export',
  says: 'Writes the whole record into a folder: entries as JSON lines, tables as CSV, photographs, and what each holds.',
  takes: ['FOLDER'],
  flags: [dataFlag],
  examples: ['budstick export ./nursery-2026'],
  run: async (flags, [folder]) => {
    if (folder === undefined) throw new Trouble('Say into which folder: budstick export ./nursery-2026', 2)
    const log = await existingLog(flags)
    try {
      const entries = log.read({ afterSeq: 0, limit: Number.MAX_SAFE_INTEGER })
      const nursery = foldEntries(entries)
      const created = new Date().toISOString()
      mkdirSync(folder, { recursive: true })
      for (const name of packageFiles(nursery))
        saveNew(join(folder, name), packageFile(name, nursery, entries, created) ?? '')
      for (const [file, bytes] of picturesOf(log, entries)) {
        mkdirSync(join(folder, PICTURES), { recursive: true })
        saveNew(join(folder, PICTURES, file), bytes)
      }
      process.stderr.write(`${entries.length} entries and their tables written into ${resolve(folder)}.\n`)
    } finally {
      log.close()
    }
  },
}
