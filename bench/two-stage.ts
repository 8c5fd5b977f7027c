import { drafting } from '../src/planning/model/drafting.ts'
import { loadSolver, openModel } from '../src/planning/model/open-model.ts'
import type { Season, SeasonStart } from '../src/planning/season.ts'
import { betaQuantile, normalCdf, normalQuantile, seededRandom } from '../src/science/index.ts'

export interface TwoStageProgram {
  /** Solved from the last basis, with a price of one tree short for each order; the cost is that of the starts. */
  plan(shortPrices: readonly number[]): { readonly starts: readonly SeasonStart[]; readonly cost: number }
  dispose(): void
}

/** Shares of a start that are ready by week of the season, in one scenario. */
type ReadyShares = Float64Array

/**
 * The full two-stage stochastic program, written out scenario by scenario: starts are decided before, who is worked and
 * who gets which tree after the scenario is known.
 */
export async function twoStageProgram(
  season: Season,
  scenarios: number,
  seed: number,
): Promise<TwoStageProgram> {
  const model = drafting()
  const about = { subject: 0, about: '', week: -1 }
  const starts = season.ways.flatMap((way, w) =>
    [...way.open].flatMap((isOpen, week) =>
      isOpen
        ? [{ way: w, week, column: model.column({ name: '', part: 'material', cost: way.costPerPlant }) }]
        : [],
    ),
  )
  const shortColumns: number[] = []
  for (let s = 0; s < scenarios; s++) {
    const ready = drawScenario(season, starts, seed, s)
    /** By kind and week: what is ready is not less than what is taken. */
    const rows = season.kinds.map(() => new Map<number, number>())
    const rowOf = (kind: number, week: number) => {
      let row = rows[kind]!.get(week)
      if (row === undefined) {
        row = model.row({ ...about, rule: 'ready', upper: 0 })
        rows[kind]!.set(week, row)
      }
      return row
    }
    const worked = starts.map(start => {
      const { courses } = season.ways[start.way]!
      const { rootstock } = courses[0]!
      if (!rootstock) return start.column
      const column = model.column({ name: '', part: 'worked', cost: 0 })
      const asPlanned = model.row({ ...about, rule: 'asPlanned', upper: 0 })
      model.put(asPlanned, column, 1)
      model.put(asPlanned, start.column, -1)
      const onStocks = model.row({ ...about, rule: 'onStocks', upper: 0 })
      model.put(onStocks, column, 1)
      for (const stock of rootstock.kinds)
        for (
          let week = Math.max(0, start.week - season.kinds[stock]!.usableWeeks);
          week <= start.week;
          week++
        ) {
          const flow = model.column({ name: '', part: 'stock', cost: 0 })
          model.put(onStocks, flow, -1)
          model.put(rowOf(stock, week), flow, 1)
        }
      return column
    })
    for (const { kinds, number, dueWeek } of season.orders) {
      const { kind } = kinds[0]!
      const filled = model.row({ ...about, rule: 'filled', lower: number })
      const short = model.column({ name: '', part: 'short', cost: 0 })
      model.put(filled, short, 1)
      shortColumns.push(short)
      for (let week = Math.max(0, dueWeek - season.kinds[kind]!.usableWeeks); week <= dueWeek; week++) {
        const flow = model.column({ name: '', part: 'tree', cost: 0 })
        model.put(filled, flow, 1)
        model.put(rowOf(kind, week), flow, 1)
      }
    }
    starts.forEach(({ way }, i) => {
      for (const [week, row] of rows[season.ways[way]!.kind]!)
        if (ready[i]![week]! > 1e-6) model.put(row, worked[i]!, -ready[i]![week]!)
    })
  }

  const highs = await loadSolver()
  const opened = openModel(highs, model.finished(), true)
  const indices = Int32Array.from(shortColumns)
  return {
    plan(shortPrices) {
      // Scenario by scenario, the orders in turn.
      const costs = Float64Array.from(indices, (_, i) => shortPrices[i % season.orders.length]! / scenarios)
      opened.changeColsCost({ kind: 'set', indices }, costs)
      opened.run()
      const { colValue } = opened.getSolution()
      const chosen = starts.map(({ way, week, column }) => ({ way, week, number: colValue[column]! }))
      return {
        starts: chosen.filter(({ number }) => number > 1e-6),
        cost: chosen.reduce((sum, { way, number }) => sum + number * season.ways[way]!.costPerPlant, 0),
      }
    },
    dispose: () => opened.dispose(),
  }
}

function drawScenario(
  season: Season,
  starts: readonly { readonly way: number; readonly week: number }[],
  seed: number,
  scenario: number,
): ReadyShares[] {
  const random = seededRandom(seed).stream(scenario)
  const years = new Map<string, number>()
  const yearScore = (name: string) => {
    let score = years.get(name)
    if (score === undefined) {
      score = normalQuantile(random.uniform())
      years.set(name, score)
    }
    return score
  }
  return starts.map(({ way, week }) => {
    const { steps } = season.ways[way]!.courses[0]!
    let share = 1
    let days = 0
    let batchLog = 0
    let plantVariance = 0
    for (const { alpha, beta, yearShare, step, medianDays, sdLogDays, plantSdLogDays } of steps) {
      const year = Math.floor((season.firstWeek + week + days / 7) / 52.18)
      const score =
        Math.sqrt(yearShare) * yearScore(`${step} ${year}`) +
        Math.sqrt(1 - yearShare) * normalQuantile(random.uniform())
      share *= betaQuantile(normalCdf(score), alpha, beta)
      const mean = medianDays * Math.exp((sdLogDays ** 2 + plantSdLogDays ** 2) / 2)
      const drawn = mean * Math.exp(sdLogDays * normalQuantile(random.uniform()) - sdLogDays ** 2 / 2)
      days += mean
      batchLog += drawn
      plantVariance += (mean * plantSdLogDays) ** 2
    }
    const spread = Math.sqrt(plantVariance) / days
    const ready = new Float64Array(season.weeks)
    let before = 0
    for (let w = week; w < season.weeks; w++) {
      const by = normalCdf(
        (Math.log(7 * (w + 1 - week) - 3.5) - Math.log(batchLog) + spread ** 2 / 2) / spread,
      )
      ready[w] = share * (by - before)
      before = by
    }
    return ready
  })
}
