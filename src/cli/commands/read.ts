import { existsSync, readFileSync } from 'node:fs'
import { uuidv7 } from 'uuidv7'
import {
  MAPPING_KEY,
  type Mapping,
  type NurseryReading,
  readNursery,
  rememberBrought,
  summaryText,
} from '../../exchange/index.ts'
import { Entry, foldEntries } from '../../record/index.ts'
import { openLog } from '../../store/index.ts'
import { type Command, dayGiven, Trouble } from '../command.ts'
import { dataFlag, dataFolder } from '../data-folder.ts'
import { spreadsheetsAt } from '../files.ts'

const mappingIn = (file: string): Mapping => {
  if (!existsSync(file)) throw new Trouble(`There is no file ${file}.`)
  try {
    return JSON.parse(readFileSync(file, 'utf8')) as Mapping
  } catch (problem) {
    throw new Trouble(`${file} is not JSON: ${(problem as Error).message}`)
  }
}

const printed = (reading: NurseryReading, isJson: boolean): string => {
  const { told: _, ...rest } = reading
  return isJson ? `${JSON.stringify(rest, null, 2)}\n` : summaryText(reading)
}

export const read: Command = {
  name: 'read',
  says: 'Reads the nursery’s spreadsheets and says what they would write; with --accept writes it.',
  takes: ['FOLDER|FILE…'],
  flags: [
    dataFlag,
    { name: 'accept', says: 'write it into the log, when nothing that must be answered is open' },
    {
      name: 'map',
      value: 'FILE',
      says: 'what you say of the sheets, as JSON: { "orders.csv": { "kind": "orders", "columns": { "Menge": "number" }, "answers": { "days: Due": "day first" } } }',
    },
    { name: 'as', value: 'text|json', says: 'how it is printed', otherwise: 'text' },
    { name: 'today', value: 'DAY', says: 'read as if it were this day (2026-11-24)', otherwise: 'today' },
  ],
  examples: [
    'budstick read ./spreadsheets',
    'budstick read orders.xlsx benches.csv --map map.json --accept',
    'budstick read ./spreadsheets --as json | jq .cells',
  ],
  run: async (flags, paths) => {
    if (paths.length === 0) throw new Trouble('Say which folder or files: budstick read ./spreadsheets', 2)
    const form = String(flags.as ?? 'text')
    if (form !== 'text' && form !== 'json') throw new Trouble(`--as takes text or json, not "${form}".`, 2)
    const today = dayGiven(flags, 'today') ?? new Date().toLocaleDateString('sv-SE')
    const said = flags.map === undefined ? {} : mappingIn(String(flags.map))
    const files = spreadsheetsAt(paths)
    const folder = dataFolder(flags)
    const isThere = existsSync(folder)
    const log = flags.accept || isThere ? await openLog(folder) : null
    try {
      const nursery = foldEntries(log?.read({ afterSeq: 0, limit: Number.MAX_SAFE_INTEGER }) ?? [])
      const remembered = log?.recall<Mapping>(MAPPING_KEY) ?? {}
      const reading = await readNursery({ files, said, remembered, nursery, today })
      process.stdout.write(printed(reading, form === 'json'))
      if (!flags.accept) return
      if (!reading.ready)
        throw new Trouble(
          reading.told.length === 0
            ? 'There is nothing to write.'
            : 'Nothing is written: some questions must be answered first. Put the answers into a file and name it with --map.',
        )
      const entries = reading.told.map(({ on, body }) =>
        Entry.parse({ id: uuidv7(), on, at: null, by: null, device: 'office', body }),
      ) as Entry[]
      const at = new Date().toISOString()
      const { accepted } = log!.append(entries, at)
      rememberBrought(log!, { id: uuidv7(), at, by: null, files, written: accepted })
      log!.remember(MAPPING_KEY, { ...remembered, ...reading.mapping })
      process.stderr.write(`${accepted.length} entries written into ${folder}.\n`)
    } finally {
      log?.close()
    }
  },
}
