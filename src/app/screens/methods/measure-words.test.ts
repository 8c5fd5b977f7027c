import { expect, test } from 'vitest'
import type { Setting } from '../../../trade/index.ts'
import { inUnits, measureWords } from './measure-words.ts'

const setting = (unit: string, low: number, typical: number, high: number): Setting => ({
  name: 'a measure',
  unit,
  figure: { low, typical, high, basis: 'common practice', sources: [] },
})

test('warmth is told in Fahrenheit and lengths in inches where the nursery counts so', () => {
  // 0 °C = 32 °F and 25.4 mm = 1 in, exactly (NIST SP 811, appendix B).
  expect(inUnits(setting('°C', 0, 25, 100), 'us')).toMatchObject({
    unit: '°F',
    figure: { low: 32, typical: 77, high: 212 },
  })
  expect(inUnits(setting('mm', 25.4, 50.8, 101.6), 'us')).toMatchObject({
    unit: 'in',
    figure: { low: 1, typical: 2, high: 4 },
  })
  // 1 ft = 0.3048 m exactly, so that 1 m² holds 10.7639 ft².
  expect(inUnits(setting('a m²', 0, 107.639, 1076.39), 'us').figure.typical).toBeCloseTo(10, 4)
  expect(inUnits(setting('ppm', 1, 2, 3), 'us')).toEqual(setting('ppm', 1, 2, 3))
  expect(inUnits(setting('°C', 20, 24, 27), 'metric')).toEqual(setting('°C', 20, 24, 27))
})

test('a range is short, one number where both ends agree, and below zero with a minus that is no dash', () => {
  expect(measureWords(setting('mm', 0.2, 0.3155, 1.58).figure, 'en-GB')).toEqual({
    typical: '0.32',
    range: '0.2–1.6',
  })
  expect(measureWords(setting('', 1, 1, 1).figure, 'en-GB')).toEqual({ typical: '1', range: '1' })
  expect(measureWords(setting('°C', -4, -3, -2).figure, 'en-US').range).toMatch(/^−4.*−2$/)
  expect(measureWords(setting('ppm', 500, 1000, 3000).figure, 'en-GB').typical).toBe('1,000')
})
