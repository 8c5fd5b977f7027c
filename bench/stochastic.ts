import { atEqualChances, batchesOf, freshChances, startCost } from '../src/planning/fixtures/equal-chances.ts'
import { type TinyStep, tinyKind, tinySeason } from '../src/planning/fixtures/tiny-season.ts'
import { twoStageProgram } from '../src/planning/fixtures/two-stage.ts'
import { buildSeasonModel } from '../src/planning/model/build-season-model.ts'
import { openSolver } from '../src/planning/model/solve.ts'
import { BATCH_MINUTES } from '../src/planning/reading/batch-minutes.ts'
import type { Season, SeasonStart } from '../src/planning/season.ts'
import { simulateSeasons } from '../src/planning/simulate/simulate-seasons.ts'
import { firstMargins } from '../src/planning/sureness/first-margins.ts'
import { settleMargins } from '../src/planning/sureness/settle-margins.ts'
import { settleSpread } from '../src/planning/sureness/settle-spread.ts'
import { withCover } from '../src/planning/sureness/with-cover.ts'
import { seededRandom } from '../src/science/index.ts'

const NURSERIES = 6
const SCENARIOS = 250
const FRESH = { seasons: 20_000, seed: 9 }
const SURE = [0.8, 0.9, 0.95]
const PRICE_ROUNDS = 14
/** What a batch fewer is worth to the planner, at the usual 20 an hour: the program knows no price of a batch. */
const WORTH_OF_BATCH = (BATCH_MINUTES / 60) * 20
/** Chances further apart than this, on the logit scale, are not equal: 0.90 and 0.88. Our choice. */
const EQUAL = 0.2
/**
 * Small nurseries of 3 to 5 orders, with rootstocks and grafts, planned by us and by the full two-stage stochastic program
 * over a few hundred scenarios, its price of shortage varied order by order until it gives each order the chance that ours
 * gives. Both plans are run through the same fresh seasons. As everywhere, ours is the cheaper of two: starts spread over
 * several weeks, and few large batches, what a batch less is worth counted in.
 */
export default async () => {
  const began = performance.now()
  const excess: number[] = []
  const excessWithBatches: number[] = []
  const notes: string[] = []
  /** Plans to whose chances the program did not come. */
  let unequal = 0
  for (let nursery = 1; nursery <= NURSERIES; nursery++) {
    const program = await twoStageProgram(smallNursery(nursery, 0.9), SCENARIOS, 1000 + nursery)
    for (const sure of SURE) {
      const season = smallNursery(nursery, sure)
      const { starts, isSpread } = await ourStarts(season)
      const chances = freshChances(season, starts, FRESH)
      const cost = startCost(season, starts)
      const rival = atEqualChances(season, program, chances, FRESH, PRICE_ROUNDS)
      const said = (all: readonly number[]) => all.map(chance => chance.toFixed(3)).join(' ')
      const note = `nursery ${nursery} at ${sure}, ${isSpread ? 'spread' : 'not spread'}: ours ${cost.toFixed(0)} in ${batchesOf(starts)} batches (${said(chances)}), two-stage ${rival.cost.toFixed(0)} in ${rival.batches} (${said(rival.chances)})`
      notes.push(note)
      process.stderr.write(`${note}\n`)
      if (rival.off > EQUAL) {
        unequal++
        continue
      }
      excess.push(cost / rival.cost - 1)
      const batches = WORTH_OF_BATCH * batchesOf(starts)
      excessWithBatches.push((cost + batches) / (rival.cost + WORTH_OF_BATCH * rival.batches) - 1)
    }
    program.dispose()
  }
  return {
    figures: {
      plans: excess.length,
      plansNotCompared: unequal,
      meanExcessShare: mean(excess),
      worstExcessShare: Math.max(...excess),
      meanExcessShareWithBatches: mean(excessWithBatches),
      seconds: (performance.now() - began) / 1000,
    },
    rivals: {},
    notes: [
      `with batches: each batch counted as ${WORTH_OF_BATCH} more, on both sides`,
      `two-stage program over ${SCENARIOS} scenarios, both measured on ${FRESH.seasons} fresh seasons`,
      ...notes,
    ],
  }
}

type Bought = readonly { readonly kind: number; readonly week: number; readonly number: number }[]

/** Rootstocks, a worked and an own-rooted kind, begun every fourth week; trees are past use after ten weeks. */
function smallNursery(seed: number, sure: number): Season {
  const random = seededRandom(seed)
  const between = (low: number, high: number) => low + (high - low) * random.uniform()
  const step = (days: number): TinyStep => ({
    alpha: between(8, 25),
    beta: between(3, 8),
    days,
    sdLogDays: 0.05,
    plantSdLogDays: 0.05,
    yearShare: 0.3,
  })
  const openWeeks = Array.from({ length: 15 }, (_, i) => 4 * i)
  const stocks = [step(70)]
  const worked = [step(28), step(70)]
  const ownRooted = [step(42), step(56)]
  const orders = Array.from({ length: 3 + (seed % 3) }, (_, o) => {
    const dueWeek = Math.round(between(36, 58))
    return {
      kind: 1 + (o % 2),
      number: Math.round(between(40, 160)),
      dueWeek,
      earliestWeek: dueWeek - 3,
      sure,
      price: 40,
    }
  })
  return tinySeason({
    weeks: 70,
    kinds: [
      tinyKind('rootstock', { isRootstock: true, usableWeeks: 16 }),
      tinyKind('worked', { usableWeeks: 10 }),
      tinyKind('own-rooted', { usableWeeks: 10 }),
    ],
    ways: [
      { kind: 0, steps: stocks, costPerPlant: 1, openWeeks },
      {
        kind: 1,
        steps: worked,
        costPerPlant: 2,
        openWeeks,
        course: { rootstock: { kinds: [0], offset: 0, perPlant: 1, minMm: 1, maxMm: 99 } },
      },
      { kind: 2, steps: ownRooted, costPerPlant: 1.5, openWeeks },
    ],
    orders,
    more: { prices: { minute: 0, overtimeMinute: 1, missedShare: 3, latePerWeekShare: 0.05, shortShare: 4 } },
  })
}

async function ourStarts(
  season: Season,
): Promise<{ readonly starts: readonly SeasonStart[]; readonly isSpread: boolean }> {
  const [joined, spread] = [await settledStarts(season, false), await settledStarts(season, true)]
  const worth = (starts: readonly SeasonStart[]) =>
    startCost(season, starts) + WORTH_OF_BATCH * batchesOf(starts)
  const isSpread = worth(spread) < worth(joined)
  return { starts: isSpread ? spread : joined, isSpread }
}

async function settledStarts(season: Season, isSpread: boolean): Promise<readonly SeasonStart[]> {
  const covered = withCover(season)
  const solver = await openSolver(buildSeasonModel(covered, firstMargins(season)))
  const seasonsByRound = [1000, 2000, ...Array.from({ length: 10 }, () => 4000)]
  const settle = {
    season,
    simulate: (starts: readonly SeasonStart[], bought: Bought, to: number) =>
      simulateSeasons(season, starts, { from: 0, to, seed: 1, bought }),
    seasonsByRound,
  }
  const best = isSpread
    ? await settleSpread({ ...settle, solver, seasonsBySpreadRound: seasonsByRound })
    : await settleMargins({
        ...settle,
        solve: margins => {
          solver.withMargins(margins)
          return solver.solve()
        },
      })
  solver.dispose()
  return best.plan.starts
}

const mean = (shares: readonly number[]) => shares.reduce((sum, share) => sum + share, 0) / shares.length
