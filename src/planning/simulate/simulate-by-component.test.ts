import { expect, test } from 'vitest'
import { inventedNursery } from '../fixtures/invented-nursery.ts'
import { MONDAY } from '../fixtures/small-nursery.ts'
import { readSeason } from '../reading/read-season.ts'
import type { SeasonStart } from '../season.ts'
import { componentsOf } from './components.ts'
import { simulatedLoads } from './outcome.ts'
import { type PartRun, runHere } from './part-runs.ts'
import { byComponent, type SimulationMemory } from './simulate-by-component.ts'
import { nothingKept, simulateLoads, simulateSeasons } from './simulate-seasons.ts'

const season = readSeason(
  inventedNursery({ kinds: 40, ordersPerKind: 1, treesPerOrder: 60, today: MONDAY, seed: 3, room: 1 }),
  MONDAY,
)
const starts: SeasonStart[] = season.ways.flatMap((way, w) => {
  const week = way.open.indexOf(1)
  return week < 0 ? [] : [{ way: w, week: way.kind < 4 ? week : Math.min(week + 30, 60), number: 120 + w }]
})

test('part by part gives what the whole gives, season for season', async () => {
  expect(componentsOf(season).length).toBeGreaterThan(1)
  const whole = simulateSeasons(season, starts, { from: 0, to: 64, seed: 5 })
  const parts = await byComponent(season, 5).run(starts, [], 64)
  expect(parts.byDue).toEqual(whole.byDue)
  expect(parts.weeksLate).toEqual(whole.weeksLate)
  expect(parts.late).toEqual(whole.late)
  const input = { from: 0, to: 64, seed: 5 }
  const wholeLoads = simulatedLoads(season, simulateLoads(season, starts, input, nothingKept(5)))
  const partLoads = simulatedLoads(season, await byComponent(season, 5).loads(starts, [], 64))
  wholeLoads.squareMetres.forEach(({ expected, badYear }, place) => {
    expected.forEach((area, week) => {
      expect(Math.abs(area - partLoads.squareMetres[place]!.expected[week]!)).toBeLessThan(1e-2)
      expect(Math.abs(badYear[week]! - partLoads.squareMetres[place]!.badYear[week]!)).toBeLessThan(1e-2)
    })
  })
  wholeLoads.minutes.forEach(({ skill, expected, badYear }, row) => {
    expect(partLoads.minutes[row]!.skill).toBe(skill)
    expected.forEach((minutes, week) => {
      expect(Math.abs(minutes - partLoads.minutes[row]!.expected[week]!)).toBeLessThan(1e-1)
      expect(Math.abs(badYear[week]! - partLoads.minutes[row]!.badYear[week]!)).toBeLessThan(1e-1)
    })
  })
  expect(wholeLoads.squareMetres.some(({ expected }) => expected.some(area => area > 1))).toBe(true)
  expect(wholeLoads.minutes.some(({ expected }) => expected.some(minutes => minutes > 1))).toBe(true)
})

test('only the component that changed is run again, and more seasons go on from those that there are', async () => {
  const memory: SimulationMemory = new Map()
  const ran: [string, number, number][] = []
  const { run: simulate } = byComponent(season, 5, memory, (all, parts) => {
    const here = runHere(all, parts)
    const run = (part: PartRun) => {
      ran.push([part.starts.map(({ way }) => way).join(','), part.input.from, part.input.to])
      return here.run(part)
    }
    return { ...here, run }
  })
  const first = await simulate(starts, [], 32)
  const all = ran.length
  await simulate(starts, [], 32)
  expect(ran.length).toBe(all)
  const changed = starts.map((start, s) => (s === 0 ? { ...start, number: start.number + 10 } : start))
  const second = await simulate(changed, [], 32)
  expect(ran.length).toBe(all + 1)
  expect(second.byDue).toEqual(simulateSeasons(season, changed, { from: 0, to: 32, seed: 5 }).byDue)
  const more = await simulate(changed, [], 48)
  expect(ran.slice(all + 1).every(([, from, to]) => from === 32 && to === 48)).toBe(true)
  expect(more.byDue).toEqual(simulateSeasons(season, changed, { from: 0, to: 48, seed: 5 }).byDue)
  const fewer = await simulate(changed, [], 32)
  expect(fewer.byDue).toEqual(second.byDue)
  expect(first.orders).toBe(season.orders.length)
})

test('fresh seasons are those that come after the ones on which a plan is settled, and these are not run again for them', async () => {
  const ran = new Set<string>()
  const { run, runFresh } = byComponent(season, 5, undefined, (all, parts) => {
    const here = runHere(all, parts)
    return {
      ...here,
      run: part => {
        ran.add(`${part.input.from} to ${part.input.to}`)
        return here.run(part)
      },
    }
  })
  const settled = await run(starts, [], 32)
  const fresh = await runFresh(starts, [], 32)
  const after = simulateSeasons(season, starts, { from: 32, to: 64, seed: 5 })
  expect(fresh.byDue).toEqual(after.byDue)
  expect(fresh.weeksLate).toEqual(after.weeksLate)
  expect(fresh).toMatchObject({ from: 32, to: 64 })
  expect(fresh.byDue).not.toEqual(settled.byDue)
  expect([...ran]).toEqual(['0 to 32', '32 to 64'])
})

test('the plan that is taken is not run again, though others were tried after it; once its loads are known, it alone is kept', async () => {
  const memory: SimulationMemory = new Map()
  let ran = 0
  const open: typeof runHere = (all, parts) => {
    const here = runHere(all, parts)
    const run = (part: PartRun) => {
      ran++
      return here.run(part)
    }
    return { ...here, run }
  }
  const tried = [0, 1, 2].map(more => starts.map(start => ({ ...start, number: start.number + more })))
  for (const each of tried) await byComponent(season, 5, memory, open).run(each, [], 16)
  const all = ran
  await byComponent(season, 5, memory, open).run(tried[0]!, [], 16)
  expect(ran).toBe(all)
  await byComponent(season, 5, memory, open).loads(tried[0]!, [], 16)
  await byComponent(season, 5, memory, open).run(tried[0]!, [], 16)
  expect(ran).toBe(all)
  await byComponent(season, 5, memory, open).run(tried[2]!, [], 16)
  expect(ran).toBe(all + all / tried.length)
})
