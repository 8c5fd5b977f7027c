import fc from 'fast-check'
import { expect, test } from 'vitest'
import { binomialAtLeast } from '../../science/index.ts'
import { futures } from './futures.ts'
import { goodOf } from './good-of.ts'
import { chillShare, warmthShare } from './site-years.ts'

test('the number that luck gives follows the binomial distribution', () => {
  for (const [trees, chance] of [
    [1, 0.3],
    [5, 0.25],
    [20, 0.6],
  ] as const) {
    const lucks = Array.from({ length: 4000 }, (_, i) => (i + 0.5) / 4000)
    for (let least = 1; least <= trees; least++) {
      const share = lucks.filter(luck => goodOf(trees, chance, luck) * trees >= least - 1e-9).length / 4000
      expect(Math.abs(share - binomialAtLeast(least, trees, chance))).toBeLessThan(1e-3)
    }
  }
})

test('more luck never gives fewer', () => {
  const luck = fc.double({ min: 0, max: 1, noNaN: true })
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 80 }), luck, luck, luck, (trees, chance, one, other) => {
      const [less, more] = one < other ? [one, other] : [other, one]
      expect(goodOf(trees, chance, less)).toBeLessThanOrEqual(goodOf(trees, chance, more))
    }),
  )
})

test('the futures spread each unsure thing evenly, and are always the same ones', () => {
  const all = futures(200, 12)
  const mean = all.reduce((sum, { site }) => sum + site, 0) / 200
  const variance = all.reduce((sum, { site }) => sum + site ** 2, 0) / 200
  expect(Math.abs(mean)).toBeLessThan(1e-9)
  expect(Math.abs(variance - 1)).toBeLessThan(0.02)
  for (let year = 1; year <= 12; year++) {
    const coldness = all.map(future => future.coldness[year]!).sort((a, b) => a - b)
    coldness.forEach((value, i) => {
      expect(value).toBeCloseTo((i + 0.5) / 200, 9)
    })
  }
  expect(futures(200, 12)[17]!.warmth[3]).toBe(all[17]!.warmth[3])
})

test('a longer look ahead keeps the winters of the shorter one', () => {
  expect(Array.from(futures(50, 20)[9]!.coldness.slice(0, 11))).toEqual(
    Array.from(futures(50, 10)[9]!.coldness),
  )
})

test('the crop is whole where chill and warmth suffice, none where they lack by far', () => {
  expect(chillShare(800, 800)).toBe(1)
  expect(chillShare(400, 800)).toBe(0)
  expect(chillShare(600, 800)).toBeCloseTo(0.5, 12)
  expect(chillShare(0, 0)).toBe(1)
  expect(warmthShare(20, 20)).toBe(1)
  expect(warmthShare(15, 20)).toBe(0)
})
