import { expect, test } from 'vitest'
import { seededRandom } from '../random/seeded-random.ts'
import { emptyState } from './conditional-mode.ts'
import { crossedSystem, type MixedLogisticData } from './crossed-system.ts'
import { laplace } from './laplace.ts'
import { fitMixedLogistic } from './mixed-logistic.ts'

/** Three crossed factors with gaps, batches of one to three rows, and two beliefs. */
function tangle(rows: number, seed: number): MixedLogisticData {
  const random = seededRandom(seed)
  const whole = (below: number) => Math.floor(random.uniform() * below)
  const levelCounts = [4, 9, 3]
  const levels = new Int32Array(rows * 3)
  const batches = new Int32Array(rows)
  const entered = new Float64Array(rows)
  const survived = new Float64Array(rows)
  const fixed = new Float64Array(rows * 2)
  const beliefLogit = new Float64Array(rows)
  const beliefPrecision = new Float64Array(rows)
  let batch = -1
  for (let r = 0; r < rows; r++) {
    if (r === 0 || random.uniform() < 0.5) batch++
    batches[r] = batch
    for (let f = 0; f < 3; f++) levels[r * 3 + f] = random.uniform() < 0.1 ? -1 : whole(levelCounts[f]!)
    entered[r] = 5 + whole(60)
    const share = 1 / (1 + Math.exp(-(0.4 + (random.uniform() - 0.5) * 3)))
    survived[r] = Math.round(entered[r]! * share)
    fixed[r * 2] = 1
    fixed[r * 2 + 1] = random.uniform()
    if (r % 17 === 5) {
      beliefLogit[r] = 0.7
      beliefPrecision[r] = 3
      batches[r] = -1
    }
  }
  const used = [...new Set(batches)].filter(b => b >= 0)
  for (let r = 0; r < rows; r++) batches[r] = used.indexOf(batches[r]!)
  return {
    entered,
    survived,
    fixed,
    fixedCount: 2,
    levels,
    levelCounts,
    batches,
    batchCount: used.length,
    beliefLogit,
    beliefPrecision,
  }
}

test('the slope of the Laplace likelihood is what small steps of it show, batches of several rows and gaps included', () => {
  const system = crossedSystem(tangle(60, 3))
  const state = emptyState(system)
  for (const prior of [
    { spreadRate: 0 },
    { spreadRate: 2 },
    {
      spreadRate: 2,
      beliefs: [undefined, { sdLogit: 0.4, worthLevels: 6 }, undefined, { sdLogit: 0.7, worthLevels: 2 }],
    },
  ]) {
    const at = Float64Array.from([0.3, -0.2, Math.log(0.5), Math.log(0.3), Math.log(0.8), Math.log(0.6)])
    const gradient = new Float64Array(6)
    laplace(system, state, at, prior, gradient)
    const spare = new Float64Array(6)
    for (let i = 0; i < 6; i++) {
      const step = (h: number) => {
        const moved = Float64Array.from(at)
        moved[i]! += h
        return laplace(system, state, moved, prior, spare)
      }
      expect((step(2e-3) - step(-2e-3)) / 4e-3).toBeCloseTo(gradient[i]!, 3)
    }
  }
})

test('a batch effect eliminated beforehand and the same effect as an ordinary factor give one answer', () => {
  const data = tangle(80, 8)
  const rows = data.entered.length
  const eliminated = fitMixedLogistic(data, { spreadRate: 2 })
  const levels = new Int32Array(rows * 4)
  for (let r = 0; r < rows; r++) {
    levels.set(data.levels.subarray(r * 3, r * 3 + 3), r * 4)
    levels[r * 4 + 3] = data.batches[r]!
  }
  const ordinary = fitMixedLogistic(
    {
      ...data,
      levels,
      levelCounts: [...data.levelCounts, data.batchCount],
      batches: new Int32Array(rows).fill(-1),
      batchCount: 0,
    },
    { spreadRate: 2 },
  )
  expect(ordinary.logLikelihood).toBeCloseTo(eliminated.logLikelihood, 6)
  eliminated.fixed.forEach((value, i) => {
    expect(ordinary.fixed[i]).toBeCloseTo(value, 4)
  })
  eliminated.spreads.forEach((value, i) => {
    expect(ordinary.spreads[i]).toBeCloseTo(value, 4)
  })
})
