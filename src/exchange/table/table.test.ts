import { isUtf8 } from 'node:buffer'
import fc from 'fast-check'
import Papa from 'papaparse'
import { describe, expect, test } from 'vitest'
import { decodeText } from './encoding.ts'
import { openFile } from './open-file.ts'
import { columnLetters, type Table } from './table.ts'
import { writeCsv, writeWorkbook } from './write-table.ts'

const utf8 = (text: string) => new TextEncoder().encode(text)
const tablesIn = async (bytes: Uint8Array): Promise<readonly Table[]> => {
  const opened = await openFile({ name: 'file', bytes })
  return opened.kind === 'tables' ? opened.tables : []
}
const rowsIn = async (text: string) => (await tablesIn(utf8(text)))[0]?.rows

describe('encodings', () => {
  test('Windows-1252 has its own letters where Latin-1 has none', () => {
    // Code page 1252 in the WHATWG Encoding Standard: 0x80 €, 0x91 ‘, 0x92 ’, 0x99 ™, 0xD7 ×, 0xE4 ä.
    expect(decodeText(new Uint8Array([0x80, 0x91, 0x92, 0x99, 0xd7, 0xe4]))).toEqual({
      text: '€‘’™×ä',
      encoding: 'Windows-1252',
    })
  })

  test('UTF-8 and UTF-16 are told by their bytes, with a mark or without', () => {
    const utf16 = (text: string) =>
      new Uint8Array(Uint16Array.from(text, letter => letter.charCodeAt(0)).buffer)
    expect(decodeText(utf8('Süßkirsche'))).toEqual({ text: 'Süßkirsche', encoding: 'UTF-8' })
    expect(decodeText(utf16('\uFEFFKirsche;Nr'))).toEqual({ text: 'Kirsche;Nr', encoding: 'UTF-16' })
    expect(decodeText(utf16('Kirsche;Nr'))).toEqual({ text: 'Kirsche;Nr', encoding: 'UTF-16' })
  })

  test('a byte order mark, whole, damaged, or both, is no part of the first header', () => {
    for (const mark of ['\uFEFF', 'ï»¿', 'ï..', '\uFEFFï..'])
      expect(decodeText(utf8(`${mark}Taxon,Year`)).text).toBe('Taxon,Year')
  })
})

describe('separators', () => {
  test('a decimal comma does not make a comma the separator', async () => {
    expect(await rowsIn('Beet;Fläche\nA;1,5\nB;2,25\n')).toEqual([
      ['Beet', 'Fläche'],
      ['A', '1,5'],
      ['B', '2,25'],
    ])
  })

  test('tabs in a file called .csv, bars, and a first line that names the separator are seen', async () => {
    expect((await rowsIn('a\tb\n1,5\t2\n'))?.[1]).toEqual(['1,5', '2'])
    expect((await rowsIn('a|b\n1|2\n'))?.[1]).toEqual(['1', '2'])
    expect((await rowsIn('sep=;\r\na;b\r\n1,0;2,0\r\n'))?.slice(1, 3)).toEqual([
      ['a', 'b'],
      ['1,0', '2,0'],
    ])
  })

  test('a quotation mark that is never closed costs no row', async () => {
    expect(await rowsIn('kind,number\n"Red "Heart" plum,12\nFig,7\nQuince,3')).toEqual([
      ['kind', 'number'],
      ['"Red "Heart" plum', '12'],
      ['Fig', '7'],
      ['Quince', '3'],
    ])
  })
})

test('what is no spreadsheet is said to be none, with what to do', async () => {
  for (const bytes of [
    new Uint8Array(),
    new Uint8Array([0xd0, 0xcf, 0x11, 0xe0]),
    new Uint8Array([0x50, 0x4b, 3, 4, 9, 9]),
    new Uint8Array([1, 0, 2, 3, 0, 4]),
  ]) {
    const opened = await openFile({ name: 'x', bytes })
    expect(opened).toMatchObject({ kind: 'not a spreadsheet', wrong: expect.stringMatching(/^It /) })
  }
})

test('columns are lettered as a spreadsheet letters them', () => {
  expect([0, 25, 26, 51, 52, 701, 702].map(columnLetters)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA', 'ZZ', 'AAA'])
})

const cellOf = fc.oneof(
  fc.string({ unit: fc.constantFrom(...'aäß×®’";,\t\n 7.=-é€'), maxLength: 9 }),
  fc.constantFrom('Fig ‘Brown Pilgrim’', 'Prunus ×domestica', '1.234,5', '0,5', "Clapp's", 'a "b" c'),
)
/** Rows of one width, each with something in every cell, so that nothing is left to guess. */
const tableOf = fc.integer({ min: 2, max: 5 }).chain(width =>
  fc.array(
    fc.array(
      cellOf.map(text => `x${text}x`),
      { minLength: width, maxLength: width },
    ),
    { minLength: 2, maxLength: 8 },
  ),
)

test('a table written in any dialect reads back to the same cells', async () => {
  const windows1252 = (text: string) =>
    Uint8Array.from(text, letter => ({ '€': 0x80, '‘': 0x91, '’': 0x92 })[letter] ?? letter.charCodeAt(0))
  await fc.assert(
    fc.asyncProperty(
      tableOf,
      fc.constantFrom(',', ';', '\t', '|'),
      fc.constantFrom('\r\n', '\n'),
      fc.constantFrom('utf-8', 'utf-8 marked', 'windows-1252'),
      fc.boolean(),
      async (rows, delimiter, newline, encoding, quotes) => {
        const named = [rows[0]!.map((_, column) => `header ${column}`), ...rows]
        const text = Papa.unparse(named, { delimiter, newline, quotes })
        const bytes =
          encoding === 'windows-1252'
            ? windows1252(text)
            : utf8(encoding === 'utf-8' ? text : `\uFEFF${text}`)
        // ×® in one is a Hebrew letter in the other: then nothing says which it is.
        fc.pre(encoding !== 'windows-1252' || !isUtf8(bytes) || !/[^\0-\x7f]/.test(text))
        const [table] = await tablesIn(bytes)
        expect(table?.rows).toEqual(named)
      },
    ),
    { numRuns: 150 },
  )
})

test('a workbook reads back to the same cells: text, numbers, yes and no', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(
        fc.tuple(
          fc.string({ unit: fc.constantFrom(...'aäß×®’";,=+ 7'), maxLength: 9 }).map(text => `x${text}x`),
          fc.oneof(fc.integer({ min: -1e6, max: 1e6 }), fc.constantFrom(0.25, 12.5)),
          fc.boolean(),
        ),
        { minLength: 1, maxLength: 6 },
      ),
      async rows => {
        const [table] = await tablesIn(await writeWorkbook([{ sheet: 'One', rows, headerRows: 0 }]))
        expect(table).toMatchObject({ sheet: 'One', rows })
      },
    ),
    { numRuns: 15 },
  )
})

test('a cell that a spreadsheet would run as a formula is written as text; numbers stay numbers', () => {
  expect(writeCsv([['=1+1', '+cmd', '@x', -5, '-5', 'a,b', null]])).toBe(
    `"'=1+1","'+cmd","'@x",-5,-5,"a,b",\r\n`,
  )
})
