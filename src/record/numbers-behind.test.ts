import fc from 'fast-check'
import { expect, test } from 'vitest'
import { BatchId, type EntryId, StepId } from '../trade/index.ts'
import type { Entry } from './entry.ts'
import { sortEntries } from './entry-order.ts'
import { exampleRegisters } from './example-registers.ts'
import { finishedStep } from './fold/batch-draft.ts'
import { createFold, foldEntries } from './fold/fold.ts'
import { historyOfNursery } from './fold/random-history.ts'
import { historyText, readHistory } from './history.ts'
import { type BatchSums, batchSums, numbersBehind } from './numbers-behind.ts'
import type { Batch, Nursery } from './state.ts'

const behindIn = (nursery: Nursery, id: BatchId, byId: ReadonlyMap<EntryId, Entry>) => {
  const batch = nursery.batches.get(id)!
  return numbersBehind(
    nursery,
    batch,
    batch.entries.map(entry => byId.get(entry)!),
  )
}

test('the entries behind a number of B7[100] ✓80†15?5 »80 -10†(weaning) -20→B9 are those that made it', () => {
  const entries = readHistory('B7[100] ✓80†15?5 »80 -10† -20→B9')
  const nursery = foldEntries([...exampleRegisters, ...entries])
  const byId = new Map(entries.map(entry => [entry.id, entry]))
  const kindsBehind = (batch: string, number: string) =>
    [...behindIn(nursery, BatchId.parse(batch), byId)]
      .filter(([, numbers]) => (numbers as ReadonlySet<string>).has(number))
      .map(([entry]) => byId.get(entry)!.body.kind)
  expect(kindsBehind('B7', 'begun')).toEqual(['batch-started/1'])
  expect(kindsBehind('B7', 'lost')).toEqual(['counted/1', 'lost/1'])
  expect(kindsBehind('B7', 'lost mist')).toEqual(['counted/1'])
  expect(kindsBehind('B7', 'entered weaning')).toEqual(['advanced/1'])
  expect(kindsBehind('B7', 'left weaning')).toEqual(['split/1'])
  expect(kindsBehind('B7', 'splitOff')).toEqual(['split/1'])
  expect(kindsBehind('B9', 'begun')).toEqual(['split/1'])
})

test('finished plants that a count finds dead leave the finished, and that count is named behind both', () => {
  const entries = readHistory('B7[100] ■100 ✓95†5?0').map(entry =>
    entry.body.kind === 'counted/1' ? { ...entry, body: { ...entry.body, step: finishedStep } } : entry,
  )
  const nursery = foldEntries([...exampleRegisters, ...entries])
  const behind = behindIn(nursery, BatchId.parse('B7'), new Map(entries.map(entry => [entry.id, entry])))
  expect(nursery.batches.get(BatchId.parse('B7'))!.finished).toBe(95)
  expect(behind.get(entries.at(-1)!.id)).toContain('finished')
})

test('a number of a batch changes only at an entry that is named behind it, whatever history is told', () => {
  fc.assert(
    fc.property(fc.nat(), fc.integer({ min: 1, max: 60 }), (seed, length) => {
      const told = sortEntries(historyOfNursery(seed, length)).filter(({ body }) => body.kind !== 'struck/1')
      const byId = new Map(told.map(entry => [entry.id, entry]))
      const fold = createFold()
      let begun = 0
      let before = new Map<BatchId, BatchSums>()
      for (const entry of told) {
        fold.add([entry])
        const nursery = fold.nursery()
        const now = new Map<BatchId, BatchSums>()
        for (const batch of nursery.batches.values()) {
          // Where no protocol is written down, no one can say in which step plants stood.
          if (!nursery.protocols.has(batch.protocol)) continue
          now.set(batch.id, batchSums(batch))
        }
        // What was told of a batch before it began is done when it begins, and then touches others too.
        const begins = nursery.batches.size > begun
        begun = nursery.batches.size
        for (const [id, sums] of begins ? [] : now) {
          const was = before.get(id)!
          const named = behindIn(nursery, id, byId).get(entry.id) as ReadonlySet<string> | undefined
          for (const [number, value] of Object.entries(sums))
            if (value !== was[number as keyof BatchSums])
              expect(named?.has(number), `${number} at ${entry.body.kind}\n${historyText(told)}`).toBe(true)
        }
        before = now
      }
    }),
    { numRuns: 60 },
  )
})

/** How many stand in each step on each bench. */
const standsOf = ({ portions, finishedPortions }: Batch): ReadonlyMap<string, number> => {
  const numbers = new Map<string, number>()
  for (const { bench, number, step } of [
    ...portions,
    ...finishedPortions.map(portion => ({ ...portion, step: finishedStep })),
  ])
    numbers.set(`${step}|${bench}`, (numbers.get(`${step}|${bench}`) ?? 0) + number)
  return numbers
}

test('what stands in a step on a bench changes only at an entry that is named behind it, whatever history is told', () => {
  fc.assert(
    fc.property(fc.nat(), fc.integer({ min: 1, max: 60 }), (seed, length) => {
      const told = sortEntries(historyOfNursery(seed, length)).filter(({ body }) => body.kind !== 'struck/1')
      const byId = new Map(told.map(entry => [entry.id, entry]))
      const fold = createFold()
      let before: ReadonlyMap<BatchId, Batch> = new Map()
      for (const entry of told) {
        fold.add([entry])
        const nursery = fold.nursery()
        for (const [id, batch] of nursery.batches.size > before.size ? [] : nursery.batches) {
          if (!nursery.protocols.has(batch.protocol)) continue
          const [was, now] = [standsOf(before.get(id)!), standsOf(batch)]
          const named = behindIn(nursery, id, byId).get(entry.id)
          for (const key of new Set([...was.keys(), ...now.keys()]))
            if (was.get(key) !== now.get(key))
              expect(
                named?.has(`stands ${StepId.parse(key.split('|')[0])}`),
                `${key} at ${entry.body.kind}\n${historyText(told)}`,
              ).toBe(true)
        }
        before = nursery.batches
      }
    }),
    { numRuns: 60 },
  )
})

test('what came into a batch adds up to what is there and what left it', () => {
  fc.assert(
    fc.property(fc.nat(), fc.integer({ min: 1, max: 120 }), (seed, length) => {
      for (const batch of foldEntries(historyOfNursery(seed, length)).batches.values()) {
        const { begun, joinedIn, returned, found, ...rest } = batchSums(batch)
        expect(begun + joinedIn + returned + found).toBe(Object.values(rest).reduce((a, b) => a + b, 0))
      }
    }),
    { numRuns: 60 },
  )
})
