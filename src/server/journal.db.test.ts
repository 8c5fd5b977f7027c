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

test('a place, a person or a mother tree that is said anew says what of it changed, before and after; said first, what it is', async () => {
  const { benches, people, mothers } = nursery.memory.nursery()
  const bench = [...benches.values()][0]!
  const person = [...people.values()][0]!
  const { mother } = [...mothers.values()][0]!
  const [supply] = mother.gives
  const closed = [{ from: '2026-06-01', to: '2026-06-05', areaSquareMetres: 2, why: 'new heating' }]
  const larger = entryOf({
    kind: 'bench-set/1',
    bench: { ...bench, areaSquareMetres: bench.areaSquareMetres + 1.5, closed },
  })
  await nursery.push([
    larger,
    entryOf({ kind: 'person-set/1', person: { ...person, hoursPerWeek: 12, skills: ['potting', 'seed'] } }),
    entryOf({
      kind: 'mother-set/1',
      mother: {
        ...mother,
        block: 'Far block',
        gives: [{ ...supply!, perYear: 77, perWeek: 9, months: [5, 6] }],
      },
    }),
    entryOf({
      kind: 'bench-set/1',
      bench: { ...bench, id: 'new', name: 'New', place: 'mist bed', closed: [] },
    }),
  ])
  const says = async (limit: number) => {
    const { entries } = await journal(`?limit=${limit}`)
    return entries.map(entry => inEnglish(entry.says))
  }
  expect(await says(4)).toEqual([
    `Bench New: mist bed, ${bench.areaSquareMetres} m²`,
    `Mother tree ${mother.name} changed: block Far block (before ${mother.block}), gives 77 ${supply!.material} a year in months 5, 6, at most 9 a week (before ${mother.gives
      .map(({ material, perYear, months }) => `${perYear} ${material} a year in months ${months.join(', ')}`)
      .join('; ')})`,
    `${person.name} changed: skills potting, seed (before ${person.skills.join(', ')}), hours a week 12 (before ${person.hoursPerWeek})`,
    `Bench ${bench.name} changed: area ${bench.areaSquareMetres + 1.5} m² (before ${bench.areaSquareMetres} m²), closed days 2 m² from 2026-06-01 to 2026-06-05, new heating (before none)`,
  ])
  // What is struck is no longer what was there before.
  await nursery.push([
    entryOf({ kind: 'struck/1', entry: larger.id, why: 'another bench' }),
    entryOf({ kind: 'bench-set/1', bench: { ...bench, name: 'Renamed' } }),
  ])
  expect((await says(1))[0]).toBe(`Bench Renamed changed: name Renamed (before ${bench.name})`)
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
