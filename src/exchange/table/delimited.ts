import Papa from 'papaparse'

const separators = ['\t', ';', ',', '|'] as const
export type Separator = (typeof separators)[number]

export const separatorName: Readonly<Record<Separator, string>> = {
  '\t': 'tabs',
  ';': 'semicolons',
  ',': 'commas',
  '|': 'bars',
}

const LOOKED_AT = 200

/** A quotation mark that is never closed would swallow all rows after it: then marks are read as letters. */
const split = (text: string, separator: Separator, rows = 0): string[][] => {
  const config = { delimiter: separator, header: false, skipEmptyLines: false as const, preview: rows }
  const { data, errors } = Papa.parse<string[]>(text, config)
  if (!errors.some(({ code }) => code === 'MissingQuotes')) return data
  return Papa.parse<string[]>(text, { ...config, quoteChar: '\u0000' }).data.map(row =>
    row.map(cell => /^"(.*)"$/s.exec(cell)?.[1]?.replaceAll('""', '"') ?? cell),
  )
}

/** Rows of one width, and many columns, speak for a separator. */
const fitness = (text: string, separator: Separator): number => {
  const widths = split(text, separator, LOOKED_AT)
    .filter(row => row.some(cell => cell.trim() !== ''))
    .map(row => row.length)
  const counts = new Map<number, number>()
  for (const width of widths) if (width > 1) counts.set(width, (counts.get(width) ?? 0) + 1)
  return Math.max(
    0,
    ...[...counts].map(([width, count]) => (count / widths.length) * (1 + Math.log2(width) / 10)),
  )
}

export interface Delimited {
  readonly separator: Separator
  readonly rows: readonly (readonly string[])[]
}

/** Rows and cells of a text whose separator is not known, or is said in its first line (`sep=;`). */
export function readDelimited(text: string): Delimited {
  const said = /^sep=(.)\r?\n/i.exec(text)
  const named = separators.find(separator => separator === said?.[1])
  if (named !== undefined)
    return { separator: named, rows: [[], ...split(text.slice(said![0].length), named)] }
  let best: Separator = ','
  let most = 0
  for (const separator of separators) {
    const fit = fitness(text, separator)
    if (fit > most) [best, most] = [separator, fit]
  }
  return { separator: best, rows: split(text, best) }
}
