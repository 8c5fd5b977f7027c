import { expect, test } from 'vitest'
import { speciesById, starterProtocol } from '../../../trade/facts/index.ts'
import { ownMeasure } from './own-measure.ts'

const lychee = starterProtocol('air_layer', speciesById('lychee')!)
const apple = starterProtocol('whip_tongue_graft', speciesById('apple')!)

test('what the protocols say of a measure is told from the least to the greatest', () => {
  const ring = lychee.settings!.find(({ name }) => name === 'width of the ring')!
  expect(ownMeasure([lychee], 'width of the ring')).toMatchObject({
    low: ring.figure.low,
    high: ring.figure.high,
  })
  const wider = {
    ...lychee,
    settings: [{ ...ring, figure: { ...ring.figure, high: ring.figure.high + 20 } }],
  }
  expect(ownMeasure([lychee, wider], 'width of the ring')).toMatchObject({
    low: ring.figure.low,
    high: ring.figure.high + 20,
  })
  expect(ownMeasure([lychee], 'no such measure')).toBeNull()
})

test('shares are told as per cent, as in the guides', () => {
  const shade = lychee.settings!.find(({ name }) => name === 'shade')!
  expect(shade.unit).toBe('share')
  expect(ownMeasure([lychee], 'shade')!.high).toBeCloseTo(shade.figure.high * 100, 8)
})

test('the stem to be worked is that of the rootstocks which the protocol takes', () => {
  const taken = apple.takes.find(taking => taking.what === 'rootstock')!
  expect(ownMeasure([apple], 'stock stem at the cut')).toMatchObject({
    low: taken.what === 'rootstock' ? taken.caliperMm.min : 0,
    high: taken.what === 'rootstock' ? taken.caliperMm.max : 0,
  })
})
