import { describe, expect, test } from 'vitest'
import { Drawing } from '../../../trade/guides/index.ts'
import { methods } from '../../text/en/methods.ts'
import { CUTS } from './cuts.ts'
import { RING } from './drawings/air-layers.ts'
import { CHIP, PATCH, T_CUT } from './drawings/buds.ts'
import { WHIP } from './drawings/whips.ts'
import type { Point } from './path.ts'
import { uprightWithin } from './section.ts'
import { type Cut, FIELD } from './stroke.ts'

const numbers = (d: string): number[] =>
  d
    .split(/[MLCZ\s]+/)
    .filter(part => part !== '')
    .map(Number)

/** Points along a path, close enough together to measure by. */
function along(d: string): Point[] {
  const points: Point[] = []
  for (const [, command, text] of d.matchAll(/([MLC])([^MLCZ]*)/g)) {
    const [a, b, c] = pairs(numbers(text!))
    const from = points.at(-1)
    if (command === 'C') for (let i = 1; i <= 80; i++) points.push(cubic(from!, a!, b!, c!, i / 80))
    else if (command === 'L') for (let i = 1; i <= 80; i++) points.push(between(from!, a!, i / 80))
    else points.push(a!)
  }
  return points
}
const pairs = (values: readonly number[]): Point[] =>
  Array.from({ length: values.length / 2 }, (_, index) => [values[2 * index]!, values[2 * index + 1]!])
const between = (a: Point, b: Point, share: number): Point => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
]
const cubic = (a: Point, b: Point, c: Point, d: Point, t: number): Point => {
  const [ab, bc, cd] = [between(a, b, t), between(b, c, t), between(c, d, t)]
  return between(between(ab, bc, t), between(bc, cd, t), t)
}
const distance = ([x, y]: Point, d: string): number =>
  Math.min(...along(d).map(([px, py]) => Math.hypot(px - x, py - y)))

const NEAR = 4
const JOINS = [
  'wedgeFit',
  'stoneFit',
  'cleftSection',
  'whipShut',
  'whipOneSide',
  'omegaShut',
  'twoJoined',
  'barkSet',
  'veneerFit',
  'flapSet',
  'tSeated',
  'chipFit',
  'chipOneSide',
  'patchFit',
] as const
const drawings = Drawing.options.map(id => ({ id, ...CUTS[id] }))

describe('every drawing', () => {
  test('is made of moves, lines and cubic curves with finite numbers inside the field', () => {
    for (const { id, strokes } of drawings) {
      expect(strokes.length, id).toBeGreaterThan(4)
      for (const { role, d } of strokes) {
        expect(d, `${id} ${role}`).toMatch(/^M[MLCZ0-9.\s-]+$/)
        for (const value of numbers(d)) {
          expect(Number.isFinite(value), `${id} ${role}: ${d}`).toBe(true)
          expect(value >= -1 && value <= FIELD + 1, `${id} ${role}: ${value} in ${d}`).toBe(true)
        }
      }
    }
  })

  test('has words of its own that say what is drawn', () => {
    const said = Drawing.options.map(id => methods.drawn[id])
    expect(Object.keys(methods.drawn).sort()).toEqual([...Drawing.options].sort())
    expect(new Set(said).size).toBe(said.length)
    for (const words of said) expect(words.length).toBeGreaterThan(30)
  })

  test('stands the right way up: the base of the wood lies below its tip', () => {
    const told = drawings.filter(({ polarity }) => polarity !== undefined)
    expect(told.length).toBeGreaterThan(80)
    for (const { id, polarity } of told) expect(polarity!.base[1], id).toBeGreaterThan(polarity!.tip[1])
  })

  // Common practice, no source: cambium must meet cambium on one side at least.
  test('that shows a join draws cambium through every place where the parts must meet', () => {
    for (const id of JOINS) {
      const { meets = [], strokes }: Cut = CUTS[id]
      expect(meets.length, id).toBeGreaterThan(0)
      const cambium = strokes.filter(({ role }) => role === 'cambium')
      for (const point of meets)
        expect(Math.min(...cambium.map(({ d }) => distance(point, d))), `${id} at ${point}`).toBeLessThan(
          NEAR,
        )
    }
  })

  test('of two parts in section draws the cambium of both up to the join', () => {
    for (const id of [
      'whipShut',
      'whipOneSide',
      'omegaShut',
      'twoJoined',
      'cleftSection',
      'chipFit',
    ] as const) {
      const { meets = [], strokes }: Cut = CUTS[id]
      const cambium = strokes.filter(({ role }) => role === 'cambium')
      for (const point of meets)
        expect(
          cambium.filter(({ d }) => distance(point, d) < NEAR).length,
          `${id} at ${point}`,
        ).toBeGreaterThan(1)
    }
  })
})

describe('the measures of the cuts', () => {
  test('a ring is wider than its branch is thick (common practice, no source: one and a half times)', () => {
    expect((RING.bottom - RING.top) / RING.branchWidth).toBeCloseTo(1.5, 5)
  })

  test('a whip’s slant is at least twice as long as the stem is thick (common practice, no source)', () => {
    expect(WHIP.slant / WHIP.width).toBeGreaterThanOrEqual(2)
  })

  test('the bud of a T lies wholly below the bar', () => {
    expect(T_CUT.bud).toBeGreaterThan(T_CUT.bar + 12)
    expect(T_CUT.bud).toBeLessThan(T_CUT.foot)
  })

  test('the lip of a chip slopes down and in', () => {
    expect(CHIP.lipIn).toBeGreaterThan(CHIP.lipOut)
    expect(CHIP.depth).toBeGreaterThan(0)
  })

  test('patch and window are one size', () => {
    expect(PATCH.right - PATCH.left).toBeGreaterThan(0)
    expect(PATCH.bottom - PATCH.top).toBeGreaterThan(PATCH.right - PATCH.left)
  })
})

test('an upright meets a shape where it enters and leaves it', () => {
  const box = [
    [0, 0],
    [10, 0],
    [10, 20],
    [0, 20],
  ] as const
  expect(uprightWithin(box, 4)).toEqual([
    [
      [4, 0],
      [4, 20],
    ],
  ])
  expect(uprightWithin(box, 12)).toEqual([])
})
