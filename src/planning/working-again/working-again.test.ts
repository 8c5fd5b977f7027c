import { describe, expect, test } from 'vitest'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import { undecidedThatTake } from './undecided.ts'
import { worthWorkingAgain } from './worth-working-again.ts'

describe('the undecided', () => {
  test('half of the time over at 80 %: of 40 undecided two thirds still take', () => {
    expect(undecidedThatTake(certain(0.8), 40, 0.5).mean).toBeCloseTo((40 * 0.4) / 0.6, 4)
  })

  test('at the begin they take as the step does, at the end none does, in between ever fewer', () => {
    const share = { alpha: 8, beta: 2 }
    expect(undecidedThatTake(share, 100, 0).mean).toBeCloseTo(80, 9)
    expect(undecidedThatTake(share, 100, 1).mean).toBe(0)
    const means = [0, 0.25, 0.5, 0.75].map(part => undecidedThatTake(share, 100, part).mean)
    expect([...means].sort((a, b) => b - a)).toEqual(means)
    const { low, mean, high } = undecidedThatTake(share, 100, 0.5)
    expect(low).toBeLessThan(mean)
    expect(high).toBeGreaterThan(mean)
  })
})

describe('working failed stocks again', () => {
  // 70 days and the middle of the start week, 73.5: ready ten weeks later. Half of the grafts take.
  const season = (openWeeks: number[], dueWeek = 20) =>
    tinySeason({
      kinds: [tinyKind('worked fig'), tinyKind('guava')],
      ways: [{ kind: 0, steps: [{ ...certain(0.5), days: 70 }], openWeeks, costPerPlant: 2 }],
      orders: [
        { kind: 0, number: 100, dueWeek, price: 10 },
        { kind: 1, number: 100, dueWeek, price: 10 },
      ],
    })

  test('pays when the trees reach an order that lacks them: worth by hand', () => {
    const found = worthWorkingAgain(season([0, 1, 2, 10, 11, 15]), 0, 100, [{ order: 0, late: 0, short: 30 }])
    // 60 grafts give the 30 trees; each is worth 10 · 1.5, each graft costs 2.
    expect(found).toMatchObject({ number: 60, trees: 30, cost: 120, worth: 30 * 15 - 120 })
    // Worked in week 10, ready in week 20; week 11 is too late.
    expect(found.lastWeek).toBe(10)
    expect(found.helps).toEqual([{ order: 0, lastWeek: 10, trees: 30 }])
  })

  test('is limited by the stocks that failed', () => {
    const found = worthWorkingAgain(season([0]), 0, 20, [{ order: 0, late: 0, short: 30 }])
    expect(found).toMatchObject({ number: 20, trees: 10, worth: 10 * 15 - 40 })
  })

  test('helps nobody when it is too late, out of season, of another kind, or nothing lacks', () => {
    const late = worthWorkingAgain(season([0], 9), 0, 100, [{ order: 0, late: 0, short: 30 }])
    expect(late).toMatchObject({ number: 0, lastWeek: null, worth: 0 })
    const closed = worthWorkingAgain(season([4]), 0, 100, [{ order: 0, late: 0, short: 30 }])
    expect(closed).toMatchObject({ number: 0, lastWeek: 4 })
    const other = worthWorkingAgain(season([0]), 0, 100, [{ order: 1, late: 0, short: 30 }])
    expect(other.lastWeek).toBeNull()
    expect(worthWorkingAgain(season([0]), 0, 100, [{ order: 0, late: 0, short: 0 }]).number).toBe(0)
  })

  test('a late tree is worth a week of lateness, not the whole tree: then it may not pay', () => {
    const found = worthWorkingAgain(season([0]), 0, 100, [{ order: 0, late: 30, short: 0 }])
    expect(found.worth).toBeCloseTo(30 * 0.5 - 120, 9)
  })
})
