import { createHash } from 'node:crypto'
import { expect, test } from 'vitest'
import type { AnyEntry } from './entry.ts'
import { canonicalJson, entryLine, parseEntry, parseEntryLine } from './entry-line.ts'
import { exampleRegisters } from './example-registers.ts'
import { foldEntries } from './fold/fold.ts'
import { historyOfNursery } from './fold/random-history.ts'
import { historyText, readHistory } from './history.ts'
import { canonicalNursery, foldVersion, nurseryFromBytes, nurseryToBytes } from './nursery-text.ts'

test('the same fact is the same text, whatever the order of its keys', () => {
  expect(canonicalJson({ b: [1, { d: null, c: 'ü' }], a: undefined })).toBe('{"b":[1,{"c":"ü","d":null}]}')
})

test('every entry is read back from its line as it was', () => {
  for (const entry of historyOfNursery(3, 300)) {
    expect(parseEntryLine(entryLine(entry))).toEqual({ kind: 'entry', entry })
  }
})

test('an entry of a newer version is read, kept word for word and written again', () => {
  const later = { ...exampleRegisters[0]!, body: { kind: 'roots-washed/1', batch: 'B7', litres: 3 } }
  const read = parseEntry(later)
  expect(read).toEqual({ kind: 'entry', entry: later })
  expect(JSON.parse(entryLine(later as AnyEntry)).body).toEqual(later.body)
})

test('an entry of ours that does not fit its form is refused with the place', () => {
  const entry = readHistory('B7[10] -3†')[1]!
  const bad = { ...entry, body: { ...entry.body, number: -3 } }
  const parsed = parseEntry(bad)
  expect(parsed.kind === 'malformed' && parsed.problems[0]?.where).toBe('body.number')
  expect(parseEntryLine('{"id":')).toMatchObject({ kind: 'malformed' })
})

test('a history is written as it was read', () => {
  const told = 'B7[120 of M1] -14† ✓80†15?11 »80:weaning ■40 -12✉O3\nB9[30 on B7] @3:mist-2 -5† ~'
  expect(historyText(readHistory(told))).toBe(told)
})

test('the folded state is read back from its bytes as it was', () => {
  const nursery = foldEntries(historyOfNursery(11, 400))
  const bytes = nurseryToBytes(nursery)
  expect(nurseryFromBytes(bytes)).toEqual(nursery)
  expect(canonicalNursery(nurseryFromBytes(bytes))).toBe(canonicalNursery(nursery))
})

test('a change of the rules or of the state raises foldVersion, so that no old snapshot is taken for new', () => {
  const state = Array.from({ length: 12 }, (_, i) =>
    canonicalNursery(foldEntries(historyOfNursery(i + 1, 150))),
  ).join()
  const now = createHash('sha256').update(state).digest('hex').slice(0, 16)
  expect({ foldVersion, now }, 'raise foldVersion in nursery-text.ts, then write both here').toEqual({
    foldVersion: 17,
    now: '81301ec92c8a0ccc',
  })
})
