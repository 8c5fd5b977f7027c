import fc from 'fast-check'
import { expect, test } from 'vitest'
import { drawBinomial } from '../random/draw-binomial.ts'
import { drawBeta } from '../random/draw-gamma.ts'
import { drawNormal } from '../random/draw-normal.ts'
import { seededRandom } from '../random/seeded-random.ts'
import { hazardRatio } from './hazard-ratio.ts'
import { kaplanMeier, timeOfLoss } from './kaplan-meier.ts'
import { logRank } from './log-rank.ts'
import { durationQuantile, fitStepDuration, predictDuration } from './step-duration.ts'
import { stillToTake } from './still-to-take.ts'
import { takeByLooks } from './take-by-looks.ts'
import { chanceStillTakes, fitTakeCurve, timeFromLowHigh } from './take-curve.ts'

test('without leavers the survival curve is the share still standing', () => {
  const curve = kaplanMeier([
    { time: 7, lost: 12, leftAlive: 0 },
    { time: 14, lost: 8, leftAlive: 0 },
    { time: 21, lost: 0, leftAlive: 80 },
  ])
  expect(curve.map(({ survival }) => survival)).toEqual([0.88, expect.closeTo(0.8, 12)])
  // Greenwood without leavers is the binomial standard error.
  expect(curve[1]!.standardError).toBeCloseTo(Math.sqrt((0.8 * 0.2) / 100), 12)
  expect(timeOfLoss(curve, 0.1).time).toBe(7)
  expect(timeOfLoss(curve, 0.5).time).toBeNull()
})

test('two groups that lose alike show no difference, whichever comes first', () => {
  const group = [
    { time: 3, lost: 2, leftAlive: 1 },
    { time: 9, lost: 4, leftAlive: 13 },
  ]
  expect(logRank([group, group]).chiSquare).toBeCloseTo(0, 12)
  const other = [
    { time: 3, lost: 9, leftAlive: 0 },
    { time: 9, lost: 1, leftAlive: 10 },
  ]
  expect(logRank([group, other]).chiSquare).toBeCloseTo(logRank([other, group]).chiSquare, 10)
  expect(hazardRatio(group, other).logRatio).toBeCloseTo(-hazardRatio(other, group).logRatio, 8)
})

/** Batches looked at on their own days, from a known truth. */
function lookedAt(seed: number, batches: number) {
  const random = seededRandom(seed)
  const takes = timeFromLowHigh(14, 35)
  const dies = timeFromLowHigh(10, 60)
  return Array.from({ length: batches }, () => {
    const share = drawBeta(random, 14, 6)
    const days = [10, 17, 24, 31, 45].map(day => day + Math.floor(random.uniform() * 5))
    const fates = Array.from({ length: 80 }, () => {
      const taken = random.uniform() < share
      const { meanLog, sdLog } = taken ? takes : dies
      return { taken, day: Math.exp(meanLog + sdLog * drawNormal(random)) }
    })
    const looks = days.map(day => ({
      day,
      taken: fates.filter(fate => fate.taken && fate.day <= day).length,
      dead: fates.filter(fate => !fate.taken && fate.day <= day).length,
    }))
    return { entered: 80, looks, endShare: fates.filter(({ taken }) => taken).length / 80 }
  })
}

test('the take curve is found again from looks a week apart', () => {
  const curve = fitTakeCurve(lookedAt(3, 40))!
  const truth = timeFromLowHigh(14, 35)
  expect(curve.takesInTheEnd).toBeCloseTo(0.7, 1)
  expect(curve.toTake.meanLog).toBeCloseTo(truth.meanLog, 1)
  expect(curve.toTake.sdLog).toBeCloseTo(truth.sdLog, 1)
  expect(curve.toDie!.sdLog).toBeCloseTo(timeFromLowHigh(10, 60).sdLog, 1)
})

test('the curve with a shape agrees with the one without', () => {
  const batches = lookedAt(4, 60)
  const curve = fitTakeCurve(batches)!
  for (const { day, taken } of takeByLooks(batches).filter(({ day }) => day >= 20 && day <= 35)) {
    const z = (Math.log(day) - curve.toTake.meanLog) / curve.toTake.sdLog
    const smooth = curve.takesInTheEnd / (1 + Math.exp(-1.702 * z))
    // The logistic stands in for the normal within 0.01; 4,800 plants leave about 0.02 beside batch spread.
    expect(Math.abs(taken - smooth)).toBeLessThan(0.06)
  }
})

