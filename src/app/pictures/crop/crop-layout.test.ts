import { expect, test } from 'vitest'
import { Question, whichTree } from '../../../advice/index.ts'
import { speciesById } from '../../../trade/facts/index.ts'
import { shownUnit } from '../../text/shown-unit.ts'
import { LEGEND_LINE, layOutCrop, layOutLegend } from './crop-layout.ts'

const answer = whichTree(
  Question.parse({
    species: 'apple',
    amount: { kind: 'area', squareMetres: 400 },
    climate: { kind: 'normals', coldestNightCelsius: -8, coldestMonthCelsius: 2, warmestMonthCelsius: 20 },
    wouldRework: true,
  }),
  speciesById('apple')!,
  60,
)

const kilograms = (value: number) => value

test('every way has its line, its band and a letter of its own', () => {
  const { lines } = layOutCrop(answer, 50, 700, kilograms)
  expect(lines.map(({ way }) => way)).toEqual(answer.ways.map(({ way }) => way.id))
  expect(new Set(lines.map(({ letter }) => letter)).size).toBe(lines.length)
})

test('the letters at the ends keep clear of each other', () => {
  for (const width of [320, 900]) {
    const ends = layOutCrop(answer, 50, width, kilograms)
      .lines.map(({ endY }) => endY)
      .sort((a, b) => a - b)
    for (let i = 1; i < ends.length; i++) expect(ends[i]! - ends[i - 1]!).toBeGreaterThanOrEqual(16.9)
  }
})

test('one way leads at a time, from the first crop to the last year looked at', () => {
  const { leads } = layOutCrop(answer, 50, 700, kilograms)
  expect(leads.length).toBeGreaterThan(0)
  expect(leads.at(-1)!.to).toBe(answer.years)
  for (let i = 1; i < leads.length; i++) expect(leads[i]!.from).toBe(leads[i - 1]!.to)
})

test('the numbers at the side are in the unit of the reader, and the lines keep their shape', () => {
  const pounds = layOutCrop(answer, 50, 700, shownUnit('kg', 'us').to)
  const metric = layOutCrop(answer, 50, 700, kilograms)
  const most = Math.max(...answer.ways.map(({ cropSoFar }) => cropSoFar.high.at(-1)!))
  // 1 lb = 0.45359237 kg exactly (NIST SP 811, appendix B).
  for (const [layout, size] of [
    [metric, most],
    [pounds, most / 0.45359237],
  ] as const) {
    const top = layout.numbers.at(-1)!
    expect(top).toBeGreaterThanOrEqual(size)
    expect(layout.y(0) - layout.y(size)).toBeCloseTo(((layout.y(0) - layout.y(top)) * size) / top, 6)
  }
})

test('the names of the ways stand below the drawing: in one column on a phone, in several where there is room, none over another', () => {
  expect(new Set(layOutLegend(5, 350, 300).places.map(({ x }) => x))).toEqual(new Set([0]))
  const { places, height } = layOutLegend(5, 960, 300)
  expect(new Set(places.map(({ x, y }) => `${x} ${y}`)).size).toBe(5)
  expect(new Set(places.map(({ x }) => x)).size).toBe(3)
  expect(height).toBe(300 + 2 * LEGEND_LINE)
})
