import { uuidv7 } from 'uuidv7'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { discard, entryOf, newFolder, type ServedNursery, serveNursery } from '../../test/served-nursery.ts'
import type { JournalPage } from '../api/index.ts'
import { makeDemoEntries } from '../demo/index.ts'
import { inEnglish } from '../trade/index.ts'

let folder: string
let nursery: ServedNursery
beforeAll(async () => {
  folder = newFolder()
  nursery = await serveNursery(folder, '2026-05-19', makeDemoEntries({ seed: 1, today: '2026-05-19' }))
})
afterAll(async () => {
  await nursery.close()
  discard(folder)
})

const journal = async (asked = ''): Promise<JournalPage> => (await nursery.ask(`/api/journal${asked}`)).json
const paged = async (find: string): Promise<JournalPage['entries']> => {
  const all: JournalPage['entries'] = []
  let before: number | null = Number.MAX_SAFE_INTEGER
  while (before !== null) {
    const page = await journal(`?before=${before}&limit=300&find=${encodeURIComponent(find)}`)
    all.push(...page.entries)
    before = page.before
  }
  return all
}

test('page by page the journal gives each entry of the log once, the newest first', async () => {
  const seqs = (await paged('')).map(({ seq }) => seq)
  const throughSeq = nursery.memory.throughSeq()
  expect(seqs).toEqual(Array.from({ length: throughSeq }, (_, index) => throughSeq - index))
})

test('looked for by a batch, all that is about it is found, and by a person all that they said', async () => {
  const { batches, people } = nursery.memory.nursery()
  const batch = [...batches.values()].at(-1)!
  const found = await paged(batch.name)
  expect(
    new Set(found.filter(({ about }) => about.some(({ id }) => id === batch.id)).map(({ id }) => id)),
  ).toEqual(
    new Set(
      [...nursery.memory.entries(batch.entries), ...nursery.memory.notesAbout(batch.id)].map(({ id }) => id),
    ),
  )
  const person = [...people.values()][0]!
  const said = nursery.memory.after(0, Number.MAX_SAFE_INTEGER).filter(({ by }) => by === person.id)
  expect(said.length).toBeGreaterThan(0)
  const ids = new Set((await paged(person.name.toUpperCase())).map(({ id }) => id))
  expect(said.filter(({ id }) => !ids.has(id))).toEqual([])
})

test('what is struck stands struck with its reason, the striking says what it took back, and struck itself it counts no more', async () => {
  const wrong = entryOf({ kind: 'noted/1', about: 'mist-1', text: 'the wrong words' })
  const strike = entryOf({ kind: 'struck/1', entry: wrong.id, why: 'misheard' })
  await nursery.push([wrong, strike])
  const [striking, struck] = (await journal('?limit=2')).entries
  expect(inEnglish(striking!.of!)).toBe('the wrong words')
  expect(struck!.struck).toMatchObject({ why: 'misheard' })
  await nursery.push([entryOf({ kind: 'struck/1', entry: strike.id, why: 'it was right' })])
  expect((await journal('?limit=3')).entries[2]!.struck).toBeNull()
})

test('of a task that is done the whole deed is named, of any number of tasks, and of one that is not done nothing', async () => {
  const [batch] = nursery.memory.nursery().batches.values()
  const deed = [
    { ...entryOf({ kind: 'noted/1', about: batch!.id, text: '80 instead of 100' }), id: uuidv7() },
    { ...entryOf({ kind: 'task-done/1', task: 'one', minutes: null }), id: uuidv7() },
    { ...entryOf({ kind: 'task-done/1', task: 'two', minutes: null }), id: uuidv7() },
  ]
  await nursery.push(deed)
  const ask = async (...tasks: string[]) =>
    (
      await nursery.ask('/api/journal/deeds', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ tasks }),
      })
    ).json
  const [note, one, two] = deed.map(({ id }) => id)
  const ofOne = { task: 'one', entries: [one, note] }
  expect(await ask('one')).toEqual([ofOne])
  expect(await ask('two', 'one', 'three')).toEqual([{ task: 'two', entries: [two] }, ofOne])
  await nursery.push([entryOf({ kind: 'struck/1', entry: one, why: 'not done' })])
  expect(await ask('one')).toEqual([])
})

test('a rate that was set names the kind of tree, or the protocol, and the step as the protocol calls it', async () => {
  const [protocol] = nursery.memory.nursery().protocols.values()
  const [kind] = nursery.memory.nursery().kinds.values()
  const step = protocol!.steps[0]!
  const survival = { low: 0.4, typical: 0.5, high: 0.6, basis: 'set by the nursery', sources: [] }
  const said = { kind: 'rate-set/1', protocol: protocol!.id, step: step.id, survival, why: 'dry spring' }
  await nursery.push([entryOf({ ...said, kindOfTree: kind!.id }), entryOf({ ...said, kindOfTree: null })])
  expect((await journal('?limit=2')).entries.map(({ says }) => inEnglish(says))).toEqual(
    [protocol!.name, kind!.name].map(what => `${what}: survival in “${step.name}” set to 50 % (dry spring)`),
  )
})
