import { expect, test } from 'vitest'
import { Figure } from '../../figure.ts'
import { litresFromCubicInches } from '../../units.ts'
import { sourceById, speciesById } from '../index.ts'
import { plantsPerSquareMetre, plantsPerSquareMetreAt } from './bench-density.ts'
import { ibaPpm } from './hormone-strength.ts'
import { scionKeeping } from './keeping-wood.ts'
import { motherYieldPerYear } from './mother-yield.ts'
import { pots } from './pot.ts'
import { safetyAllowance } from './safety-allowance.ts'
import { stageSurvival } from './stage-survival.ts'
import { minutesPerPlant, plantsPerPersonHour } from './work-rate.ts'

const tables: Readonly<Record<string, Figure>>[] = [
  plantsPerSquareMetre,
  ibaPpm,
  motherYieldPerYear,
  safetyAllowance,
  stageSurvival,
  plantsPerPersonHour,
  Object.fromEntries(pots.map(pot => [pot.name, pot.litres])),
]

test('every figure of the general tables rises, and its sources are listed', () => {
  for (const [name, figure] of tables.flatMap(table => Object.entries(table))) {
    expect(Figure.safeParse(figure).success, name).toBe(true)
    expect(figure.basis === 'published' ? figure.sources.length : 1, name).toBeGreaterThan(0)
    for (const id of figure.sources) expect(sourceById(id), `${name}: ${id}`).toBeDefined()
  }
})

test('plants to the square metre at a spacing, square and diagonal', () => {
  // GPN_SPACING: 400 and 462 plants to 100 square feet at 6 inches; one plant to 100 square inches at 10 inches.
  const hundredSquareFeet = 100 * 0.3048 ** 2
  expect(plantsPerSquareMetreAt(15.24, 'square') * hundredSquareFeet).toBeCloseTo(400, 6)
  expect(Math.round(plantsPerSquareMetreAt(15.24, 'diagonal') * hundredSquareFeet)).toBe(462)
  expect(plantsPerSquareMetreAt(25.4, 'square')).toBeCloseTo(15.5, 2)
})

test('pots of a class hold what their cubic inches hold', () => {
  // ANSI_Z60, read at second hand: 152 to 251, 320 to 474, 628 to 742, 785 to 1242 cubic inches.
  const inches = [
    [152, 251],
    [320, 474],
    [628, 742],
    [785, 1242],
  ] as const
  const classes = pots.filter(pot => pot.name.startsWith('Class'))
  expect(classes).toHaveLength(4)
  classes.forEach((pot, index) => {
    expect(Math.abs(pot.litres.low - litresFromCubicInches(inches[index]![0]))).toBeLessThan(0.06)
    expect(Math.abs(pot.litres.high - litresFromCubicInches(inches[index]![1]))).toBeLessThan(0.06)
  })
})

test('citrus T-buds timed at 1.33 to 1.54 minutes come back as minutes', () => {
  // OLANIYAN_CITRUS
  const minutes = minutesPerPlant(plantsPerPersonHour.citrusTBudsAlone)
  expect(minutes.low).toBeCloseTo(1.33, 2)
  expect(minutes.high).toBeCloseTo(1.54, 2)
})

test('the quick rate gives the few minutes', () => {
  const minutes = minutesPerPlant(plantsPerPersonHour.wedgesInPots)
  expect(minutes.low).toBeLessThan(minutes.typical)
  expect(minutes.typical).toBeLessThan(minutes.high)
  expect(minutes.typical).toBeCloseTo(60 / 45, 12)
})

test('dormant wood keeps for months, evergreen wood for days', () => {
  // Common practice, no source.
  expect(scionKeeping(speciesById('apple')!).days.typical).toBeGreaterThan(60)
  expect(scionKeeping(speciesById('lychee')!).days.typical).toBeLessThan(7)
  expect(scionKeeping(speciesById('mango')!).days.typical).toBe(8)
})
