import { expect, test } from 'vitest'
import type { EntryId } from '../trade/index.ts'
import type { Body, Entry } from './entry.ts'
import { deedOf } from './one-deed.ts'

/** An entry made so many milliseconds after the first of 2026, by RFC 9562, section 5.7. */
const said = (kind: string, made: number, device = 'phone', by = 'ana'): Entry => {
  const time = (Date.UTC(2026, 0, 1) + made).toString(16).padStart(12, '0')
  const id = `${time.slice(0, 8)}-${time.slice(8)}-7000-8000-${String(made).padStart(12, '0')}` as EntryId
  return { id, on: '2026-01-01', at: null, by, device, body: { kind } as Body } as Entry
}

test('a ticked task is one deed with what was said in the same breath on the same device, and with nothing else', () => {
  const before = [
    said('noted/1', 0),
    said('batch-started/1', 5_000),
    said('task-done/1', 5_001),
    said('finished/1', 5_050),
    said('counted/1', 5_051, 'office'),
    said('moved/1', 5_052),
  ]
  const done = said('task-done/1', 5_053)
  const kinds = (entries: readonly Entry[]) => entries.map(({ body }) => body.kind)
  expect(kinds(deedOf(done, before.toReversed()))).toEqual(['task-done/1', 'moved/1', 'finished/1'])
  const later = said('task-done/1', 5_500)
  expect(kinds(deedOf(later, before.toReversed()))).toEqual(['task-done/1'])
  const other = said('task-done/1', 5_053, 'phone', 'ben')
  expect(kinds(deedOf(other, before.toReversed()))).toEqual(['task-done/1'])
})
