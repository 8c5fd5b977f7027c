import { buildServer } from '../scripts/setup/build.js'
import { type InventedSize, inventedNursery } from '../src/planning/fixtures/invented-nursery.ts'
import { type Plan, type Progress, planSeason } from '../src/planning/index.ts'
import { seasonThreads } from '../src/server/index.ts'
import { root } from '../test/source-files.ts'

// Threads run as they are built.
await buildServer(root)
export const lines = seasonThreads()
export const TODAY = '2026-01-07'
const MEGA = 2 ** 20

/** An invented nursery of so many kinds; every kind has two ways, every tree kind one or two orders. */
export const nurseryOf = (kinds: number, alsoSaid: InventedSize['alsoSaid'] = []) =>
  inventedNursery({
    kinds,
    ordersPerKind: 1.5,
    treesPerOrder: 150,
    today: TODAY,
    seed: 1,
    room: 1.5,
    alsoSaid,
  })

/** Plans once and says how long each stage took. */
export async function planned(kinds: number, seasons: number) {
  const nursery = nurseryOf(kinds)
  const stages: Record<string, number> = {}
  let stage: Progress['stage'] = 'reading'
  let since = performance.now()
  const began = since
  const cpu = process.cpuUsage()
  const plan = await planSeason(
    nursery,
    { today: TODAY, throughSeq: 0, seasons, seed: 1 },
    {
      lines,
      onProgress: progress => {
        const now = performance.now()
        stages[stage] = (stages[stage] ?? 0) + (now - since) / 1000
        since = now
        stage = progress.stage
      },
    },
  )
  stages[stage] = (stages[stage] ?? 0) + (performance.now() - since) / 1000
  return {
    plan,
    figures: {
      kinds,
      orders: plan.orders.length,
      trees: plan.orders.reduce((sum, order) => sum + order.wanted, 0),
      weeks: plan.weeks,
      seasons,
      seconds: (performance.now() - began) / 1000,
      ...Object.fromEntries(Object.entries(stages).map(([name, seconds]) => [`${name} seconds`, seconds])),
      cpuSeconds: cpuSecondsSince(cpu),
      peakMB: Math.round(process.resourceUsage().maxRSS / 1024),
      gap: plan.gapShare,
      ordersAsSureAsAsked: shareAsAsked(plan),
      starts: plan.starts.length,
      planMB: JSON.stringify(plan).length / MEGA,
    },
  }
}

/** User and system time of all threads: what the work costs, however busy the machine. */
const cpuSecondsSince = (before: NodeJS.CpuUsage) => {
  const { user, system } = process.cpuUsage(before)
  return (user + system) / 1e6
}

export const shareAsAsked = ({ orders }: Plan) =>
  orders.filter(({ chance, asked }) => chance >= asked - 0.02).length / Math.max(1, orders.length)
