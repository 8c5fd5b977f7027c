import { once } from 'node:events'
import { MessageChannel } from 'node:worker_threads'
import { afterAll, expect, test } from 'vitest'
import { inventedNursery } from '../fixtures/invented-nursery.ts'
import { MONDAY } from '../fixtures/small-nursery.ts'
import { readSeason } from '../reading/read-season.ts'
import type { SeasonStart } from '../season.ts'
import { componentsOf } from './components.ts'
import { runsSharedWith, takeRuns } from './shared-runs.ts'
import { byComponent } from './simulate-by-component.ts'

const season = readSeason(
  inventedNursery({ kinds: 60, ordersPerKind: 2.5, treesPerOrder: 60, today: MONDAY, seed: 3, room: 1 }),
  MONDAY,
)
const starts: SeasonStart[] = season.ways.flatMap((way, w) => {
  const week = way.open.indexOf(1)
  return week < 0 ? [] : [{ way: w, week: way.kind < 6 ? week : Math.min(week + 30, 60), number: 120 + w }]
})
const everyOther = componentsOf(season).flatMap((kinds, part) => (part % 2 === 0 ? kinds : []))
const half = starts.filter(({ way }) => everyOther.includes(season.ways[way]!.kind))
const channels = Array.from({ length: 2 }, () => new MessageChannel())
let answered = 0
for (const { port1, port2 } of channels) {
  takeRuns(port2)
  port1.on('message', () => {
    answered += 1
  })
}
afterAll(() => {
  for (const { port1 } of channels) port1.close()
})

test('whoever runs the parts of a season, what comes of them is the same', async () => {
  expect(season.orders.length).toBeGreaterThan(100)
  const alone = await byComponent(season, 5).run(starts, [], 64)
  for (const helpers of [1, 2]) {
    answered = 0
    const lines = channels.slice(0, helpers).map(({ port1 }) => port1)
    const shared = byComponent(
      season,
      5,
      undefined,
      runsSharedWith(() => lines),
    )
    // What is begun before it is asked for is run at the other end; the rest, whoever comes first.
    shared.begin(half, [], 64)
    await once(lines[0]!, 'message')
    const together = await shared.run(starts, [], 64)
    expect(answered).toBeGreaterThan(0)
    expect(together).toEqual(alone)
  }
})

test('a season of few orders is told to nobody', async () => {
  const few = { ...season, orders: season.orders.slice(0, 20) }
  const { run } = byComponent(
    few,
    5,
    undefined,
    runsSharedWith(() => {
      throw new Error('Nobody is to be asked.')
    }),
  )
  expect(await run(starts, [], 8)).toEqual(await byComponent(few, 5).run(starts, [], 8))
})
