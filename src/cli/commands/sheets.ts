import { mkdirSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { emptySheet, emptySheetForms } from '../../exchange/index.ts'
import { type Command, Trouble } from '../command.ts'
import { saveNew } from '../files.ts'

export const sheets: Command = {
  name: 'sheets',
  says: 'Saves empty spreadsheets into a folder: headers, and one example row to write over.',
  takes: ['FOLDER'],
  flags: [
    {
      name: 'as',
      value: 'xlsx|csv',
      says: 'one workbook with all sheets, or a CSV file for each',
      otherwise: 'xlsx',
    },
  ],
  examples: ['budstick sheets ./spreadsheets', 'budstick sheets ./spreadsheets --as csv'],
  run: async (flags, [folder]) => {
    if (folder === undefined) throw new Trouble('Say into which folder: budstick sheets ./spreadsheets', 2)
    const form = String(flags.as ?? 'xlsx')
    if (form !== 'xlsx' && form !== 'csv') throw new Trouble(`--as takes xlsx or csv, not "${form}".`, 2)
    mkdirSync(folder, { recursive: true })
    const names = form === 'xlsx' ? ['all.xlsx'] : emptySheetForms.map(({ kind }) => `${kind}.csv`)
    for (const name of names) {
      const saved = await emptySheet(name)
      if (saved === null) continue
      const path = join(folder, name === 'all.xlsx' ? 'nursery.xlsx' : name)
      saveNew(path, saved.bytes)
      process.stderr.write(`${resolve(path)}\n`)
    }
  },
}
