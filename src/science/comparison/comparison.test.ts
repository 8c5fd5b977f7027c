import { expect, test } from 'vitest'
import { drawBinomial } from '../random/draw-binomial.ts'
import { drawBeta } from '../random/draw-gamma.ts'
import { seededRandom } from '../random/seeded-random.ts'
import { exactStrata } from './exact-strata.ts'
import { findingInWords, findingOf } from './finding.ts'
import { correlationWithin, funnel, funnelLimits } from './funnel.ts'
import { watchForSlump } from './slump-watch.ts'
import { analyseTrial } from './trial-analysis.ts'
import { allocatePlots, trialSize } from './trial-plan.ts'

const binomial = (n: number, k: number, p: number): number => {
  let chance = (1 - p) ** n
  for (let i = 1; i <= k; i++) chance *= ((n - i + 1) / i) * (p / (1 - p))
  return chance
}
const random = (seed: number) => seededRandom(seed)
/** A batch of plants that are alike by `correlation` about a share. */
const batchOf = (source: ReturnType<typeof seededRandom>, n: number, share: number, correlation: number) => {
  const precision = 1 / correlation - 1
  const own = drawBeta(source, share * precision, (1 - share) * precision)
  return { entered: n, survived: drawBinomial(source, n, own) }
}

test('people who are all alike stay inside the funnel 95 times in 100, though batches differ', () => {
  const source = random(5)
  let outside = 0
  let all = 0
  for (let round = 0; round < 60; round++) {
    const batches = Array.from({ length: 8 }, (_, person) =>
      Array.from({ length: 3 + person }, () => ({ group: `p${person}`, ...batchOf(source, 60, 0.75, 0.08) })),
    ).flat()
    for (const { standing } of funnel(batches).groups) {
      all++
      if (standing !== 'within') outside++
    }
  }
  // 480 people: standard error 0.01.
  expect(outside / all).toBeGreaterThan(0.02)
  expect(outside / all).toBeLessThan(0.085)
})

test('somebody truly worse is found far below, and the others do not hide it', () => {
  const source = random(9)
  const batches = ['ana', 'bo', 'chi', 'dee'].flatMap(group =>
    Array.from({ length: 10 }, () => ({ group, ...batchOf(source, 80, group === 'dee' ? 0.45 : 0.8, 0.04) })),
  )
  const { groups, correlationBasis } = funnel(batches)
  expect(correlationBasis).toBe('measured')
  expect(groups.find(({ group }) => group === 'dee')?.standing).toBe('far-below')
})

test('one batch each: the correlation is assumed and said to be', () => {
  const { correlationBasis, correlation } = funnel([
    { group: 'ana', entered: 50, survived: 40 },
    { group: 'bo', entered: 5, survived: 5 },
  ])
  expect(correlationBasis).toBe('assumed')
  expect(correlation).toBe(0.05)
})

test('limits of many plants are those of the normal distribution: 1.96 and 3.09 standard errors either way', () => {
  // Spiegelhalter 2005: θ ± z·√(θ(1 − θ)/n); by hand √(0.8 · 0.2 / 10 000) = 0.004. z from normal tables.
  const { farLow, low, high, farHigh } = funnelLimits(0.8, 10_000)
  expect(low).toBeCloseTo(0.8 - 1.96 * 0.004, 3)
  expect(high).toBeCloseTo(0.8 + 1.96 * 0.004, 3)
  expect(farLow).toBeCloseTo(0.8 - 3.09 * 0.004, 3)
  expect(farHigh).toBeCloseTo(0.8 + 3.09 * 0.004, 3)
})

test('limits of few plants hold what the exact binomial holds: 95 and 99.8 in 100, within one plant', () => {
  for (const [share, n] of [
    [0.7, 20],
    [0.85, 60],
    [0.5, 200],
  ] as const) {
    const chances = Array.from({ length: n + 1 }, (_, k) => binomial(n, k, share))
    const cumulative = chances.map((_, k) => chances.slice(0, k + 1).reduce((sum, chance) => sum + chance, 0))
    const quantile = (tail: number) => cumulative.findIndex(chance => chance >= tail) / n
    const limits = funnelLimits(share, n)
    expect(Math.abs(limits.low - quantile(0.025))).toBeLessThan(1 / n)
    expect(Math.abs(limits.high - quantile(0.975))).toBeLessThan(1 / n)
    expect(Math.abs(limits.farLow - quantile(0.001))).toBeLessThan(1 / n)
    expect(Math.abs(limits.farHigh - quantile(0.999))).toBeLessThan(1 / n)
  }
})

