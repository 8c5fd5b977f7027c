import { afterAll, beforeAll, expect, test } from 'vitest'
import { discard, entryOf, newFolder, type ServedNursery, serveNursery } from '../../test/served-nursery.ts'
import type { EntriesPulled, EntriesPushed, Refusal } from '../api/index.ts'
import { inEnglish } from '../trade/index.ts'

let folder: string
let nursery: ServedNursery
beforeAll(async () => {
  folder = newFolder()
  nursery = await serveNursery(folder, '2026-05-19')
})
afterAll(async () => {
  await nursery.close()
  discard(folder)
})

const push = async (...entries: unknown[]): Promise<EntriesPushed> => {
  const { status, json } = await nursery.push(entries)
  expect(status).toBe(200)
  return json
}
const pull = async (after: number): Promise<EntriesPulled> =>
  (await nursery.ask(`/api/entries?after=${after}`)).json
const note = (text: string) => entryOf({ kind: 'noted/1', about: 'mist-1', text })

test('entries are numbered in the order in which they were sent, and come out in that order', async () => {
  const before = nursery.memory.throughSeq()
  const sent = [note('one'), note('two'), note('three')]
  const { accepted, known, refused, throughSeq } = await push(...sent)
  expect(accepted).toEqual(sent.map(({ id }, index) => ({ id, seq: before + 1 + index })))
  expect({ known, refused, throughSeq }).toEqual({ known: [], refused: [], throughSeq: before + 3 })
  expect((await pull(before)).entries.map(({ says }) => inEnglish(says))).toEqual(['one', 'two', 'three'])
})

test('entries sent again, whole or in part, are known and stand in the log once', async () => {
  const [first, second] = [note('told twice'), note('told once')]
  const before = nursery.memory.throughSeq()
  await push(first)
  const again = await push(first, second, second)
  expect(again.known).toEqual([first.id, second.id])
  expect(again.accepted.map(({ id }) => id)).toEqual([second.id])
  expect((await pull(before)).entries.map(({ says }) => inEnglish(says))).toEqual(['told twice', 'told once'])
})

test('of many entries a malformed one is refused with what, where and how to mend; the good ones are kept', async () => {
  const good = note('good')
  const { id } = note('never kept')
  const bad = { ...note(''), id }
  const { accepted, refused } = await push(good, bad, 'not an entry', null, note('also good'))
  expect(accepted).toHaveLength(2)
  expect(refused.map(({ index, id }) => ({ index, id }))).toEqual([
    { index: 1, id },
    { index: 2, id: null },
    { index: 3, id: null },
  ])
  expect(refused[0]!.refusal.where).toBe('body.text')
  for (const { refusal } of refused)
    for (const words of [refusal.what, refusal.where, refusal.mend]) expect(words).toMatch(/\w{3}/)
})

test.each([
  [
    'a count of part of a plant',
    { kind: 'counted/1', batch: 'B', step: 's', sign: 'rooted', taken: 1.5, dead: 0, undecided: 0 },
    'body.taken',
  ],
  [
    'fewer plants than none',
    { kind: 'counted/1', batch: 'B', step: 's', sign: 'rooted', taken: 1, dead: -1, undecided: 0 },
    'body.dead',
  ],
  [
    'a batch of nothing',
    {
      kind: 'batch-started/1',
      batch: 'B',
      name: 'B',
      kindOfTree: 'k',
      protocol: 'p',
      number: 0,
      sources: [],
      bench: null,
      workedBy: [],
    },
    'body.number',
  ],
  [
    'a hold without a reason',
    { kind: 'hold-placed/1', on: { what: 'bench', bench: 'b' }, why: '' },
    'body.why',
  ],
  [
    'a plan for a week that its year does not have',
    {
      kind: 'plan-accepted/1',
      plan: 'p',
      starts: [{ start: 's', kindOfTree: 'k', protocol: 'p', week: '2026-W54', number: 5, bench: null }],
      chances: {},
    },
    'body.starts.0.week',
  ],
  ['a kind of entry that is no word and number', { kind: 'Counted', batch: 'B' }, 'body.kind'],
])('%s is refused at its field', async (_, body, where) => {
  const { refused, accepted } = await push(entryOf(body))
  expect(accepted).toEqual([])
  expect(refused[0]?.refusal.where).toBe(where)
})

test('a day that no calendar has is refused at its field', async () => {
  const { refused } = await push(entryOf({ kind: 'noted/1', about: '', text: 'x' }, '2026-02-30'))
  expect(refused[0]?.refusal.where).toBe('on')
})

test('an entry of a kind that only a later version knows is kept word for word and handed on', async () => {
  const later = entryOf({ kind: 'roots-washed/1', batch: 'B7', litres: 12 })
  const before = nursery.memory.throughSeq()
  expect((await push(later)).accepted.map(({ id }) => id)).toEqual([later.id])
  expect(nursery.memory.entry(later.id)?.body).toEqual({ kind: 'roots-washed/1', batch: 'B7', litres: 12 })
  expect((await pull(before)).entries[0]).toMatchObject({
    kind: 'roots-washed/1',
    says: { says: expect.stringContaining('newer version') },
  })
})

test('an id that says something else than before is refused; the first stays as it was', async () => {
  const first = note('the first')
  await push(first)
  const { accepted, known, refused } = await push(note('before it'), {
    ...first,
    body: { ...first.body, text: 'another' },
  })
  expect(accepted).toHaveLength(1)
  expect(known).toEqual([])
  expect(refused).toMatchObject([{ index: 1, id: first.id, refusal: { where: 'id' } }])
  expect(nursery.memory.entry(first.id)?.body).toMatchObject({ text: 'the first' })
})

test('of two entries sent together under one id it is the second that is refused, by its own place', async () => {
  const first = note('first of the pair')
  const { accepted, refused } = await push(first, note('between'), { ...first, on: '2026-05-18' })
  expect(accepted.map(({ id }) => id)).toContain(first.id)
  expect(refused.map(({ index }) => index)).toEqual([2])
})

test.each([
  ['half a JSON text', '{"entries": [', 'application/json', 400],
  ['a word in place of the list', '{"entries": "none"}', 'application/json', 400],
  ['a bare list', '[]', 'application/json', 400],
  ['nothing', '', 'application/json', 400],
  ['JSON under another name', '{"entries": []}', 'text/plain', 415],
])('a body that is %s is refused as a whole, with how to mend it', async (_, body, type, expected) => {
  const { status, json } = await nursery.ask('/api/entries', {
    method: 'POST',
    headers: { 'content-type': type },
    body,
  })
  expect(status).toBe(expected)
  const words = expect.stringMatching(/\w{3}/)
  expect(json).toEqual({
    ...{ what: words, where: words, mend: words },
    ...{ code: 'does-not-fit', of: { where: expect.any(String) }, detail: words },
  } satisfies Refusal)
})
