import gammaln from '@stdlib/math-base-special-gammaln'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { binomialAtLeast } from '../distributions/beta.ts'
import { drawBinomial } from '../random/draw-binomial.ts'
import { drawBeta } from '../random/draw-gamma.ts'
import { drawNormal } from '../random/draw-normal.ts'
import { seededRandom } from '../random/seeded-random.ts'
import { chanceOfCourse } from './chance-of-course.ts'
import { cheapestStart } from './cheapest-start.ts'
import { courseInYear } from './in-a-year.ts'
import { chanceOfAtLeast, needed, spreadOfStart } from './needed.ts'
import { courseOf, type Rate } from './rate.ts'
import { sharePoints } from './share-points.ts'

const known = (share: number): Rate => ({ kind: 'known', share })
const uncertain = (alpha: number, beta: number): Rate => ({ kind: 'uncertain', alpha, beta })
const fourSteps = [uncertain(40, 10), uncertain(45, 5), uncertain(57, 3), uncertain(97, 3)]

const shape = fc.double({ min: Math.log(0.3), max: Math.log(3000), noNaN: true }).map(Math.exp)
const rate = fc.oneof(
  fc.record({ kind: fc.constant('uncertain' as const), alpha: shape, beta: shape }),
  fc.record({ kind: fc.constant('known' as const), share: fc.double({ min: 0.05, max: 1, noNaN: true }) }),
)
const steps = fc.array(rate, { minLength: 1, maxLength: 4 })

/** Chances of what comes out, step by step: given how many enter, the number leaving is beta-binomial. */
function stepByStep(start: number, course: readonly Rate[]): Float64Array {
  let now = new Float64Array(start + 1)
  now[start] = 1
  for (const step of course) {
    const after = new Float64Array(start + 1)
    for (let entering = 0; entering <= start; entering++)
      for (let leaving = 0; leaving <= entering; leaving++)
        after[leaving]! += now[entering]! * leavingChance(entering, leaving, step)
    now = after
  }
  return now
}

function leavingChance(entering: number, leaving: number, step: Rate): number {
  const ways = gammaln(entering + 1) - gammaln(leaving + 1) - gammaln(entering - leaving + 1)
  if (step.kind === 'known')
    return Math.exp(ways) * step.share ** leaving * (1 - step.share) ** (entering - leaving)
  const { alpha, beta } = step
  return Math.exp(
    ways +
      gammaln(alpha + leaving) +
      gammaln(beta + entering - leaving) -
      gammaln(alpha + beta + entering) -
      gammaln(alpha) -
      gammaln(beta) +
      gammaln(alpha + beta),
  )
}