test('guava grafts: successes rise while the undecided decide, and by day 120 none is undecided (Rajatiya et al. 2022)', () => {
  // Published per cent taken and dead at 30, 60, 90 days, as if of 1,000 grafts.
  const looks = [
    { day: 30, taken: 500, dead: 120 },
    { day: 60, taken: 580, dead: 221 },
    { day: 90, taken: 673, dead: 281 },
  ]
  const curve = fitTakeCurve([{ entered: 1000, looks }])!
  expect(curve.takesInTheEnd).toBeGreaterThan(0.62)
  expect(curve.takesInTheEnd).toBeLessThan(0.75)
  // Day 60: 93 of the 199 undecided took in the next 30 days, 60 died.
  expect(chanceStillTakes(curve, 60)).toBeGreaterThan(0.4)
  expect(chanceStillTakes(curve, 60)).toBeLessThan(0.7)
})

test('nothing taken yet gives no curve rather than an invented one', () => {
  expect(fitTakeCurve([{ entered: 30, looks: [{ day: 8, taken: 0, dead: 3 }] }])).toBeNull()
})

test('what is said to be still to come, comes: nine in ten ends lie inside', () => {
  const curve = { toTake: timeFromLowHigh(14, 35), toDie: timeFromLowHigh(10, 60) }
  let inside = 0
  let expected = 0
  let came = 0
  const batches = lookedAt(12, 300)
  for (const { looks, endShare } of batches) {
    const { day, taken, dead } = looks[1]!
    const told = stillToTake({
      curve,
      expected: { alpha: 14, beta: 6 },
      day,
      taken,
      dead,
      undecided: 80 - taken - dead,
    })
    if (endShare >= told.endLow - 1e-9 && endShare <= told.endHigh + 1e-9) inside++
    expected += told.endShare
    came += endShare
  }
  // 300 batches: standard error 0.017; whole plants add a little.
  expect(inside / 300).toBeGreaterThan(0.85)
  expect(inside / 300).toBeLessThan(0.97)
  expect(Math.abs(expected - came) / 300).toBeLessThan(0.02)
})

test('the chance that an undecided graft still takes falls with the day where takers come first', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 90 }), fc.integer({ min: 1, max: 30 }), (day, later) => {
      const curve = { takesInTheEnd: 0.8, toTake: timeFromLowHigh(14, 28), toDie: null }
      return chanceStillTakes(curve, day + later) <= chanceStillTakes(curve, day) + 1e-12
    }),
  )
})

test('one graft, anything expected, half the takers to come, nothing dies in sight: one in three, worked by hand', () => {
  // ∫ (π/2) dπ / ∫ (1 − π/2) dπ over 0 to 1 = (1/4) / (3/4).
  const curve = { toTake: { meanLog: Math.log(20), sdLog: 0.3 }, toDie: null }
  const told = stillToTake({
    curve,
    expected: { alpha: 1, beta: 1 },
    day: 20,
    taken: 0,
    dead: 0,
    undecided: 1,
  })
  expect(told.chance).toBeCloseTo(1 / 3, 5)
})

test('a batch all decided has nothing to come', () => {
  const curve = { toTake: timeFromLowHigh(14, 35), toDie: null }
  const told = stillToTake({
    curve,
    expected: { alpha: 8, beta: 2 },
    day: 40,
    taken: 70,
    dead: 30,
    undecided: 0,
  })
  expect(told).toMatchObject({ endShare: expect.closeTo(0.7, 9), endLow: expect.closeTo(0.7, 9) })
})

test('unfinished batches lengthen the time in a step; leaving them out would shorten it', () => {
  const random = seededRandom(6)
  const all = Array.from({ length: 200 }, () => Math.exp(3.4 + 0.3 * drawNormal(random)))
  const seen = all.map(days =>
    days > 33 ? { from: 33, to: Number.POSITIVE_INFINITY } : { from: days, to: days },
  )
  const fit = fitStepDuration(seen)
  expect(fit.meanLog).toBeCloseTo(3.4, 1)
  expect(fit.within).toBeCloseTo(0.3, 1)
  const finishedOnly = fitStepDuration(seen.filter(({ to }) => Number.isFinite(to)))
  expect(finishedOnly.meanLog).toBeLessThan(fit.meanLog - 0.05)
})

