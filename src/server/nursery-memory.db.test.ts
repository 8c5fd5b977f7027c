import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { discard, entryOf, newFolder, until } from '../../test/served-nursery.ts'
import { exampleRegisters } from '../record/example-registers.ts'
import { historyOfNursery } from '../record/fold/random-history.ts'
import { type AnyEntry, foldEntries } from '../record/index.ts'
import { type Log, openLog } from '../store/index.ts'
import { type KeptState, keepState } from './kept-state.ts'
import { type NurseryMemory, openNurseryMemory } from './nursery-memory.ts'
import { type NurseryThread, nurseryThread } from './nursery-thread.ts'

const arrival = '2026-05-19T06:00:00.000Z'
let folder: string
let log: Log
let memory: NurseryMemory
let thread: NurseryThread
let state: KeptState
beforeEach(async () => {
  folder = newFolder()
  await open()
})
afterEach(async () => {
  await thread.close()
  end()
  discard(folder)
})

async function open(): Promise<void> {
  log = await openLog(folder, { write: true })
  memory = openNurseryMemory(log)
  thread = nurseryThread(folder)
  state = keepState(memory, thread)
}
/** Ends it well: the state is kept. */
const end = () => {
  state.close()
  memory.close()
  log.close()
}
/** Ends it as a kill does, which keeps nothing: the state on the disk stays as it was. */
const kill = () => {
  const file = join(folder, 'nursery.snapshot')
  const before = existsSync(file) ? readFileSync(file) : null
  end()
  if (before !== null) writeFileSync(file, before)
}
const all = (): readonly AnyEntry[] => log.read({ afterSeq: 0, limit: 1_000_000 })
const expectRight = () => expect(memory.nursery()).toEqual(foldEntries(all()))
const history = historyOfNursery(3, 300)
const more = [
  entryOf({ kind: 'lost/1', batch: 'B1', step: 'mist', number: 2, cause: 'rot' }),
  entryOf({ kind: 'noted/1', about: 'B1', text: 'seen' }),
]

test('ended well, it begins from the state that was kept, which is the state of all entries', async () => {
  memory.append(history, arrival)
  end()
  await open()
  expect(memory.begunFrom).toBe('snapshot')
  expectRight()
})

test('entries said at once after such a start are folded with all that was before them', async () => {
  memory.append(history, arrival)
  end()
  await open()
  memory.append(more, arrival)
  expectRight()
  expect(memory.notesAbout('B1').at(-1)).toMatchObject({ id: more[1]!.id })
  expect(memory.append([...history, ...more], arrival).accepted).toEqual([])
  expectRight()
})

test('left alone after such a start, it folds the entries in between, and the state stays the same', async () => {
  memory.append(history, arrival)
  end()
  await open()
  const before = memory.nursery()
  const after = await until(
    'the folded state',
    () => memory.nursery(),
    nursery => nursery !== before,
  )
  expect(after).toEqual(before)
})

test('after a kill the state kept is older than the log, and all entries are folded', async () => {
  memory.append(history, arrival)
  state.keep()
  memory.append(more, arrival)
  kill()
  await open()
  expect(memory.begunFrom).toBe('log')
  expectRight()
  expect(memory.entries(more.map(({ id }) => id))).toHaveLength(2)
})

test('a state of another version, of another log or cut off is not used', async () => {
  memory.append([...exampleRegisters, ...history], arrival)
  end()
  const file = join(folder, 'nursery.snapshot')
  const whole = readFileSync(file, 'latin1')
  for (const bad of [
    whole.replace(/"foldVersion":\d+/, '"foldVersion":999'),
    whole.replace(/"hash":"./, '"hash":"x'),
    whole.replace(/"seq":\d+/, '"seq":3'),
    whole.slice(0, -9),
    '',
  ]) {
    writeFileSync(file, bad, 'latin1')
    await open()
    expect(memory.begunFrom).toBe('log')
    expectRight()
    end()
  }
  await open()
  expect(memory.begunFrom).toBe('snapshot')
})

test('the thread beside the server keeps the state of all entries up to now, those said since it began too', async () => {
  memory.append(history, arrival)
  const keptTo: number[] = []
  thread.onSays(said => {
    if (said.says === 'state kept') keptTo.push(said.throughSeq)
  })
  const kept = () =>
    until(
      'the state kept',
      () => keptTo.at(-1),
      to => to === memory.throughSeq(),
    )
  thread.say({ do: 'keep the state', throughSeq: memory.throughSeq() })
  await kept()
  memory.append(more, arrival)
  thread.say({ do: 'keep the state', throughSeq: memory.throughSeq() })
  await kept()
  kill()
  await open()
  expect(memory.begunFrom).toBe('snapshot')
  expectRight()
})

test('two nurseries with as many entries are told apart by the hash of the last one, and so is one after an entry', async () => {
  const say = (text: string) => memory.append([entryOf({ kind: 'noted/1', about: '', text })], arrival)
  expect(memory.lastHash()).toBe('')
  say('frost')
  const first = memory.lastHash()
  say('thaw')
  const second = memory.lastHash()
  expect(second).not.toBe(first)
  await thread.close()
  end()
  discard(folder)
  folder = newFolder()
  await open()
  say('frost')
  say('thaw')
  expect(memory.throughSeq()).toBe(2)
  expect([first, second]).not.toContain(memory.lastHash())
})
