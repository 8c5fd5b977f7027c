import { type AnyEntry, entryLine, type Nursery, parseEntryLine } from '../../record/index.ts'
import type { NamedBytes } from '../table/open-file.ts'
import { writeCsv } from '../table/write-table.ts'
import { type PackageTable, tablesOf } from './tables.ts'

export const ENTRIES_FILE = 'entries.jsonl'
export const DESCRIPTOR_FILE = 'datapackage.json'
const FORM_VERSION = '1.0.0'

const RESOURCE_PROFILE = 'https://datapackage.org/profiles/2.0/dataresource.json'

/** All entries, one a line, in the order of the log. What comes in again is word for word what went out. */
export function* entryLines(entries: Iterable<AnyEntry>): Generator<string> {
  for (const entry of entries) yield `${entryLine(entry)}\n`
}

/**
 * The descriptor that tells other programs what each file holds.
 * @source Data Package and Table Schema of the Data Package standard, version 2.0 (datapackage.org)
 */
export const descriptorOf = (tables: readonly PackageTable[], created: string): object => ({
  $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
  name: 'budstick-nursery',
  title: 'Record of a fruit-tree nursery',
  description:
    'entries.jsonl is the whole record, one entry a line, each as docs/entries.md describes it; the tables hold what follows from it and can be made again from it.',
  version: FORM_VERSION,
  created,
  resources: [
    {
      $schema: RESOURCE_PROFILE,
      name: 'entries',
      path: ENTRIES_FILE,
      title: 'The record: facts, said once and never edited',
      format: 'jsonl',
      mediatype: 'application/x-ndjson',
      encoding: 'utf-8',
    },
    ...tables.map(table => ({
      $schema: RESOURCE_PROFILE,
      name: table.name,
      type: 'table',
      path: `${table.name}.csv`,
      title: table.says,
      format: 'csv',
      mediatype: 'text/csv',
      encoding: 'utf-8',
      dialect: { delimiter: ',', lineTerminator: '\r\n', quoteChar: '"', doubleQuote: true, header: true },
      schema: {
        $schema: 'https://datapackage.org/profiles/2.0/tableschema.json',
        fields: table.fields.map(({ name, type, says }) => ({ name, type, description: says })),
        missingValues: [''],
        ...(table.key.length === 0 ? {} : { primaryKey: table.key }),
        ...(table.refers.length === 0
          ? {}
          : {
              foreignKeys: table.refers.map(({ field, table: to, to: its }) => ({
                fields: [field],
                reference: { ...(to === table.name ? {} : { resource: to }), fields: [its] },
              })),
            }),
      },
    })),
  ],
})

export const tableCsv = (table: PackageTable): string =>
  writeCsv([table.fields.map(({ name }) => name), ...table.rows])

/** The names of all files of a package, the descriptor first. */
export const packageFiles = (nursery: Nursery): readonly string[] => [
  DESCRIPTOR_FILE,
  ENTRIES_FILE,
  ...tablesOf(nursery).map(({ name }) => `${name}.csv`),
]

/** One file of the package as text, or null where there is none of that name. */
export function packageFile(
  file: string,
  nursery: Nursery,
  entries: Iterable<AnyEntry>,
  created: string,
): string | null {
  if (file === ENTRIES_FILE) return [...entryLines(entries)].join('')
  const tables = tablesOf(nursery)
  if (file === DESCRIPTOR_FILE) return `${JSON.stringify(descriptorOf(tables, created), null, 2)}\n`
  const table = tables.find(({ name }) => `${name}.csv` === file)
  return table === undefined ? null : tableCsv(table)
}

export interface EntriesRead {
  readonly entries: readonly AnyEntry[]
  /** Lines that are no entries: which, and what is wrong. */
  readonly wrong: readonly { readonly line: number; readonly what: string }[]
}

/** Entries out of a file of lines as `entryLines` wrote it. */
export function readEntryLines({ bytes }: Pick<NamedBytes, 'bytes'>): EntriesRead {
  const entries: AnyEntry[] = []
  const wrong: { line: number; what: string }[] = []
  new TextDecoder()
    .decode(bytes)
    .split(/\r?\n/)
    .forEach((line, at) => {
      if (line.trim() === '') return
      const read = parseEntryLine(line)
      if (read.kind === 'entry') entries.push(read.entry)
      else {
        const [first] = read.problems
        wrong.push({ line: at + 1, what: [first?.where, first?.what].filter(Boolean).join(': ') })
      }
    })
  return { entries, wrong }
}