test('nine in ten of the next batches lie inside the prediction, groups drawn towards each other', () => {
  let inside = 0
  let all = 0
  for (let seed = 0; seed < 40; seed++) {
    const random = seededRandom(seed)
    const groups = Array.from({ length: 5 }, () => 3.3 + 0.25 * drawNormal(random))
    const draw = (g: number) => Math.exp(groups[g]! + 0.2 * drawNormal(random))
    const seen = groups.flatMap((_, g) =>
      Array.from({ length: 2 + g }, () => {
        const days = draw(g)
        return { from: days, to: days, group: `g${g}` }
      }),
    )
    const belief = { ...timeFromLowHigh(14, 50), worthBatches: 2 }
    const model = fitStepDuration(seen, belief)
    for (let g = 0; g < 5; g++) {
      const time = predictDuration(model, `g${g}`)
      for (let i = 0; i < 6; i++) {
        const days = draw(g)
        all++
        if (days >= durationQuantile(time, 0.05) && days <= durationQuantile(time, 0.95)) inside++
      }
    }
  }
  // 1,200 draws in 200 groups: standard error about 0.015.
  expect(inside / all).toBeGreaterThan(0.85)
  expect(inside / all).toBeLessThan(0.96)
})

test('a belief alone is given back; a group never seen is less certain than a known one', () => {
  const belief = { ...timeFromLowHigh(21, 35), worthBatches: 3 }
  const alone = predictDuration(fitStepDuration([], belief))
  expect(Math.exp(alone.meanLog)).toBeCloseTo(Math.sqrt(21 * 35), 3)
  const model = fitStepDuration(
    [20, 22, 30, 33, 26].map((days, i) => ({ from: days, to: days, group: i < 2 ? 'a' : 'b' })),
    belief,
  )
  expect(predictDuration(model, 'new').sdLog).toBeGreaterThan(predictDuration(model, 'b').sdLog)
})

test('half of those still there at the middle time are out by the upper quartile: exp(m + 0.6745 s), by the normal table', () => {
  const time = { meanLog: Math.log(28), sdLog: 0.2 }
  expect(durationQuantile(time, 0.5, 28)).toBeCloseTo(28 * Math.exp(0.6744898 * 0.2), 5)
  expect(durationQuantile(time, 0.5)).toBeCloseTo(28, 10)
})

test('the longer a batch has been in a step, the later it ends, and never in the past', () => {
  const time = timeFromLowHigh(20, 40)
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 4000 }), fc.integer({ min: 1, max: 50 }), (soFar, more) => {
      const now = durationQuantile(time, 0.5, soFar)
      return now >= soFar && durationQuantile(time, 0.5, soFar + more) >= now - 1e-9
    }),
    // Where the chance left fell below 1e-14, the end once stood still at today, earlier than the day before.
    { examples: [[140, 2]] },
  )
})

test('40 and 60 standard deviations late, the time still to take is the law’s own: roots found by mpmath 1.3 with 60 digits', () => {
  const time = { meanLog: 0, sdLog: 0.1 }
  const beyond = (late: number, share: number) =>
    Math.log(durationQuantile(time, share, Math.exp(late / 10))) * 10
  expect(beyond(40, 0.5)).toBeCloseTo(40.01731412676475, 6)
  expect(beyond(40, 0.9)).toBeCloseTo(40.05748745803602, 6)
  expect(beyond(60, 0.5)).toBeCloseTo(60.01154813595289, 6)
  expect(beyond(60, 0.9)).toBeCloseTo(60.03835351550281, 6)
})

test('chance of survivors: drawn losses follow the curve’s limits 95 times in 100', () => {
  const random = seededRandom(2)
  let inside = 0
  for (let round = 0; round < 400; round++) {
    const first = drawBinomial(random, 120, 0.1)
    const second = drawBinomial(random, 120 - first, 0.15)
    const [, point] = kaplanMeier([
      { time: 1, lost: first, leftAlive: 0 },
      { time: 2, lost: second, leftAlive: 0 },
      { time: 3, lost: 0, leftAlive: 120 - first - second },
    ])
    if (point !== undefined && point.low! <= 0.765 && point.high! >= 0.765) inside++
  }
  // 400 rounds: standard error 0.011.
  expect(inside / 400).toBeGreaterThan(0.91)
})
