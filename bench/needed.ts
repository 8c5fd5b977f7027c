import {
  chanceOfAtLeast,
  drawBeta,
  drawBinomial,
  needed,
  type Rate,
  seededRandom,
} from '../src/science/index.ts'
import { type Measured, medianSeconds } from './measure.ts'

const wanted = 10_000
const sure = 0.9
const shapes = [
  [40, 10],
  [45, 5],
  [57, 3],
  [97, 3],
] as const
const steps: readonly Rate[] = shapes.map(([alpha, beta]) => ({ kind: 'uncertain', alpha, beta }))

/** The number to start for 10,000 plants through four uncertain steps, against simulating as exactly. */
export default function measure(): Measured {
  const found = needed({ wanted, sure, steps })
  const seconds = medianSeconds(() => needed({ wanted, sure, steps }), 200, 50)
  const split = medianSeconds(() => needed({ wanted, sure, steps, batches: 4 }), 5, 1)
  const sharedYear = medianSeconds(() => needed({ wanted, sure, steps, yearShare: 0.3 }), 5, 1)

  const splitYear = medianSeconds(() => needed({ wanted, sure, steps, batches: 4, yearShare: 0.3 }), 3, 1)
  const splitMostlyYear = medianSeconds(
    () => needed({ wanted, sure, steps, batches: 4, yearShare: 0.99 }),
    3,
    1,
  )

  // Simulation at the number found: its standard error falls with the root of the seasons.
  const seasons = 200_000
  const random = seededRandom(1)
  let reached = 0
  const simulating = medianSeconds(
    () => {
      reached = 0
      for (let season = 0; season < seasons; season++) {
        let plants = found.start
        for (const [alpha, beta] of shapes)
          plants = drawBinomial(random, plants, drawBeta(random, alpha, beta))
        if (plants >= wanted) reached++
      }
    },
    3,
    1,
  )
  const standardError = Math.sqrt((found.chance * (1 - found.chance)) / seasons)
  const exact = chanceOfAtLeast({ wanted, start: found.start, steps })
  const asExact = (standardError / 1e-6) ** 2 * simulating
  return {
    figures: {
      secondsMedian: seconds,
      start: found.start,
      chance: found.chance,
      chanceOneFewer: found.chanceOneFewer,
      secondsSplitOverFourBatches: split,
      secondsWithSharedYear: sharedYear,
      secondsSplitWithSharedYear: splitYear,
      secondsSplitMostlyTheYears: splitMostlyYear,
    },
    rivals: {
      'plain simulation': {
        secondsForOneChance: simulating,
        seasons,
        standardError,
        chance: reached / seasons,
        standardErrorsFromExact: (reached / seasons - exact) / standardError,
        secondsForStandardErrorOf1e6th: asExact,
        timesSlowerForOneChance: asExact / seconds,
      },
    },
    notes: [
      'One simulated chance at the number found; the search would need several.',
      'Seconds for a standard error of 1e-6 are reckoned from those measured: the error falls with the root of the seasons.',
    ],
  }
}
