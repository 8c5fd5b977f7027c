import { type AnyEntry, Body, type Entry } from '../record/index.ts'
import { EntryId } from '../trade/index.ts'

const hex = (number: number, length: number) => number.toString(16).padStart(length, '0')

/** An entry for tests: the same for the same run and number, different for any other. */
export const toldEntry = (run: number, number: number): AnyEntry => ({
  id: EntryId.parse(`019f${hex(run, 4)}-0000-7000-8000-${hex(number, 12)}`),
  on: '2026-05-04',
  at: null,
  by: null,
  device: 'bench phone',
  body: Body.parse({ kind: 'noted/1', about: 'B7', text: `look ${number}, übers Beet` }) as Entry['body'],
})