test('all of three plants are no surprise where seven of ten take (chance 0.343); all of thirty are (0.00002)', () => {
  expect(funnelLimits(0.7, 3).high).toBe(1)
  expect(funnelLimits(0.3, 3).low).toBe(0)
  expect(funnelLimits(0.7, 30).farHigh).toBeLessThan(1)
})

test('one batch of a hundred is worth fewer plants than ten of ten: by hand 100/(1 + 99ρ) and 100/(1 + 9ρ)', () => {
  const few = [{ group: 'one', entered: 100, survived: 75 }]
  const many = Array.from({ length: 10 }, (_, at) => ({
    group: 'ten',
    entered: 10,
    survived: at % 2 === 0 ? 7 : 8,
  }))
  // σ of 0.8 at a share of 0.75: ρ = 0.64 · 0.1875 = 0.12.
  const { groups, correlation, correlationBasis } = funnel([...few, ...many], {
    logits: Array.from({ length: 11 }, () => 0),
    sdLogit: 0.8,
  })
  expect([correlationBasis, correlation]).toEqual(['told', expect.closeTo(0.12, 9)])
  expect(groups.map(({ worth }) => worth)).toEqual([
    expect.closeTo(100 / 12.88, 6),
    expect.closeTo(100 / 2.08, 6),
  ])
})

test('who was given the hard plants is not below for it, once that is allowed for', () => {
  const batches = [
    ...Array.from({ length: 8 }, () => ({ group: 'hard', entered: 100, survived: 50 })),
    ...Array.from({ length: 8 }, () => ({ group: 'easy', entered: 100, survived: 90 })),
  ]
  const logits = batches.map(({ group }) => (group === 'hard' ? 0 : Math.log(9)))
  expect(funnel(batches).groups.map(({ standing }) => standing)).toEqual(['far-below', 'far-above'])
  const fair = funnel(batches, { logits: logits.map(logit => logit + 1), sdLogit: 0.3 })
  expect(fair.groups.map(({ standing }) => standing)).toEqual(['within', 'within'])
  for (const { share } of fair.groups) expect(share).toBeCloseTo(0.7, 6)
})

test('the correlation of plants of one batch is found again', () => {
  const source = random(3)
  const batches = Array.from({ length: 400 }, (_, i) => ({
    group: `g${i % 4}`,
    ...batchOf(source, 50, 0.7, 0.1),
  }))
  expect(correlationWithin(batches)).toBeCloseTo(0.1, 1)
  const independent = batches.map(({ group }) => ({
    group,
    entered: 50,
    survived: drawBinomial(source, 50, 0.7),
  }))
  expect(correlationWithin(independent)).toBeLessThan(0.01)
})

test('a finding says what may be chance, and how many plants would tell', () => {
  expect(findingOf(0.5, 0.5, 100).kind).toBe('cannot-tell-yet')
  expect(findingOf(0.5, 0.5, 100).plantsMore).toBeGreaterThan(200)
  expect(findingOf(0.1, 0.1, 4000).kind).toBe('no-difference-shown')
  expect(findingOf(1, 0.4, 100).kind).toBe('probably-different')
  expect(findingOf(-2, 0.4, 100).kind).toBe('hardly-chance')
  expect(findingInWords(findingOf(-2, 0.4, 100), 'bark', 'cleft')).toBe(
    'cleft does better than bark: this is hardly chance.',
  )
  expect(findingInWords(findingOf(0.5, 0.5, 100), 'bark', 'cleft')).toContain('Cannot tell yet')
})

test('best and worst of nine grafting dates, 96.87 and 96.05 %, are no evidence of a difference (Khushi et al. 2019)', () => {
  // Three plots of about a hundred grafts a date would be 291 and 288 of 300.
  const effect = Math.log(291 / 9) - Math.log(288 / 12)
  const standardError = Math.sqrt(1 / 291 + 1 / 9 + 1 / 288 + 1 / 12)
  expect(findingOf(effect, standardError, 600).kind).toBe('cannot-tell-yet')
})

