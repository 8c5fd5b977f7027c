import { expect, test } from 'vitest'
import { everyWeek, tinyPlace } from '../fixtures/solved.ts'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import { buildSeasonModel, withoutMargins } from './build-season-model.ts'
import { drafting } from './drafting.ts'
import { toMps } from './mps.ts'
import { loadSolver, openModel } from './open-model.ts'
import { openSolver } from './solve.ts'

const season = () => {
  const base = tinySeason({
    weeks: 20,
    kinds: [tinyKind('fig', { holdingCostPerWeek: 0.1 })],
    ways: [
      {
        kind: 0,
        steps: [{ ...certain(0.8), days: 14 }],
        openWeeks: [5, 6],
        course: { area: [{ place: 0, squareMetres: Float64Array.of(0.01, 0.01) }] },
        tray: 7,
        smallestBatch: 20,
      },
    ],
    orders: [{ kind: 0, number: 400, dueWeek: 10, price: 10 }],
    places: [tinyPlace('mist bed', everyWeek(20, 2), { extraPricePerSquareMetreWeek: 300 })],
  })
  return base
}

test('the model read back from MPS has the same optimum, capacities and all', async () => {
  const model = buildSeasonModel(season(), withoutMargins(season()))
  const solver = await openSolver(model)
  const { objective } = solver.solve()
  const highs = await loadSolver()
  const mps = toMps(model, { capacities: solver.addedRows() })
  const read = highs.createModel({ format: 'mps', data: mps })
  try {
    read.options.set({ output_flag: false })
    read.run()
    expect(read.getObjectiveValue()).toBeCloseTo(objective, 6)
  } finally {
    read.dispose()
    solver.dispose()
  }
})

test('whole trays are written as whole numbers', async () => {
  const starts = new Set([5, 6])
  const model = buildSeasonModel(season(), withoutMargins(season()), starts)
  const highs = await loadSolver()
  const ours = openModel(highs, model, false)
  const read = highs.createModel({ format: 'mps', data: toMps(model, { isWhole: true }) })
  try {
    read.options.set({ output_flag: false })
    ours.run()
    read.run()
    expect(read.getObjectiveValue()).toBeCloseTo(ours.getObjectiveValue(), 6)
    // 500 cuttings asked: 72 trays of 7 at 1 each.
    expect(ours.getObjectiveValue()).toBeCloseTo(504, 6)
  } finally {
    ours.dispose()
    read.dispose()
  }
})

test('entries that meet at one place add up, columns keep their order', () => {
  const model = drafting()
  const a = model.column({ name: 'a', part: 'x', cost: 1 })
  const b = model.column({ name: 'b', part: 'x', cost: 2, upper: 5 })
  const row = model.row({ rule: 'r', subject: 0, about: 'it', week: -1, lower: 1, upper: 4 })
  const other = model.row({ rule: 'r', subject: 0, about: 'it', week: 3, lower: 2 })
  model.put(other, b, 3)
  model.put(row, b, 1)
  model.put(row, a, 2)
  model.put(row, b, 0.5)
  const finished = model.finished()
  const { columnStarts, indices, values } = finished
  expect([...columnStarts]).toEqual([0, 1, 3])
  expect([...indices]).toEqual([0, 0, 1])
  expect([...values]).toEqual([2, 1.5, 3])
  expect(toMps(finished).split('\n').slice(5)).toEqual([
    'NAME season',
    'ROWS',
    ' N COST',
    ' L R0',
    ' G R1',
    'COLUMNS',
    ' C0 COST 1',
    ' C0 R0 2',
    ' C1 COST 2',
    ' C1 R0 1.5',
    ' C1 R1 3',
    'RHS',
    ' RHS R0 4',
    ' RHS R1 2',
    'RANGES',
    ' RANGE R0 3',
    'BOUNDS',
    ' UP BOUND C1 5',
    'ENDATA',
    '',
  ])
})
