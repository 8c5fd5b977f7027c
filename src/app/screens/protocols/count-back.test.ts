import { describe, expect, test } from 'vitest'
import { speciesById, starterProtocol } from '../../../trade/facts/index.ts'
import type { Figure, Protocol } from '../../../trade/index.ts'
import { countBack } from './count-back.ts'

const exactly = (value: number): Figure => ({
  low: value,
  typical: value,
  high: value,
  basis: 'set by the nursery',
  sources: [],
})

const fig = starterProtocol('hardwood_cutting', speciesById('fig')!)
const step = fig.steps[0]!

/** Two steps, each as long and as dense as given, with shares known to about a hair. */
const twoSteps: Protocol = {
  ...fig,
  before: [],
  tray: 10,
  smallestBatch: 1,
  steps: [
    {
      ...step,
      days: exactly(28),
      survival: { low: 0.7999, typical: 0.8, high: 0.8001, basis: 'set by the nursery', sources: [] },
      plantsPerSquareMetre: exactly(100),
      work: [
        {
          task: 'Stick',
          skill: 'cuttings',
          when: 'begin',
          minutesPerPlant: exactly(0.5),
          minutesPerBatch: 10,
        },
        {
          task: 'Look',
          skill: 'general',
          when: 'each week',
          minutesPerPlant: exactly(0),
          minutesPerBatch: 5,
        },
      ],
    },
    {
      ...step,
      id: 'second' as typeof step.id,
      days: exactly(14),
      survival: { low: 1, typical: 1, high: 1, basis: 'set by the nursery', sources: [] },
      plantsPerSquareMetre: exactly(40),
      work: [
        { task: 'Pot', skill: 'potting', when: 'begin', minutesPerPlant: exactly(1), minutesPerBatch: 0 },
      ],
    },
  ],
}

describe('a protocol counted back from the trees wanted', () => {
  test('at eight of ten, 100 trees at 90 % want 132 plants (binomial), which is 140 in trays of ten', () => {
    const reckoned = countBack(twoSteps, { wanted: 100, sure: 0.9, from: '2026-03-02' })!
    expect(reckoned.start).toBe(140)
    expect(reckoned.chance).toBeGreaterThanOrEqual(0.9)
    expect(reckoned.rungs.map(({ number }) => Math.round(number))).toEqual([140, 112, 112])
  })

  test('time is the sum of the steps; work counts those alive when it is done; the bench is that of the widest step', () => {
    const { days, minutes, squareMetres, rungs } = countBack(twoSteps, {
      wanted: 100,
      sure: 0.9,
      from: '2026-03-02',
    })!
    expect(days).toBe(42)
    expect(rungs.map(({ week }) => week)).toEqual(['2026-W10', '2026-W14', '2026-W16'])
    expect(minutes).toBeCloseTo(140 * 0.5 + 10 + 4 * 5 + 112 * 1, 0)
    expect(squareMetres).toBeCloseTo(112 / 40, 1)
  })

  test('where every plant is lost, it says that no number is enough', () => {
    const lost = {
      ...twoSteps,
      steps: twoSteps.steps.map(one => ({ ...one, survival: exactly(0) })),
    }
    expect(countBack(lost, { wanted: 100_000, sure: 0.99, from: '2026-03-02' })).toBeNull()
  })
})