test('where every plant survived nobody stands out, with a model or without', () => {
  const batches = ['Ana', 'Ana', 'Ben', 'Cleo'].map(group => ({ group, entered: 40, survived: 40 }))
  for (const allowed of [undefined, { logits: [0.2, -0.4, 0.1, 0], sdLogit: 0.3 }])
    for (const { worth, standing, entered } of funnel(batches, allowed).groups)
      expect([worth, standing]).toEqual([entered, 'within'])
})

test('with nothing wrong a slump alarm comes no more than once in the stated number of batches', () => {
  // 400 runs to the first alarm, each cut at 150 batches.
  let batches = 0
  let alarms = 0
  const source = random(21)
  for (let run = 0; run < 400; run++) {
    const list = Array.from({ length: 150 }, () => {
      const alpha = 8
      const beta = 3
      const entered = 20 + Math.floor(source.uniform() * 80)
      return { alpha, beta, entered, survived: drawBinomial(source, entered, drawBeta(source, alpha, beta)) }
    })
    const at = watchForSlump(list, { batchesBetweenFalseAlarms: 50 }).findIndex(({ alarm }) => alarm)
    batches += at < 0 ? list.length : at + 1
    if (at >= 0) alarms++
  }
  // Exponential run lengths: batches per alarm, standard error about 1/√alarms of it.
  expect(batches / alarms).toBeGreaterThan(50 * (1 - 2 / Math.sqrt(alarms)))
})

test('with nothing wrong the slump statistic is one after the first batch on average and two after the second', () => {
  // All outcomes of two batches of 9 plants with their beta-binomial chances, Beta(3, 2): exact.
  const chances = Array.from({ length: 10 }, (_, k) => {
    let ways = 1
    for (let i = 0; i < k; i++) ways *= ((9 - i) / (i + 1)) * (3 + i)
    for (let i = 0; i < 9 - k; i++) ways *= 2 + i
    for (let i = 0; i < 9; i++) ways /= 5 + i
    return ways
  })
  const batch = (survived: number) => ({ entered: 9, survived, alpha: 3, beta: 2 })
  let first = 0
  let second = 0
  chances.forEach((one, k) => {
    chances.forEach((other, l) => {
      const [after1, after2] = watchForSlump([batch(k), batch(l)])
      first += one * other * after1!.statistic
      second += one * other * after2!.statistic
    })
  })
  expect(first).toBeCloseTo(1, 10)
  expect(second).toBeCloseTo(2, 10)
})

test('odds of survival cut to a third are noticed within some ten batches, and dated', () => {
  const source = random(8)
  let found = 0
  let delay = 0
  let dated = 0
  for (let run = 0; run < 60; run++) {
    const list = Array.from({ length: 60 }, (_, i) => {
      const share = i < 20 ? 8 / 11 : 8 / 3 / 3 / (1 + 8 / 3 / 3)
      return { alpha: 8, beta: 3, ...batchOf(source, 60, share, 1 / 12) }
    })
    const watch = watchForSlump(list, { batchesBetweenFalseAlarms: 100 })
    const at = watch.findIndex(({ alarm }, i) => alarm && i >= 20)
    if (at < 0) continue
    found++
    delay += at - 19
    if (Math.abs(watch[at]!.since - 20) <= 4) dated++
  }
  expect(found).toBeGreaterThan(57)
  expect(delay / found).toBeLessThan(10)
  expect(dated / found).toBeGreaterThan(0.6)
})

test('a batch below what was expected raises the chance of a slump, one above lowers it', () => {
  const usual = { alpha: 8, beta: 3, entered: 50 }
  const [first, second] = watchForSlump([
    { ...usual, survived: 12 },
    { ...usual, survived: 46 },
  ])
  expect(first!.chance).toBeGreaterThan(0.02)
  expect(second!.chance).toBeLessThan(first!.chance)
})

test('plants alike within plots make a trial larger by 1 + (m − 1)·ρ', () => {
  const input = { shareNow: 0.6, shareHoped: 0.8, plantsPerPlot: 20 }
  const alone = trialSize({ ...input, correlation: 0 })
  const alike = trialSize({ ...input, correlation: 0.05 })
  // 82 plants each (Fleiss, Tytun & Ury 1980) fill 5 plots of 20; times 1.95 they fill 8.
  expect(alone).toMatchObject({ plotsPerTreatment: 5, plantsIfIndependent: 82, designEffect: 1 })
  expect(alike.plotsPerTreatment).toBe(8)
  expect(alike.designEffect).toBeCloseTo(1.95, 10)
  expect(alike.power).toBeGreaterThanOrEqual(0.79)
})

