import { randomBinomial } from 'd3-random'
import { drawBinomial, seededRandom } from '../src/science/index.ts'
import { type Figures, type Measured, medianSeconds } from './measure.ts'

const draws = 1_000_000
const cases = [
  [8, 0.3],
  [100, 0.4],
  [400, 0.85],
  [10_000, 0.7],
] as const

/** A million binomial draws of each of four sizes, and whether their mean and variance are right. */
export default function measure(): Measured {
  const ours = seededRandom(1)
  const theirs = seededRandom(1)
  const source = randomBinomial.source(() => theirs.uniform())
  return {
    figures: timed((n, p) => () => drawBinomial(ours, n, p)),
    rivals: { 'd3-random 3.0.2': timed((n, p) => source(n, p)) },
    notes: [
      'Both draw from the same generator. Off: difference from the exact mean and variance in standard errors.',
      'Not among the rivals: @stdlib/random-base-binomial 0.2, whose draws are wrong from n·min(p, 1 − p) = 10 on (n = 100, p = 0.4: mean 40.47 and variance 22.5 instead of 40 and 24).',
    ],
  }
}

function timed(drawer: (n: number, p: number) => () => number): Figures {
  const figures: Record<string, number> = {}
  for (const [n, p] of cases) {
    const draw = drawer(n, p)
    let sum = 0
    let square = 0
    figures[`secondsFor1e6 n=${n} p=${p}`] = medianSeconds(
      () => {
        sum = 0
        square = 0
        for (let i = 0; i < draws; i++) {
          const off = draw() - n * p
          sum += off
          square += off * off
        }
      },
      3,
      1,
    )
    const variance = n * p * (1 - p)
    const excess = (1 - 6 * p * (1 - p)) / variance
    figures[`meanOff n=${n} p=${p}`] = sum / draws / Math.sqrt(variance / draws)
    figures[`varianceOff n=${n} p=${p}`] = (square / draws / variance - 1) / Math.sqrt((2 + excess) / draws)
  }
  return figures
}
