import { expect, test } from 'vitest'
import type { Bench } from '../../../record/index.ts'
import { layOutSite, lineOver } from './site-layout.ts'

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

test('what is said over a bench ends before the next bench or its line begins, and says that it was cut', () => {
  const at = (x: number, y: number, width = 40, height = 12) => ({ x, y, width, height })
  const over = (x: number, y: number, name: string, ...others: ReturnType<typeof at>[]) => {
    const bench = at(x, y)
    return lineOver(bench, '17%', name, [bench, ...others], 400)
  }
  // 14 letters of 7 pixels need 98, and 6 stay free before the next.
  expect(over(0, 20, 'Mist bed 1', at(104, 20))).toBe('17% Mist bed 1')
  expect(over(0, 20, 'Mist bed 1', at(103, 20))).toBe('17% Mist bed…')
  expect(over(0, 20, 'Mist bed 1', at(103, 60))).toBe('17% Mist bed 1')
  expect(over(0, 20, 'Mist bed 1', at(50, 20))).toBe('17%')
  expect(over(340, 20, 'Mist bed 1')).toBe('17% Mis…')
  // A bench close above leaves no room for words.
  expect(over(0, 20, 'Mist bed 1', at(0, 2))).toBe('')
  expect(over(0, 20, 'Mist bed 1', at(64, 2))).toBe('17% Mis…')
})
