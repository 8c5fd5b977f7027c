import { expect, test } from 'vitest'
import { layOutLineage, NARROW, WIDE, widened } from './lineage-layout.ts'

test('ancestors stand before it and descendants after, a generation to a column, none on another', () => {
  const { places } = layOutLineage(
    [
      { key: 'mother', generation: -1 },
      { key: 'stock', generation: -1 },
      { key: 'batch', generation: 0 },
      { key: 'a', generation: 1 },
      { key: 'b', generation: 1 },
    ],
    [
      { from: 'mother', to: 'batch' },
      { from: 'stock', to: 'batch' },
      { from: 'batch', to: 'a' },
      { from: 'batch', to: 'b' },
    ],
  )
  const at = (key: string) => places.get(key)!
  expect(at('mother').x).toBe(at('stock').x)
  expect(at('mother').x).toBeLessThan(at('batch').x)
  expect(at('batch').x).toBeLessThan(at('a').x)
  expect(Math.abs(at('a').y - at('b').y)).toBeGreaterThanOrEqual(WIDE.height)
})

test('relatives stand near those they are linked to, so that lines do not cross where they need not', () => {
  const { places } = layOutLineage(
    [
      { key: 'p', generation: 0 },
      { key: 'q', generation: 0 },
      { key: 'of-q', generation: 1 },
      { key: 'of-p', generation: 1 },
    ],
    [
      { from: 'p', to: 'of-p' },
      { from: 'q', to: 'of-q' },
    ],
  )
  const y = (key: string) => places.get(key)!.y
  expect(Math.sign(y('p') - y('q'))).toBe(Math.sign(y('of-p') - y('of-q')))
})

test('on a phone of 390 pixels, of which the page leaves 305, parents and children stand side by side whole', () => {
  const things = ['mother', 'stock', 'batch'].map((key, at) => ({ key, generation: at < 2 ? -1 : 0 }))
  const links = ['mother', 'stock'].map(from => ({ from, to: 'batch' }))
  const { width, places } = layOutLineage(things, links, NARROW)
  expect(width + 8).toBeLessThanOrEqual(305)
  expect(places.get('batch')!.x).toBeGreaterThan(places.get('mother')!.x + NARROW.width)
})

test('boxes are wider where there is room, so that all generations still stand side by side', () => {
  expect(widened(WIDE, 2, 1000).width).toBe(280)
  const three = widened(WIDE, 3, 800)
  expect(3 * three.width + 2 * three.across).toBeCloseTo(800, 9)
  expect(widened(NARROW, 3, 300)).toEqual(NARROW)
})
