import { describe, expect, test } from 'vitest'
import { type EntriesPushed, refusal } from '../../../api/index.ts'
import type { Entry } from '../../../record/index.ts'
import { createOutbox, type OutboxStore, type Waiting } from './outbox.ts'

const memoryStore = (): OutboxStore => {
  const kept = new Map<number, Waiting>()
  let next = 1
  return {
    all: async () => [...kept.values()].sort((a, b) => a.place - b.place),
    add: async entries => {
      for (const entry of entries) kept.set(next, { place: next++, entry, refused: null })
    },
    replace: async waiting => void kept.set(waiting.place, waiting),
    remove: async places => {
      for (const place of places) kept.delete(place)
    },
  }
}

const entry = (id: string): Entry => ({ id }) as Entry

/** A server that remembers ids, may lose its answer, and refuses what it is told to. */
const server = (refuse: readonly string[] = []) => {
  const seen: string[] = []
  let mood: 'well' | 'gone' | 'answer lost' = 'well'
  const push = async (entries: readonly Entry[]): Promise<EntriesPushed> => {
    if (mood === 'gone') throw new TypeError('Failed to fetch')
    const accepted = entries.filter(({ id }) => !refuse.includes(id) && !seen.includes(id))
    const known = entries.filter(({ id }) => seen.includes(id))
    seen.push(...accepted.map(({ id }) => id))
    if (mood === 'answer lost') throw new TypeError('network error')
    return {
      accepted: accepted.map(({ id }, index) => ({ id, seq: index })),
      known: known.map(({ id }) => id),
      refused: entries.flatMap(({ id }, index) =>
        refuse.includes(id) ? [{ index, id, refusal: refusal('id-taken', {}) }] : [],
      ),
      throughSeq: seen.length,
    }
  }
  return { seen, push, become: (next: typeof mood) => (mood = next) }
}

const ids = (count: number) => Array.from({ length: count }, (_, index) => `e${index}`)

describe('entries made on this device', () => {
  test('50 made without a server wait, and go in order, once each, when it is back', async () => {
    const office = server()
    office.become('gone')
    const outbox = createOutbox(memoryStore(), office.push)
    for (const id of ids(50)) {
      await outbox.add([entry(id)])
      await outbox.send()
    }
    expect(outbox.state().waiting).toHaveLength(50)
    expect(outbox.state().link).toBe('away')
    office.become('well')
    await outbox.send()
    expect(office.seen).toEqual(ids(50))
    expect(outbox.state()).toMatchObject({ waiting: [], link: 'together' })
  })

  test('an answer lost on the way back does not enter anything twice', async () => {
    const office = server()
    const outbox = createOutbox(memoryStore(), office.push)
    office.become('answer lost')
    await outbox.add([entry('a'), entry('b')])
    await outbox.send()
    expect(outbox.state().waiting).toHaveLength(2)
    office.become('well')
    await outbox.send()
    expect(office.seen).toEqual(['a', 'b'])
    expect(outbox.state().waiting).toEqual([])
  })

  test('a refused entry stays in sight with the reason and does not hold up the others', async () => {
    const office = server(['bad'])
    const outbox = createOutbox(memoryStore(), office.push)
    await outbox.add([entry('a'), entry('bad'), entry('b')])
    await outbox.send()
    expect(office.seen).toEqual(['a', 'b'])
    expect(outbox.state().waiting.map(({ entry: { id }, refused }) => [id, refused?.code])).toEqual([
      ['bad', 'id-taken'],
    ])
  })

  test('one that is thrown away is sent no more, outlives a reload, and put back it is tried again', async () => {
    const refuse = ['bad']
    const office = server(refuse)
    const store = memoryStore()
    const outbox = createOutbox(store, office.push)
    await outbox.add([entry('bad')])
    await outbox.send()
    await outbox.discard(outbox.state().waiting[0]!.place)
    expect(outbox.state().waiting).toEqual([])
    refuse.length = 0
    const reloaded = createOutbox(store, office.push)
    await reloaded.open()
    expect(office.seen).toEqual([])
    expect(reloaded.state().thrown.map(({ entry: { id } }) => id)).toEqual(['bad'])
    await reloaded.putBack(reloaded.state().thrown[0]!.place)
    expect(office.seen).toEqual(['bad'])
    expect(reloaded.state()).toMatchObject({ waiting: [], thrown: [] })
  })

  test('with nothing to send, whether the server answers is known from other questions', async () => {
    const outbox = createOutbox(memoryStore(), server().push)
    await outbox.send()
    expect(outbox.state().link).toBe('untried')
    outbox.heard(false)
    expect(outbox.state().link).toBe('away')
    outbox.heard(true)
    expect(outbox.state().link).toBe('together')
  })

  test('a device that cannot store says so and does not claim that the entry is kept', async () => {
    const full = { ...memoryStore(), add: () => Promise.reject(new Error('the disk is full')) }
    const outbox = createOutbox(full, server().push)
    expect(await outbox.add([entry('a')])).toBe(false)
    expect(outbox.state().notKept).toBe('the disk is full')
  })

  test('more than one load of entries goes in several pushes, still in order', async () => {
    const office = server()
    const outbox = createOutbox(memoryStore(), office.push)
    await outbox.add(ids(450).map(entry))
    await outbox.send()
    expect(office.seen).toEqual(ids(450))
  })
})
