import { expect, test } from 'vitest'
import { inventedNursery } from '../fixtures/invented-nursery.ts'
import { MONDAY } from '../fixtures/small-nursery.ts'
import { readSeason } from '../reading/read-season.ts'
import type { SeasonStart } from '../season.ts'
import { runsOf } from './runs.ts'
import { nothingKept, simulateSeasons } from './simulate-seasons.ts'
import { unitsOf } from './units.ts'

const season = readSeason(
  inventedNursery({ kinds: 24, ordersPerKind: 1, treesPerOrder: 60, today: MONDAY, seed: 3, room: 1 }),
  MONDAY,
)
const starts: SeasonStart[] = season.ways.flatMap((way, w) => {
  const week = way.open.indexOf(1)
  const isRootstock = season.kinds[way.kind]!.isRootstock
  return week < 0 ? [] : [{ way: w, week: isRootstock ? week : Math.min(week + 30, 60), number: 120 }]
})
const from = (all: readonly SeasonStart[], change: (start: SeasonStart) => number) =>
  all.map(start => ({ ...start, number: change(start) }))
const isRootstock = ({ way }: SeasonStart) => season.kinds[season.ways[way]!.kind]!.isRootstock

test('rootstocks stand in a unit before those that are worked on them, and each kind, order and run in one', () => {
  const runs = runsOf(season, starts)
  const units = unitsOf(season, runs)
  expect(units.length).toBeGreaterThan(3)
  expect(units.flatMap(({ lines }) => lines).sort()).toEqual(runs.lines.map((_, line) => line).sort())
  expect(units.flatMap(({ orders }) => orders).length).toBe(season.orders.length)
  const grafts = units.flatMap(({ grafts: all }, unit) => all.map(graft => ({ ...graft, unit })))
  expect(grafts.filter(({ comesHere }) => comesHere).length).toBe(runs.grafts.length)
  for (const { run, comesHere, unit } of grafts)
    if (comesHere)
      expect(grafts.find(taken => taken.run === run && taken.takesHere)!.unit).toBeLessThanOrEqual(unit)
  expect(grafts.some(({ takesHere, comesHere }) => takesHere && !comesHere)).toBe(true)
})

test('what is kept of the last run never changes what comes of the next', () => {
  const kept = nothingKept(5)
  const fewerStocks = from(starts, start => (isRootstock(start) ? 30 : start.number))
  const oneTree = from(starts, start => start.number + (start.way === starts.length - 1 ? 40 : 0))
  const plans = [starts, oneTree, starts, fewerStocks, from(fewerStocks, ({ number }) => number + 1), starts]
  const spans = [
    [0, 20],
    [0, 60],
    [60, 90],
    [0, 30],
    [40, 70],
    [0, 70],
  ] as const
  plans.forEach((plan, i) => {
    const [begin, to] = spans[i]!
    const input = { from: begin, to, seed: 5 }
    expect(simulateSeasons(season, plan, input, kept)).toEqual(simulateSeasons(season, plan, input))
  })
  // Fewer rootstocks were felt.
  const ready = (plan: readonly SeasonStart[]) =>
    simulateSeasons(season, plan, { from: 0, to: 20, seed: 5 }).byDue.reduce((sum, n) => sum + n, 0)
  expect(ready(fewerStocks)).toBeLessThan(ready(starts))
})
