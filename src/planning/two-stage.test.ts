import { expect, test } from 'vitest'
import { atEqualChances, freshChances, startCost } from './fixtures/equal-chances.ts'
import { tinyKind, tinySeason } from './fixtures/tiny-season.ts'
import { twoStageProgram } from './fixtures/two-stage.ts'
import { planAnew } from './replan/plan-anew.ts'

/** Three kinds of own-rooted trees, each ordered once, begun every fourth week, past use ten weeks after they are ready. */
const season = (
  orders: readonly { readonly number: number; readonly dueWeek: number; readonly beta: number }[],
) =>
  tinySeason({
    weeks: 60,
    kinds: orders.map((_, o) => tinyKind(`own-rooted ${o}`, { usableWeeks: 10 })),
    ways: orders.map(({ dueWeek, beta }, kind) => ({
      kind,
      steps: [
        { alpha: 9, beta, days: 42, sdLogDays: 0.05, plantSdLogDays: 0.05, yearShare: 0.3 },
        { alpha: 12, beta: 3, days: 56, sdLogDays: 0.05, plantSdLogDays: 0.05, yearShare: 0.3 },
      ],
      costPerPlant: 1.5,
      openWeeks: [25, 21, 17].map(before => dueWeek - before),
    })),
    orders: orders.map(({ number, dueWeek }, kind) => ({
      kind,
      number,
      dueWeek,
      earliestWeek: dueWeek - 3,
      sure: 0.9,
      price: 40,
    })),
    more: { prices: { minute: 0, overtimeMinute: 1, missedShare: 3, latePerWeekShare: 0.05, shortShare: 4 } },
  })

const FRESH = { seasons: 3000, seed: 9 }

test('at equal chance, in seasons that neither has seen, the plan costs little more than the full two-stage program over many scenarios', async () => {
  const nursery = season([
    { number: 120, dueWeek: 30, beta: 4 },
    { number: 80, dueWeek: 38, beta: 5 },
    { number: 150, dueWeek: 48, beta: 3 },
  ])
  const { starts } = await planAnew({
    season: nursery,
    seasons: 1000,
    seed: 1,
    proveSeconds: 0,
    isStopped: () => false,
  })
  const chances = freshChances(nursery, starts, FRESH)
  for (const chance of chances) expect(chance).toBeGreaterThan(0.9 - 0.03)
  const program = await twoStageProgram(nursery, 80, 1001)
  try {
    const rival = atEqualChances(nursery, program, chances, FRESH, 7)
    expect(rival.off).toBeLessThan(0.2)
    expect(startCost(nursery, starts) / rival.cost - 1).toBeLessThan(0.02)
  } finally {
    program.dispose()
  }
})
