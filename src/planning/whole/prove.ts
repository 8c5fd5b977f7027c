import { addRows, loadSolver, openModel } from '../model/open-model.ts'
import type { SeasonModel, Solution } from '../model/season-model.ts'
import { readSolution } from '../model/solve.ts'
import type { CapacityRow } from '../rules/capacity.ts'

/** Beyond so many yes-or-no columns a search in seconds finds nothing that rounding has not. */
const MOST_WHOLE_COLUMNS = 1200
/**
 * The search is bounded by nodes, so that the same nursery gives the same plan on any machine; the clock only ends what
 * goes far beyond. Five times as many found nothing cheaper in four invented nurseries, for a quarter more of work.
 */
const NODES_PER_SECOND = 20
const LONGEST_TIMES = 6
const LONGEST_SECONDS = 10
/**
 * A plan found is taken only where it saves more than one part in a thousand, for it may split batches for next to nothing; so
 * near to its bound the search ends, too. (At a tenth of that it took a third longer and found the same or dearer plans.)
 */
const WORTH_CHANGING = 0.001
/** Searches, each with the capacities that the last one broke. */
const MOST_SEARCHES = 4

/**
 * A mixed-integer search that begins with the rounded plan and betters it, within a time. Null when it finds nothing
 * better, or is not worth beginning.
 */
export async function proveWhole(
  model: SeasonModel,
  capacities: readonly CapacityRow[],
  rounded: Solution,
  limits: { readonly proveSeconds: number; readonly isStopped?: () => boolean },
): Promise<Solution | null> {
  const wholeColumns = model.columns.isWhole.reduce((sum, isWhole) => sum + isWhole, 0)
  if (limits.proveSeconds <= 0 || wholeColumns > MOST_WHOLE_COLUMNS || limits.isStopped?.()) return null
  const highs = await loadSolver()
  const opened = openModel(highs, model, false)
  try {
    const rows = [...capacities]
    const names = new Set(rows.map(row => `${row.rule}/${row.about}/${row.week}`))
    if (rows.length > 0) addRows(opened, rows)
    opened.options.set({
      mip_rel_gap: WORTH_CHANGING,
      mip_max_nodes: Math.ceil(NODES_PER_SECOND * limits.proveSeconds),
      time_limit: LONGEST_SECONDS + LONGEST_TIMES * limits.proveSeconds,
    })
    let best: Solution | null = null
    let from = rounded
    for (let search = 0; search < MOST_SEARCHES; search++) {
      if (from.outcome === 'optimal') opened.setSolution({ colValue: from.columnValue })
      opened.run({
        [highs.constants.callbackType.mipInterrupt](event) {
          if (limits.isStopped?.()) event.interrupt()
          return undefined
        },
      })
      if (opened.info.get('primal_solution_status') !== highs.constants.solutionStatus.feasible) break
      const { colValue } = opened.getSolution()
      const broken = model.capacities
        .flatMap(capacity => capacity.broken(colValue, 1e-4))
        .filter(row => !names.has(`${row.rule}/${row.about}/${row.week}`))
      const found = readSolution(
        model,
        'optimal',
        opened.getObjectiveValue(),
        colValue,
        new Float64Array(0),
        [],
      )
      if (broken.length === 0) {
        best = found
        break
      }
      for (const row of broken) names.add(`${row.rule}/${row.about}/${row.week}`)
      addRows(opened, broken)
      from = rounded
    }
    const isRoundedWhole = rounded.outcome === 'optimal' && isWhole(model, rounded)
    return best && (!isRoundedWhole || best.objective < rounded.objective * (1 - WORTH_CHANGING))
      ? best
      : null
  } finally {
    opened.dispose()
  }
}

const isWhole = (model: SeasonModel, { columnValue }: Solution): boolean =>
  model.wholeStarts.every(
    ({ trays }) => Math.abs(columnValue[trays]! - Math.round(columnValue[trays]!)) < 1e-5,
  )
