import { readFileSync } from 'node:fs'
import Papa from 'papaparse'
import { expect, test } from 'vitest'
import { makeDemoEntries } from '../../demo/index.ts'
import { type Entry, entryLine, foldEntries } from '../../record/index.ts'
import { canonicalNursery } from '../../record/nursery-text.ts'
import { EntryId } from '../../trade/index.ts'
import { readNursery } from '../reading/read-nursery.ts'
import { entryLines, packageFile, packageFiles, readEntryLines } from './data-package.ts'

const today = '2026-11-24'
const bytes = readFileSync(new URL('../fixtures/english/nursery.xlsx', import.meta.url))
const reading = await readNursery({
  files: [{ name: 'nursery.xlsx', bytes }],
  said: {},
  remembered: {},
  nursery: foldEntries([]),
  today,
})
const entries: Entry[] = reading.told.map(({ on, body }, at) => ({
  id: EntryId.parse(`019e0000-0000-7000-8000-${String(at).padStart(12, '0')}`),
  on,
  at: null,
  by: null,
  device: 'office “one”',
  body,
}))
const nursery = foldEntries(entries)
const file = (name: string) => packageFile(name, nursery, entries, '2026-11-24T06:00:00.000Z')!

test('the record goes out and comes in again without loss: equal entries, equal state', () => {
  const text = [...entryLines(entries)].join('')
  const back = readEntryLines({ bytes: new TextEncoder().encode(text) })
  expect(back.wrong).toEqual([])
  expect(back.entries.map(entryLine)).toEqual(entries.map(entryLine))
  expect(canonicalNursery(foldEntries(back.entries))).toBe(canonicalNursery(nursery))
})

test('so does a nursery with three years behind it', () => {
  const told = makeDemoEntries({ seed: 1, today })
  const back = readEntryLines({ bytes: new TextEncoder().encode([...entryLines(told)].join('')) })
  expect(back.entries.map(entryLine)).toEqual(told.map(entryLine))
  expect(canonicalNursery(foldEntries(back.entries))).toBe(canonicalNursery(foldEntries(told)))
})

test('an entry that only a later version knows goes out and in as it is', () => {
  const later = { ...entries[0]!, body: { kind: 'roots-washed/1', litres: 3 } }
  const back = readEntryLines({ bytes: new TextEncoder().encode([...entryLines([later])].join('')) })
  expect(back.entries.map(entryLine)).toEqual([entryLine(later)])
})

test('a line that is no entry is named, with what is wrong', () => {
  const lines = `${entryLine(entries[0]!)}\nnot JSON\n${JSON.stringify({ ...entries[1], on: 'soon' })}\n`
  const { entries: good, wrong } = readEntryLines({ bytes: new TextEncoder().encode(lines) })
  expect(good).toHaveLength(1)
  expect(wrong.map(({ line }) => line)).toEqual([2, 3])
})

interface Descriptor {
  readonly resources: readonly {
    readonly name: string
    readonly path: string
    readonly type?: string
    readonly schema?: {
      readonly fields: readonly { readonly name: string; readonly type: string }[]
      readonly primaryKey?: readonly string[]
      readonly foreignKeys?: readonly {
        fields: string[]
        reference: { resource?: string; fields: string[] }
      }[]
    }
  }[]
}

test('the descriptor names every file, and each table has the fields, types, keys and references that it says', () => {
  const { resources } = JSON.parse(file('datapackage.json')) as Descriptor
  expect(['datapackage.json', ...resources.map(({ path }) => path)]).toEqual(packageFiles(nursery))
  const rowsOf = (path: string) =>
    Papa.parse<Record<string, string>>(file(path).trimEnd(), { header: true }).data
  // Table Schema of the Data Package standard 2.0: the lexical form of each type.
  const forms: Record<string, RegExp> = {
    string: /^.*$/s,
    integer: /^-?\d+$/,
    number: /^-?\d+(\.\d+)?([eE][-+]?\d+)?$/,
    date: /^\d{4}-\d\d-\d\d$/,
  }
  for (const { name, path, schema } of resources) {
    if (schema === undefined) continue
    const rows = rowsOf(path)
    expect(Object.keys(rows[0] ?? {}), path).toEqual(
      rows.length === 0 ? [] : schema.fields.map(field => field.name),
    )
    for (const row of rows)
      for (const field of schema.fields)
        if (row[field.name] !== '')
          expect(row[field.name], `${path} ${field.name}`).toMatch(forms[field.type]!)
    const key = (row: Record<string, string>) => schema.primaryKey?.map(one => row[one]).join('\n')
    if (schema.primaryKey) expect(new Set(rows.map(key)).size, path).toBe(rows.length)
    for (const { fields, reference } of schema.foreignKeys ?? []) {
      const target = resources.find(one => one.name === (reference.resource ?? name))!
      const known = new Set(rowsOf(target.path).map(row => row[reference.fields[0]!]))
      for (const row of rows)
        if (row[fields[0]!] !== '') expect(known, `${path} ${fields[0]}`).toContain(row[fields[0]!])
    }
  }
})

test('the tables hold what the record holds', () => {
  const orders = Papa.parse<Record<string, string>>(file('orders.csv').trimEnd(), { header: true }).data
  expect(orders.find(({ id }) => id === 'P-1')).toMatchObject({
    number: '120',
    due: '2028-03-01',
    kind: 'fig-brown-pilgrim',
  })
  expect(packageFile('seeds.csv', nursery, entries, '')).toBeNull()
})