describe('the chance through a chain of steps', () => {
  test('is the exact sum over every number that may leave every step, for any rates', () => {
    fc.assert(
      fc.property(steps, fc.integer({ min: 1, max: 30 }), (course, start) => {
        const exact = stepByStep(start, course)
        let atLeast = 0
        for (let wanted = start; wanted >= 1; wanted--) {
          atLeast += exact[wanted]!
          const chance = chanceOfCourse(wanted, start, courseOf('test', course))
          expect(Math.abs(chance - atLeast)).toBeLessThan(1e-9)
        }
      }),
      { numRuns: 60 },
    )
  })

  test('agrees up to 100,000 plants with a mean of binomial chances over points of the share, a second method', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ kind: fc.constant('uncertain' as const), alpha: shape, beta: shape }), {
          minLength: 1,
          maxLength: 3,
        }),
        fc.double({ min: Math.log(50), max: Math.log(100_000), noNaN: true }),
        fc.double({ min: 0.6, max: 1.4, noNaN: true }),
        (course, logStart, part) => {
          const start = Math.round(Math.exp(logStart))
          const prepared = courseOf('test', course)
          const mean = prepared.uncertain.reduce((m, { alpha, beta }) => (m * alpha) / (alpha + beta), 1)
          const wanted = Math.min(start, Math.max(1, Math.round(start * mean * part)))
          const points = sharePoints(prepared, start)
          let second = 0
          points.shares.forEach((share, i) => {
            second += points.weights[i]! * binomialAtLeast(wanted, start, share)
          })
          expect(Math.abs(chanceOfCourse(wanted, start, prepared) - second)).toBeLessThan(1e-6)
        },
      ),
      { numRuns: 8 },
    )
  })

  test('does not depend on the order of the steps', () => {
    fc.assert(
      fc.property(
        steps,
        fc.integer({ min: 1, max: 400 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (course, start, part) => {
          const wanted = Math.round(start * part)
          const there = chanceOfAtLeast({ wanted, start, steps: course })
          const back = chanceOfAtLeast({ wanted, start, steps: [...course].reverse() })
          expect(Math.abs(there - back)).toBeLessThan(1e-9)
        },
      ),
    )
  })

  test('rises with plants started and with every alpha, falls with plants wanted and with every beta', () => {
    fc.assert(
      fc.property(shape, shape, steps, fc.integer({ min: 1, max: 300 }), (alpha, beta, others, start) => {
        const wanted = Math.ceil(start / 3)
        const chance = (a: number, b: number, w: number, s: number) =>
          chanceOfAtLeast({ wanted: w, start: s, steps: [uncertain(a, b), ...others] })
        const here = chance(alpha, beta, wanted, start)
        expect(chance(alpha, beta, wanted, start + 1)).toBeGreaterThanOrEqual(here - 1e-9)
        expect(chance(alpha * 1.3, beta, wanted, start)).toBeGreaterThanOrEqual(here - 1e-9)
        expect(chance(alpha, beta * 1.3, wanted, start)).toBeLessThanOrEqual(here + 1e-9)
        expect(chance(alpha, beta, wanted + 1, start)).toBeLessThanOrEqual(here + 1e-9)
      }),
    )
  })

  test('a rate known ever better tends to the binomial chance', () => {
    const binomial = binomialAtLeast(75, 100, 0.8)
    const gap = (precision: number) =>
      Math.abs(
        chanceOfAtLeast({ wanted: 75, start: 100, steps: [uncertain(0.8 * precision, 0.2 * precision)] }) -
          binomial,
      )
    expect(gap(1e4)).toBeLessThan(gap(1e3))
    expect(gap(1e8)).toBeLessThan(1e-5)
  })

  test('two steps whose Betas join, Beta(a + b, c) after Beta(a, b), are one step Beta(a, b + c)', () => {
    fc.assert(
      fc.property(shape, shape, shape, fc.integer({ min: 1, max: 2000 }), (a, b, c, start) => {
        const wanted = Math.ceil(start / 2)
        const two = chanceOfAtLeast({ wanted, start, steps: [uncertain(a, b), uncertain(a + b, c)] })
        const one = chanceOfAtLeast({ wanted, start, steps: [uncertain(a, b + c)] })
        expect(Math.abs(two - one)).toBeLessThan(1e-9)
      }),
    )
  })

  test('a uniform rate makes every number from 0 to n equally likely', () => {
    for (const wanted of [0, 1, 25, 50])
      expect(chanceOfAtLeast({ wanted, start: 50, steps: [uncertain(1, 1)] })).toBeCloseTo(
        1 - wanted / 51,
        10,
      )
  })

  test('no steps lose nothing; a step that none survives leaves nothing', () => {
    expect(chanceOfAtLeast({ wanted: 7, start: 7, steps: [] })).toBe(1)
    expect(chanceOfAtLeast({ wanted: 1, start: 7, steps: [known(0), uncertain(3, 2)] })).toBe(0)
  })
})

