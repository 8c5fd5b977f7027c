import { readDay } from '../cells/day.ts'

/** Which columns of a weather file hold what, and the row in which the days begin. */
export interface WeatherColumns {
  readonly date:
    | { readonly kind: 'one'; readonly column: number }
    | { readonly kind: 'parts'; readonly year: number; readonly month: number; readonly day: number }
  readonly min: number
  readonly max: number
  readonly firstRow: number
  /** The header and the lines before it, for units. */
  readonly header: string
}

type Row = readonly string[]

/** Lines of explanation that a file may begin with. */
const HEADER_WITHIN = 80

const named: Readonly<Record<'date' | 'year' | 'month' | 'day' | 'min' | 'max', RegExp>> = {
  date: /^(date|day|datum|tag|dag|fecha|dia|data|jour|giorno|yyyymmdd|time|timestamp|mess ?datum)$/,
  year: /^(year|jahr|ano|annee|anno|jaar|yyyy)$/,
  month: /^(month|monat|mes|mois|mese|maand|mm)$/,
  day: /^(day|tag|dia|jour|giorno|dag|dd|day of month)$/,
  min: /^(t ?min|min|minimum|tn|tnk|tmn|min(imum)?( air)?( temp(erature|eratur|eratura)?)?|temp(erature|eratura)?( air)? min(imum|ima)?|t min(imum|ima)?|lowest|low|tiefst.*|minima)$/,
  max: /^(t ?max|max|maximum|tx|txk|tmx|max(imum)?( air)?( temp(erature|eratur|eratura)?)?|temp(erature|eratura)?( air)? max(imum|ima)?|t max(imum|ima)?|highest|high|hochst.*|maxima)$/,
}

/** A header without marks, units and accents: `Temp. mín. (°C)` is `temp min`. */
const bare = (cell: string): string =>
  cell
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/\(.*?\)|\[.*?\]|°\s*[cf]\b|\b(deg(rees)?|celsius|fahrenheit|in)\b/g, ' ')
    .replaceAll(/[^a-z0-9]+/g, ' ')
    .replace(/ [cf]$/, '')
    .trim()

export function columnsOf(rows: readonly Row[]): WeatherColumns | null {
  for (const [at, row] of rows.slice(0, HEADER_WITHIN).entries()) {
    const cells = row.map(bare)
    const find = (what: keyof typeof named) => cells.findIndex(cell => named[what].test(cell))
    const [min, max] = [find('min'), find('max')]
    if (min < 0 || max < 0) continue
    const parts = { year: find('year'), month: find('month'), day: find('day') }
    const date = find('date')
    const header = rows
      .slice(0, at + 1)
      .map(line => line.join(' '))
      .join('\n')
    const found = { min, max, firstRow: at + 1, header }
    if (parts.year >= 0 && parts.month >= 0 && parts.day >= 0)
      return { ...found, date: { kind: 'parts', ...parts } }
    if (date >= 0) return { ...found, date: { kind: 'one', column: date } }
  }
  return withoutHeader(rows)
}

/** A file of a date and two numbers needs no header: the lower ones are the minima. */
function withoutHeader(rows: readonly Row[]): WeatherColumns | null {
  const firstRow = rows.findIndex(row => row.length >= 3)
  const first = rows[firstRow]
  if (first === undefined || readDay(first[0], 'day first', '2026-01-01').kind !== 'value') return null
  const number = (cell: string | undefined) => Number((cell ?? '').trim().replace(',', '.') || 'x')
  const [a, b] = [number(first[1]), number(first[2])]
  if (!Number.isFinite(a) || !Number.isFinite(b)) return null
  return {
    date: { kind: 'one', column: 0 },
    min: a <= b ? 1 : 2,
    max: a <= b ? 2 : 1,
    firstRow,
    header: '',
  }
}
