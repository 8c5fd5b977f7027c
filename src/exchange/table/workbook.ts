import readSheets from 'read-excel-file/universal'
import { dayText } from '../../science/index.ts'
import type { RawCell } from './table.ts'

const DAY_MS = 86_400_000

/** A cell of a day is a moment in UTC; with a time of day it keeps it, as text. */
const toRaw = (cell: unknown): RawCell => {
  if (cell instanceof Date) {
    const days = Math.floor(cell.getTime() / DAY_MS)
    const minutes = Math.round((cell.getTime() - days * DAY_MS) / 60_000)
    if (Number.isNaN(days)) return null
    const clock = `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`
    return minutes === 0 ? dayText(days) : `${dayText(days)} ${clock}`
  }
  return typeof cell === 'string' || typeof cell === 'number' || typeof cell === 'boolean' ? cell : null
}

/** All sheets of an XLSX workbook, in their order. */
export async function readWorkbook(
  bytes: Uint8Array,
): Promise<readonly { readonly sheet: string; readonly rows: readonly (readonly RawCell[])[] }[]> {
  const copy = new Uint8Array(bytes)
  const sheets = await readSheets(copy.buffer, { trim: false })
  return sheets.map(({ sheet, data }) => ({ sheet, rows: data.map(row => row.map(toRaw)) }))
}
