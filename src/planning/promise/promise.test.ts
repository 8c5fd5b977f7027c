import { describe, expect, test } from 'vitest'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import { orderOutcomes } from '../simulate/outcome.ts'
import { simulateSeasons } from '../simulate/simulate-seasons.ts'
import { earliestStart } from './earliest-start.ts'
import { earliestFromPlan, promisableByWeek } from './promises.ts'

describe('what can be promised', () => {
  const season = tinySeason({
    weeks: 60,
    kinds: [tinyKind('fig'), tinyKind('guava')],
    ways: [
      {
        kind: 0,
        steps: [{ alpha: 12, beta: 8, days: 70, sdLogDays: 0.1, plantSdLogDays: 0.05, yearShare: 0.3 }],
      },
    ],
    orders: [{ kind: 0, number: 60, dueWeek: 30 }],
  })
  const simulated = simulateSeasons(season, [{ way: 0, week: 4, number: 300 }], {
    from: 0,
    to: 2000,
    seed: 3,
    watch: [0],
  })

  test('falls with the sureness asked, is nothing before plants are ready, and keeps what orders need', () => {
    const [half] = promisableByWeek(simulated, 0.5)
    const [most] = promisableByWeek(simulated, 0.95)
    expect(half!.numbers[8]).toBe(0)
    // Half of the years: 300 · 0.6 finished less the 60 of the order, before and after it is delivered.
    expect(half!.numbers[25]!).toBeGreaterThan(110)
    expect(half!.numbers[25]!).toBeLessThan(132)
    expect(half!.numbers[40]).toBe(half!.numbers[25])
    for (let week = 0; week < 60; week++)
      expect(most!.numbers[week]!).toBeLessThanOrEqual(half!.numbers[week]!)
  })

  test('the earliest week from the plan is the first in which the number is there that surely', () => {
    const asked = { kind: 0, number: 40, sure: 0.9 }
    const fromPlan = earliestFromPlan(simulated, asked)
    const [free] = promisableByWeek(simulated, 0.9)
    expect(free!.numbers[fromPlan!.week]!).toBeGreaterThanOrEqual(40)
    expect(free!.numbers[fromPlan!.week - 1]!).toBeLessThan(40)
    expect(earliestFromPlan(simulated, { ...asked, number: 400 })).toBeNull()
  })

  test('a start made for it keeps its word: simulated, it is filled by the promised week as surely as asked', () => {
    const begun = earliestStart(season, { kind: 0, number: 80, sure: 0.9 }).start!
    expect(begun.week).toBe(0)
    const promised = tinySeason({
      weeks: 60,
      kinds: season.kinds,
      ways: [{ kind: 0, steps: [{ alpha: 12, beta: 8, days: 70, sdLogDays: 0.1, plantSdLogDays: 0.05 }] }],
      orders: [{ kind: 0, number: 80, dueWeek: begun.readyWeek }],
    })
    const [outcome] = orderOutcomes(
      promised,
      simulateSeasons(promised, [begun], { from: 0, to: 6000, seed: 5 }),
    )
    expect(outcome!.chance).toBeGreaterThan(0.9 - 0.012)
    expect(begun.chance).toBeGreaterThanOrEqual(0.9)
    const earlier = tinySeason({
      ...promised,
      orders: [{ kind: 0, number: 80, dueWeek: begun.readyWeek - 2 }],
      ways: [{ kind: 0, steps: [{ alpha: 12, beta: 8, days: 70, sdLogDays: 0.1, plantSdLogDays: 0.05 }] }],
      batches: [],
    })
    const [sooner] = orderOutcomes(earlier, simulateSeasons(earlier, [begun], { from: 0, to: 6000, seed: 5 }))
    expect(sooner!.chance).toBeLessThan(0.9)
  })

  test('certain shares and days: as many as asked, in trays, in the week that the days say', () => {
    const sure = tinySeason({
      kinds: [tinyKind('fig')],
      ways: [{ kind: 0, steps: [{ ...certain(1), days: 70 }], openWeeks: [6], tray: 20 }],
    })
    const begun = earliestStart(sure, { kind: 0, number: 95, sure: 0.9 }).start!
    // 95 ÷ 0.95 = 100, five trays; week 6 and 73.5 days: week 16.
    expect(begun).toMatchObject({ week: 6, number: 100, readyWeek: 16 })
    expect(earliestStart(sure, { kind: 1, number: 10, sure: 0.9 }).start).toBeNull()
  })
})
