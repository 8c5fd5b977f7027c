import { expect, test } from 'vitest'
import type { Bench } from '../../../record/index.ts'
import { layOutSite, nameWithin } from './site-layout.ts'

const bench = (id: string, length: number, width: number, at?: readonly [number, number]): Bench =>
  ({
    id,
    lengthMetres: length,
    widthMetres: width,
    position: at === undefined ? null : { xMetres: at[0], yMetres: at[1] },
  }) as unknown as Bench
const size = (b: Bench) => ({ length: b.lengthMetres!, width: b.widthMetres! })

test('benches stand where they say, in metres from the first of them', () => {
  const site = layOutSite([bench('a', 8, 3, [10, 10]), bench('b', 40, 9, [75, 60])], size)
  expect(site).toEqual({
    width: 105,
    height: 59,
    isPlaced: true,
    places: [
      { id: 'a', x: 0, y: 0, width: 8, height: 3 },
      { id: 'b', x: 65, y: 50, width: 40, height: 9 },
    ],
  })
})

test('benches without a place stand in rows and never on another', () => {
  const { places, isPlaced } = layOutSite([bench('a', 40, 3), bench('b', 40, 5), bench('c', 40, 2)], size)
  expect(isPlaced).toBe(false)
  expect(places.map(({ x, y }) => [x, y])).toEqual([
    [0, 0],
    [0, 7],
    [0, 16],
  ])
})

test('a name ends before the next one on its line begins, and says that it was cut', () => {
  const next = [
    { x: 72, y: 10 },
    { x: 20, y: 60 },
  ]
  expect(nameWithin('Mist bed 1', { x: 0, y: 0 }, next, 400)).toBe('Mist bed 1')
  expect(nameWithin('Healing tent', { x: 0, y: 0 }, next, 400)).toBe('Healing t…')
  expect(nameWithin('Healing tent', { x: 0, y: 50 }, next, 400)).toBe('')
  expect(nameWithin('Healing tent', { x: 330, y: 0 }, next, 400)).toBe('Healing…')
})
