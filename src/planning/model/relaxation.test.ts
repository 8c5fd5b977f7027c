import { expect, test } from 'vitest'
import { inventedNursery } from '../fixtures/invented-nursery.ts'
import { readSeason } from '../reading/read-season.ts'
import { firstMargins } from '../sureness/first-margins.ts'
import { blockModel, blocksOf, pooledBlocks } from './blocks.ts'
import { buildSeasonModel } from './build-season-model.ts'
import { drafting } from './drafting.ts'
import { loadSolver } from './open-model.ts'
import { openRelaxation } from './relaxation.ts'
import { fullCapacities } from './solve.ts'

const MONDAY = '2026-01-05'

test('blocks: columns that share a row are together, a loose column is in none, small blocks are pooled', () => {
  const draft = drafting()
  const columns = Array.from({ length: 6 }, (_, c) => draft.column({ name: `${c}`, part: 'x', cost: c }))
  const row = (...of: readonly number[]) => {
    const made = draft.row({ rule: 'r', subject: 0, about: 'r', week: -1, upper: 10 })
    for (const c of of) draft.put(made, columns[c]!, c + 1)
  }
  // 0 and 3 by the first row, 3 and 4 by the second; 1 and 5 by the third; 2 is loose.
  row(0, 3)
  row(3, 4)
  row(1, 5)
  const model = draft.finished()
  const blocks = blocksOf(model)
  expect(blocks.map(block => [[...block.columns], [...block.rows]])).toEqual([
    [
      [0, 3, 4],
      [0, 1],
    ],
    [[1, 5], [2]],
  ])
  const own = blockModel(model, blocks[1]!)
  expect([...own.columns.cost]).toEqual([1, 5])
  expect([[...own.columnStarts], [...own.indices], [...own.values]]).toEqual([
    [0, 1, 2],
    [0, 0],
    [2, 6],
  ])
  expect(pooledBlocks(blocks, 4).map(block => [...block.columns])).toEqual([[0, 1, 3, 4, 5]])
})

test('taken apart and put together again, the optimum and the duals are those of the whole: cold, and after costs, bounds and numbers have changed', async () => {
  // With half the room that a rough count asks, several weeks of places and hands are full.
  const size = { kinds: 16, ordersPerKind: 1, treesPerOrder: 100, today: MONDAY, seed: 3, room: 0.5 }
  const season = readSeason(inventedNursery(size), MONDAY)
  const margins = firstMargins(season)
  const model = buildSeasonModel(season, margins)
  expect(blocksOf(model).length).toBeGreaterThan(2)
  const highs = await loadSolver()
  const apart = openRelaxation(highs, model, 0)
  const whole = openRelaxation(highs, model, Number.POSITIVE_INFINITY)
  try {
    const solved = (relaxation: typeof apart) => {
      const full = fullCapacities(model)
      let ran = relaxation.run()
      for (let broken = full.broken(ran.columnValue); broken.length > 0; ) {
        relaxation.addRows(broken)
        ran = relaxation.run()
        broken = full.broken(ran.columnValue)
      }
      return { ...ran, rows: full.rows.length }
    }
    const first = [solved(apart), solved(whole)]
    expect(first[0]!.rows).toBeGreaterThan(0)
    expect(first[0]!.objective / first[1]!.objective).toBeCloseTo(1, 9)
    // What one more tree of each order costs, over all orders: degenerate rows may share it out differently.
    const dualValue = ({ rowDual }: (typeof first)[0]) =>
      model.orderRow.reduce((sum, row, o) => sum + rowDual[row]! * margins.plannedNumber[o]!, 0)
    expect(dualValue(first[0]!) / dualValue(first[1]!)).toBeCloseTo(1, 2)

    const starts = Int32Array.from(model.starts, ({ column }) => column)
    for (const relaxation of [apart, whole]) {
      relaxation.setCosts(
        starts,
        Float64Array.from(starts, (column, s) => model.columns.cost[column]! * (1 + 0.1 * Math.sin(s))),
      )
      relaxation.setColumnBounds(starts.subarray(0, 50), new Float64Array(50), new Float64Array(50).fill(7))
      const planned = margins.plannedNumber.map((number, o) => number * (1 + 0.05 * Math.cos(o)))
      relaxation.setRowBounds(model.orderRow, planned, planned)
    }
    const again = [solved(apart), solved(whole)]
    expect(again[0]!.objective / again[1]!.objective).toBeCloseTo(1, 9)
    expect(again[0]!.objective).not.toBeCloseTo(first[0]!.objective, 0)
  } finally {
    apart.dispose()
    whole.dispose()
  }
})
