import fc from 'fast-check'
import { expect, test } from 'vitest'
import { canBeUnited, severalUnions, speciesById, starterProtocol } from '../facts/index.ts'
import { commonPractice } from '../figure.ts'
import { ProtocolId } from '../ids.ts'
import { copyProtocol } from './copy-protocol.ts'
import { allOf, spreadOver } from './share.ts'

const wedge = starterProtocol('top_wedge_graft', speciesById('mango')!)

test('a nursery copies a protocol, changes what it wants, and the copy says what it came from', () => {
  const own = copyProtocol(wedge, { id: ProtocolId.parse('ours'), name: 'Our wedge', changes: { tray: 20 } })
  expect(own).toEqual({ ...wedge, id: 'ours', name: 'Our wedge', tray: 20, basedOn: wedge.id })
})

test('a change that the schema refuses is refused', () => {
  expect(() =>
    copyProtocol(wedge, { id: ProtocolId.parse('ours'), name: 'Ours', changes: { steps: [] } }),
  ).toThrow()
})

test('three cultivars on one tree take three sticks, three times the handwork, and all three must take', () => {
  const three = severalUnions(wedge, { cultivars: 3, hasInterstem: false })
  expect(three.steps[0]!.survival.typical).toBeCloseTo(0.9 ** 3, 12)
  expect(three.steps[0]!.work[0]!.minutesPerPlant.typical).toBeCloseTo((3 * 60) / 45, 12)
  expect(three.takes).toEqual(wedge.takes)
  expect(three.steps.slice(1)).toEqual(wedge.steps.slice(1))
  expect(three.basedOn).toBe(wedge.id)
})

test('more cultivars on a tree never make it surer', () => {
  const shares = [2, 3, 4, 5].map(
    cultivars => severalUnions(wedge, { cultivars, hasInterstem: false }).steps[0]!.survival.typical,
  )
  expect(shares).toEqual([...shares].sort((a, b) => b - a))
})

test('an interstem takes a stick of its own beside the scion, both unions must take, and the handwork is done twice', () => {
  // Solved by hand: 0.9 · 0.9; 60 minutes for 45 wedges, twice.
  const double = severalUnions(wedge, { cultivars: 1, hasInterstem: true })
  expect(double.steps[0]!.survival.typical).toBeCloseTo(0.81, 12)
  expect(double.steps[0]!.work[0]!.minutesPerPlant.typical).toBeCloseTo((2 * 60) / 45, 12)
  expect(double.takes.flatMap(one => (one.what === 'material' ? [[one.part, one.perPlant]] : []))).toEqual([
    ['scion', 1],
    ['interstem', 1],
  ])
  const both = severalUnions(wedge, { cultivars: 2, hasInterstem: true })
  expect(both.steps[0]!.survival.typical).toBeCloseTo(0.9 ** 3, 12)
})

test('a tree of one cultivar without an interstem, or of six, has not several unions here', () => {
  const of = (cultivars: number) => () => severalUnions(wedge, { cultivars, hasInterstem: false })
  expect(of(1)).toThrow('severalUnions: cultivars must be 2 to 5, or 1 with an interstem, got 1')
  expect(of(6)).toThrow(RangeError)
})

test('buds of several cultivars are set on one stock, but no bud holds an interstem; a cutting has no stock', () => {
  const bud = starterProtocol('t_bud', speciesById('peach')!)
  expect(canBeUnited(bud, { cultivars: 2, hasInterstem: false })).toBe(true)
  expect(canBeUnited(bud, { cultivars: 1, hasInterstem: true })).toBe(false)
  expect(() => severalUnions(bud, { cultivars: 1, hasInterstem: true })).toThrow(RangeError)
  const cutting = starterProtocol('hardwood_cutting', speciesById('fig')!)
  expect(canBeUnited(cutting, { cultivars: 2, hasInterstem: false })).toBe(false)
})

const share = fc
  .tuple(
    fc.double({ min: 0.01, max: 1, noNaN: true }),
    fc.double({ min: 0.01, max: 1, noNaN: true }),
    fc.double({ min: 0.01, max: 1, noNaN: true }),
  )
  .map(ends => [...ends].sort((a, b) => a - b))
  .map(([low, typical, high]) => commonPractice(low!, typical!, high!))

test('shares of several hurdles: typical ones multiply, ends rise and stay within 0 and 1', () => {
  fc.assert(
    fc.property(fc.array(share, { minLength: 1, maxLength: 4 }), shares => {
      const all = allOf(shares, 'all')
      const typical = shares.reduce((product, one) => product * one.typical, 1)
      expect(Math.abs(all.typical - typical)).toBeLessThan(1e-12)
      expect(all.low).toBeLessThanOrEqual(all.typical)
      expect(all.high).toBeGreaterThanOrEqual(all.typical)
      expect(all.low).toBeGreaterThan(0)
      expect(all.high).toBeLessThanOrEqual(1)
    }),
  )
})

test('two hurdles by hand: spreads of a half each add to a share of 0.5^√2', () => {
  const half = commonPractice(0.25, 0.5, 1)
  expect(allOf([half, half], 'both').low).toBeCloseTo(0.25 * 0.5 ** Math.SQRT2, 12)
})

test('a share spread over stages multiplies back to the whole', () => {
  fc.assert(
    fc.property(share, fc.integer({ min: 1, max: 5 }), (whole, stages) => {
      const part = spreadOver(whole, stages)
      for (const end of ['low', 'typical', 'high'] as const)
        expect(Math.abs(part[end] ** stages - whole[end])).toBeLessThan(1e-9)
    }),
  )
})
