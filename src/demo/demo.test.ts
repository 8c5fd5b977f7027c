import { describe, expect, test } from 'vitest'
import { Entry, foldEntries } from '../record/index.ts'
import { dayNumber } from '../science/index.ts'
import type { MotherId } from '../trade/index.ts'
import { makeDemoEntries } from './index.ts'

const today = '2026-11-25'
const entries = makeDemoEntries({ seed: 1, today })
const nursery = foldEntries(entries)
const plantsOf = (batch: { finished: number; portions: readonly { number: number }[] }): number =>
  batch.finished + batch.portions.reduce((sum, portion) => sum + portion.number, 0)

describe('the invented nursery', () => {
  test('every entry is well formed, and none lies in the future', () => {
    for (const entry of entries) expect(Entry.safeParse(entry).success, JSON.stringify(entry)).toBe(true)
    expect(entries.every(entry => entry.on <= today)).toBe(true)
  })

  test('the same number and day give the same entries; another number gives others', () => {
    expect(makeDemoEntries({ seed: 1, today })).toEqual(entries)
    expect(makeDemoEntries({ seed: 2, today })).not.toEqual(entries)
  })

  test('it is of the size of a real small nursery', () => {
    expect(new Set([...nursery.kinds.values()].map(({ species }) => species)).size).toBeGreaterThanOrEqual(15)
    expect(
      [...nursery.kinds.values()].filter(({ form }) => form !== 'rootstock').length,
    ).toBeGreaterThanOrEqual(40)
    expect(nursery.mothers.size).toBeGreaterThanOrEqual(60)
    expect(nursery.benches.size).toBe(12)
    expect(nursery.people.size).toBe(7)
    expect(nursery.orders.size).toBe(120)
    expect(entries.length).toBeGreaterThan(3_000)
  })

  test('it grows mainly other fruits than longan', () => {
    const batches = [...nursery.batches.values()]
    const longan = batches.filter(({ kind }) => nursery.kinds.get(kind)?.species === 'longan')
    expect(longan.length / batches.length).toBeLessThan(0.05)
  })

  test('a tree of several cultivars is made by the way for so many unions, with a stick of each', () => {
    const family = [...nursery.kinds.values()].filter(({ cultivars }) => cultivars.length > 1)
    expect(family.length).toBeGreaterThan(0)
    for (const { id, ways, cultivars } of family) {
      const [protocol] = ways.map(({ protocol }) => nursery.protocols.get(protocol)!)
      expect(protocol!.name).toContain(`${cultivars.length} cultivars on one tree`)
      const from = [...nursery.batches.values()]
        .filter(({ kind }) => kind === id)
        .map(({ origins }) =>
          origins.flatMap(({ id }) => nursery.mothers.get(id as MotherId)?.mother.cultivar ?? []),
        )
      expect(from.length).toBeGreaterThan(0)
      for (const ofMothers of from) expect(new Set(ofMothers)).toEqual(new Set(cultivars))
    }
  })

  test('some batches did well and some badly', () => {
    const shares = [...nursery.batches.values()].flatMap(batch =>
      batch.outcomes
        .filter(({ closed, entered }) => closed && entered > 40)
        .map(({ entered, left }) => left / entered),
    )
    expect(Math.min(...shares)).toBeLessThan(0.4)
    expect(Math.max(...shares)).toBeGreaterThan(0.95)
  })

  test('something stands on the benches on the day, and something has gone to buyers', () => {
    const batches = [...nursery.batches.values()]
    expect(batches.reduce((sum, batch) => sum + plantsOf(batch), 0)).toBeGreaterThan(5_000)
    expect(
      batches.reduce((sum, batch) => sum + batch.dispatched.reduce((all, { number }) => all + number, 0), 0),
    ).toBeGreaterThan(2_000)
  })

  test('every order is asked for in its dates, and the season reaches beyond a year', () => {
    const orders = [...nursery.orders.values()].map(({ order }) => order)
    expect(orders.every(order => order.earliest <= order.due && order.due <= order.latest)).toBe(true)
    expect(Math.max(...orders.map(order => dayNumber(order.due))) - dayNumber(today)).toBeGreaterThan(365)
  })

  test('a few things do not add up, as in every nursery', () => {
    expect(nursery.queries.length).toBeGreaterThan(0)
    expect(nursery.queries.length).toBeLessThan(30)
  })
})
