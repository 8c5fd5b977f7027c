import { expect, test } from 'vitest'
import { exampleRegisters } from '../example-registers.ts'
import { foldEntries } from '../fold/fold.ts'
import { readHistory } from '../history.ts'
import { affectedBy } from './affected.ts'
import type { Ref } from './graph.ts'

const fold = (history: string) => foldEntries([...exampleRegisters, ...readHistory(history)])
const mother = (id: string): Ref => ({ what: 'mother', id })

test('what carries a mother’s wood is told with what stands, and what went out of it for whom, less what came back', () => {
  const nursery = fold('B1[100 of M1] »100 »100 ■90 B2[40 on B1 of M2] »40 »40 ■40 -12✉O1 +2✉O1')
  const { carriers, sent } = affectedBy(nursery, mother('M1'))
  expect(carriers).toMatchObject([
    { batch: 'B1', came: 100, steps: 1, alive: 60, finished: 50 },
    { batch: 'B2', came: 40, steps: 2, alive: 30, finished: 30 },
  ])
  expect(sent.map(({ batch, order, number }) => [batch, order, number])).toEqual([
    ['B2', 'O1', 12],
    ['B2', 'O1', -2],
  ])
})

test('what went out of a batch before plants of the mother were put with it does not carry her', () => {
  const nursery = fold('B1[50 of M1] »50 »50 ■50 -20✉O1 B2[9 of M2] -9⇢B1 B1: -10✉O2')
  const { carriers, sent } = affectedBy(nursery, mother('M2'))
  expect(carriers.find(({ batch }) => batch === 'B1')).toMatchObject({ since: '2026-01-07' })
  expect(sent.map(({ order, number }) => [order, number])).toEqual([['O2', 10]])
})

test('what shared a bench is the wider circle, and is not among the carriers', () => {
  const nursery = fold('B1[50 of M1] @50:mist-1 B2[20 of M2] @20:mist-1')
  const { carriers, nearby } = affectedBy(nursery, mother('M1'))
  expect(carriers.map(({ batch }) => batch)).toEqual(['B1'])
  expect(nearby.benches).toMatchObject([{ batch: 'B2', bench: 'mist-1', to: null }])
})
