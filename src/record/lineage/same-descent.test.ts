import fc from 'fast-check'
import { expect, test } from 'vitest'
import { exampleRegisters } from '../example-registers.ts'
import { createFold, foldEntries } from '../fold/fold.ts'
import { historyOfNursery } from '../fold/random-history.ts'
import { readHistory } from '../history.ts'
import { graphOf } from './graph.ts'
import { isSameDescent } from './same-descent.ts'

const fold = (history: string) => foldEntries([...exampleRegisters, ...readHistory(history)])

test('a count, a loss or a move changes no descent; a start, a split or a join does', () => {
  const before = fold('B1[50 of M1] -10→B2')
  for (const same of ['✓40†0?0', '-3†', '@5:mist-2', '»40'])
    expect(isSameDescent(before, fold(`B1[50 of M1] -10→B2 ${same}`)), same).toBe(true)
  for (const other of ['-5→B3', '-5⇢B2', 'B4[9]'])
    expect(isSameDescent(before, fold(`B1[50 of M1] -10→B2 ${other}`)), other).toBe(false)
})

test('where descent is said to be the same, the links are the same, entry by entry', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 2 ** 31 - 1 }), seed => {
      const growing = createFold()
      let before = growing.nursery()
      for (const entry of historyOfNursery(seed, 40)) {
        growing.add([entry])
        const now = growing.nursery()
        if (isSameDescent(before, now)) expect(linksOf(graphOf(now))).toEqual(linksOf(graphOf(before)))
        before = now
      }
    }),
    { numRuns: 20 },
  )
})

/** Every link with its day, whatever the order in which they were found. */
const linksOf = ({ links, day, atBirth }: ReturnType<typeof graphOf>) =>
  links.map((link, i) => JSON.stringify([link, day[i], atBirth[i]])).sort()