test('every bench has every treatment equally often or once more, and over all benches numbers stay within one', () => {
  const treatments = ['none', 'talc', 'dip']
  const benches = [
    { bench: 'A', plots: 7 },
    { bench: 'B', plots: 6 },
    { bench: 'C', plots: 8 },
    { bench: 'D', plots: 4 },
  ]
  for (let seed = 0; seed < 50; seed++) {
    const plan = allocatePlots(treatments, benches, seed)
    expect(plan.length).toBe(25)
    const counts = treatments.map(one => plan.filter(({ treatment }) => treatment === one).length)
    expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1)
    for (const { bench } of benches) {
      const own = treatments.map(
        one => plan.filter(plot => plot.bench === bench && plot.treatment === one).length,
      )
      expect(Math.max(...own) - Math.min(...own)).toBeLessThanOrEqual(1)
    }
    expect(allocatePlots(treatments, benches, seed)).toEqual(plan)
  }
})

test('every place on a bench gets every treatment about equally often', () => {
  let first = 0
  for (let seed = 0; seed < 2000; seed++)
    if (allocatePlots(['a', 'b'], [{ bench: 'A', plots: 4 }], seed)[0]!.treatment === 'a') first++
  // Binomial of 2,000 at a half: standard error 22.
  expect(Math.abs(first - 1000)).toBeLessThan(90)
})

test('the test by plots keeps its promise where plots differ, the test by plants does not', () => {
  const source = random(77)
  let byPlots = 0
  let byPlants = 0
  const rounds = 200
  for (let round = 0; round < rounds; round++) {
    const plots = allocatePlots(
      ['a', 'b'],
      [
        { bench: 'A', plots: 6 },
        { bench: 'B', plots: 6 },
      ],
      round,
    ).map(({ bench, treatment }) => ({ block: bench, treatment, ...batchOf(source, 40, 0.6, 0.1) }))
    const { comparisons } = analyseTrial(plots, 1)
    if (comparisons[0]!.pByPlots <= 0.05) byPlots++
    if (comparisons[0]!.pByPlants <= 0.05) byPlants++
  }
  // 200 trials at 5 in 100: standard error 0.015.
  expect(byPlots / rounds).toBeLessThan(0.1)
  expect(byPlants / rounds).toBeGreaterThan(0.15)
})

test('with two plots against two no difference can be shown, and the trial says so', () => {
  const plots = [
    { block: 'A', treatment: 'a', entered: 50, survived: 50 },
    { block: 'A', treatment: 'a', entered: 50, survived: 49 },
    { block: 'A', treatment: 'b', entered: 50, survived: 2 },
    { block: 'A', treatment: 'b', entered: 50, survived: 1 },
  ]
  const [only] = analyseTrial(plots, 1).comparisons
  expect(only!.leastPByPlots).toBeCloseTo(1 / 3, 10)
  expect(only!.pByPlots).toBeCloseTo(1 / 3, 10)
  expect(only!.pByPlants).toBeLessThan(1e-10)
})

test('of the 20 ways to deal three plots each, 4 differ as much as 0.9 0.8 0.5 against 0.7 0.4 0.3: p = 0.2', () => {
  const plots = [90, 80, 50, 70, 40, 30].map((survived, i) => ({
    block: 'A',
    treatment: i < 3 ? 'a' : 'b',
    entered: 100,
    survived,
  }))
  expect(analyseTrial(plots, 1).comparisons[0]!.pByPlots).toBeCloseTo(0.2, 12)
})

test('the exact test inside blocks is Fisher’s where there is one block (his tea tasting: 17 in 70)', () => {
  const { pFirstBetter, pTwoSided } = exactStrata([
    { first: { entered: 4, survived: 3 }, second: { entered: 4, survived: 1 } },
  ])
  expect(pFirstBetter).toBeCloseTo(17 / 70, 10)
  expect(pTwoSided).toBeCloseTo(34 / 70, 10)
})