describe('the number to start', () => {
  test('is the smallest: one fewer does not reach the chance', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 3000 }),
        fc.double({ min: 0.5, max: 0.99, noNaN: true }),
        fc.array(
          fc.oneof(
            fc.record({
              kind: fc.constant('uncertain' as const),
              alpha: fc.double({ min: 2, max: 200, noNaN: true }),
              beta: fc.double({ min: 0.5, max: 60, noNaN: true }),
            }),
            fc.record({
              kind: fc.constant('known' as const),
              share: fc.double({ min: 0.2, max: 1, noNaN: true }),
            }),
          ),
          { maxLength: 4 },
        ),
        (wanted, sure, course) => {
          const got = needed({ wanted, sure, steps: course })
          expect(got.start).toBeGreaterThanOrEqual(wanted)
          expect(got.chance).toBeGreaterThanOrEqual(sure - 1e-10)
          expect(got.chanceOneFewer).toBeLessThan(sure)
          expect(chanceOfAtLeast({ wanted, start: got.start, steps: course })).toBeCloseTo(got.chance, 10)
          expect(chanceOfAtLeast({ wanted, start: got.start - 1, steps: course })).toBeCloseTo(
            got.chanceOneFewer,
            10,
          )
        },
      ),
      { numRuns: 60 },
    )
  })

  test('nothing wanted needs nothing; all certain needs what is wanted', () => {
    expect(needed({ wanted: 0, sure: 0.9, steps: fourSteps }).start).toBe(0)
    expect(needed({ wanted: 12, sure: 0.99, steps: [known(1)] }).start).toBe(12)
  })

  test('what no start can reach is refused in words', () => {
    expect(() => needed({ wanted: 1, sure: 0.9, steps: [known(0)] })).toThrow(RangeError)
    expect(() => needed({ wanted: 1.5, sure: 0.9, steps: [] })).toThrow(
      'needed: wanted must be a whole number of 0 to 100000000, got 1.5',
    )
    expect(() => needed({ wanted: 1, sure: 1, steps: [] })).toThrow('needed: sure must be between 0 and 1')
  })

  test('simulated seasons give the chance and the spread that are stated, within four standard errors', () => {
    const { start, chance, spread } = needed({ wanted: 400, sure: 0.85, steps: fourSteps })
    const seasons = 40_000
    const random = seededRandom(11)
    let reached = 0
    let sum = 0
    let square = 0
    let belowP10 = 0
    for (let i = 0; i < seasons; i++) {
      let plants = start
      for (const step of fourSteps)
        if (step.kind === 'uncertain')
          plants = drawBinomial(random, plants, drawBeta(random, step.alpha, step.beta))
      if (plants >= 400) reached++
      if (plants <= spread.p10) belowP10++
      sum += plants
      square += (plants - spread.mean) ** 2
    }
    expect(Math.abs(reached / seasons - chance)).toBeLessThan(
      4 * Math.sqrt((chance * (1 - chance)) / seasons),
    )
    expect(Math.abs(sum / seasons - spread.mean)).toBeLessThan((4 * spread.sd) / Math.sqrt(seasons))
    expect(Math.abs(Math.sqrt(square / seasons) / spread.sd - 1)).toBeLessThan(
      4 / Math.sqrt(2 * seasons) + 0.003,
    )
    expect(belowP10 / seasons).toBeGreaterThan(0.1 - 4 * Math.sqrt(0.09 / seasons))
  })
})

describe('splitting over batches', () => {
  test('with a hundred plants each way the sum is the exact sum of batches', () => {
    const one = stepByStep(17, [uncertain(9, 3), known(0.9)])
    const other = stepByStep(16, [uncertain(9, 3), known(0.9)])
    let exact = 0
    for (let i = 0; i <= 17; i++) for (let j = 0; j <= 16; j++) if (i + j >= 21) exact += one[i]! * other[j]!
    const chance = chanceOfAtLeast({
      wanted: 21,
      start: 33,
      batches: 2,
      steps: [uncertain(9, 3), known(0.9)],
    })
    expect(Math.abs(chance - exact)).toBeLessThan(1e-8)
  })

  test('lowers the need, and not below what known rates would need', () => {
    const start = (batches: number) => needed({ wanted: 200, sure: 0.9, steps: fourSteps, batches }).start
    const starts = [1, 2, 4, 8, 50].map(start)
    expect([...starts].sort((a, b) => b - a)).toEqual(starts)
    const means = fourSteps.map(step =>
      step.kind === 'uncertain' ? known(step.alpha / (step.alpha + step.beta)) : step,
    )
    expect(starts[4]).toBeGreaterThanOrEqual(needed({ wanted: 200, sure: 0.9, steps: means }).start)
  })

  test('does not help when all the variance is the year’s', () => {
    const one = needed({ wanted: 150, sure: 0.9, steps: [uncertain(15, 5)], yearShare: 1 })
    const five = needed({ wanted: 150, sure: 0.9, steps: [uncertain(15, 5)], yearShare: 1, batches: 5 })
    expect(five.start).toBe(one.start)
  })

  test('the spread keeps its mean and shrinks', () => {
    const whole = spreadOfStart({ start: 300, steps: fourSteps })
    const split = spreadOfStart({ start: 300, steps: fourSteps, batches: 6 })
    expect(split.mean).toBeCloseTo(whole.mean, 5)
    expect(split.sd).toBeLessThan(whole.sd)
    expect(split.p10).toBeGreaterThan(whole.p10)
  })
})

describe('good and bad years', () => {
  test('one step and one batch keep mean and standard deviation whatever the year’s part', () => {
    const alone = spreadOfStart({ start: 500, steps: [uncertain(12, 6)] })
    for (const yearShare of [0.2, 0.7, 1]) {
      const shared = spreadOfStart({ start: 500, steps: [uncertain(12, 6)], yearShare })
      expect(shared.mean).toBeCloseTo(alone.mean, 4)
      expect(shared.sd).toBeCloseTo(alone.sd, 4)
    }
  })

  test('with all the variance the year’s, one step needs what it needs alone', () => {
    const alone = needed({ wanted: 100, sure: 0.9, steps: [uncertain(8, 2)] })
    const shared = needed({ wanted: 100, sure: 0.9, steps: [uncertain(8, 2)], yearShare: 1 })
    expect(shared.start).toBe(alone.start)
    expect(shared.chance).toBeCloseTo(alone.chance, 7)
  })

  test('steps that fail together need a larger start', () => {
    const start = (yearShare: number) =>
      needed({ wanted: 300, sure: 0.95, steps: fourSteps, yearShare }).start
    const starts = [0, 0.3, 0.6, 1].map(start)
    expect([...starts].sort((a, b) => a - b)).toEqual(starts)
    expect(starts[3]).toBeGreaterThan(starts[0]!)
  })

  test('many batches and a year that is nearly all: between batches without a year and one batch, whatever its part', () => {
    const start = (yearShare: number, batches: number) =>
      needed({ wanted: 2000, sure: 0.9, steps: fourSteps, yearShare, batches }).start
    const one = start(1, 1)
    const starts = [0, 0.5, 0.9, 0.99, 0.999, 1].map(yearShare => start(yearShare, 12))
    expect([...starts].sort((a, b) => a - b)).toEqual(starts)
    expect(starts.at(-1)).toBe(one)
  })

  test('simulated years give the stated chance within four standard errors', () => {
    const course = courseOf('test', [uncertain(30, 10), uncertain(18, 2)])
    const stated = chanceOfAtLeast({
      wanted: 130,
      start: 210,
      steps: [uncertain(30, 10), uncertain(18, 2)],
      yearShare: 0.4,
      batches: 3,
    })
    const random = seededRandom(5)
    const seasons = 4_000
    let reached = 0
    for (let i = 0; i < seasons; i++) {
      const year = courseInYear(course, 0.4, drawNormal(random))
      let out = 0
      for (let batch = 0; batch < 3; batch++) {
        let plants = 70
        for (const { alpha, beta } of year.uncertain)
          plants = drawBinomial(random, plants, drawBeta(random, alpha, beta))
        out += plants
      }
      if (out >= 130) reached++
    }
    expect(Math.abs(reached / seasons - stated)).toBeLessThan(
      4 * Math.sqrt((stated * (1 - stated)) / seasons),
    )
  })
})

describe('the start that costs least', () => {
  test('no start near it costs less, salvage and shared years included', () => {
    const input = {
      wanted: 60,
      steps: [uncertain(14, 6), known(0.95)],
      yearShare: 0.3,
      costPerStart: 2,
      costPerShort: 9,
      salvagePerSurplus: 1,
    }
    const best = cheapestStart(input)
    const costOf = (start: number) => {
      let cost = 2 * start
      let before = 1
      for (let number = 1; number <= start; number++) {
        const atLeast = chanceOfAtLeast({ wanted: number, start, steps: input.steps, yearShare: 0.3 })
        const exactly = before - atLeast
        cost += exactly * (number - 1 < 60 ? 9 * (60 - number + 1) : -(number - 1 - 60))
        before = atLeast
      }
      return cost + before * (start < 60 ? 9 * (60 - start) : -(start - 60))
    }
    expect(costOf(best.start)).toBeCloseTo(best.expectedCost, 5)
    for (const near of [-5, -1, 1, 5]) expect(costOf(best.start + near)).toBeGreaterThan(best.expectedCost)
  })

  test('when a plant costs more than it can save, none is started', () => {
    const none = cheapestStart({ wanted: 10, steps: [known(0.5)], costPerStart: 6, costPerShort: 10 })
    expect(none).toEqual({ start: 0, chance: 0, expectedShort: 10, expectedSurplus: 0, expectedCost: 100 })
  })
})
