import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { makeDemoEntries } from '../src/demo/index.ts'
import { readRateBook } from '../src/planning/index.ts'
import { learntSurvival } from '../src/planning/rates/learnt-survival.ts'
import { seenSteps } from '../src/planning/rates/read-rate-book.ts'
import { foldEntries } from '../src/record/index.ts'
import { drawBinomial, drawNormal, fitRates, predictShare, seededRandom } from '../src/science/index.ts'
import type { MixedLogisticData } from '../src/science/rates/crossed-system.ts'
import { fitMixedLogistic } from '../src/science/rates/mixed-logistic.ts'
import { type Measured, medianSeconds } from './measure.ts'

const batches = 5000
/** Levels and spread of the crossed effects; with the batch effect (spread 0.5) that makes six. */
const crossed = [
  { name: 'cultivar', levels: 300, spread: 0.5 },
  { name: 'month', levels: 60, spread: 0.25 },
  { name: 'bench', levels: 40, spread: 0.3 },
  { name: 'grafter', levels: 25, spread: 0.35 },
  { name: 'year', levels: 12, spread: 0.3 },
] as const
const names = crossed.map(({ name }) => name)

/** 5,000 invented batches of 10 to 200 plants under two methods. */
function inventedBatches(): MixedLogisticData {
  const random = seededRandom(11)
  const effects = crossed.map(({ levels, spread }) =>
    Array.from({ length: levels }, () => spread * drawNormal(random)),
  )
  const levels = new Int32Array(batches * crossed.length)
  const entered = new Float64Array(batches)
  const survived = new Float64Array(batches)
  const fixed = new Float64Array(batches * 2)
  for (let r = 0; r < batches; r++) {
    const method = random.uniform() < 0.5 ? 0 : 1
    fixed.set([1, method], 2 * r)
    let logit = 0.8 - 0.4 * method + 0.5 * drawNormal(random)
    crossed.forEach(({ levels: count }, f) => {
      // Some cultivars and grafters are common, some rare.
      const level = Math.floor(count * random.uniform() ** 1.5)
      levels[r * crossed.length + f] = level
      logit += effects[f]![level]!
    })
    entered[r] = 10 + Math.floor(190 * random.uniform())
    survived[r] = drawBinomial(random, entered[r]!, 1 / (1 + Math.exp(-logit)))
  }
  return {
    entered,
    survived,
    fixed,
    fixedCount: 2,
    levels,
    levelCounts: crossed.map(({ levels: count }) => count),
    batches: Int32Array.from({ length: batches }, (_, r) => r),
    batchCount: batches,
    beliefLogit: new Float64Array(batches),
    beliefPrecision: new Float64Array(batches),
  }
}

interface FromR {
  readonly seconds: number
  readonly cpuSeconds: number
  readonly fixed: readonly number[]
  readonly spreads: readonly number[]
  readonly logLikelihood: number
  readonly version: string
}

/** The same counts fitted by lme4; undefined where R or lme4 is not installed. */
function fitByLme4(data: MixedLogisticData): FromR | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'rates-'))
  try {
    const rows = Array.from({ length: batches }, (_, r) =>
      [
        data.survived[r],
        data.entered[r],
        data.fixed[2 * r + 1],
        ...data.levels.subarray(r * crossed.length, (r + 1) * crossed.length),
        r,
      ].join(','),
    )
    writeFileSync(join(folder, 'batches.csv'), `y,n,method,${names.join(',')},batch\n${rows.join('\n')}\n`)
    const terms = [...names, 'batch']
    const script = `
suppressMessages(library(lme4))
d <- read.csv('${join(folder, 'batches.csv')}')
for (k in c(${terms.map(term => `'${term}'`).join(',')})) d[[k]] <- factor(d[[k]])
t <- system.time(m <- glmer(cbind(y, n - y) ~ method + ${terms.map(term => `(1|${term})`).join(' + ')}, d,
  family = binomial, control = glmerControl(optimizer = 'bobyqa', calc.derivs = FALSE, optCtrl = list(maxfun = 1e5))))
s <- sapply(VarCorr(m), function(v) sqrt(v[1]))[c(${terms.map(term => `'${term}'`).join(',')})]
f <- function(x) paste(format(x, digits = 15), collapse = ',')
cat(sprintf('{"seconds":%s,"cpuSeconds":%s,"fixed":[%s],"spreads":[%s],"logLikelihood":%s,"version":"%s"}',
  f(t[['elapsed']]), f(t[['user.self']] + t[['sys.self']]), f(unname(fixef(m))), f(unname(s)), f(as.numeric(logLik(m))), packageVersion('lme4')))
`
    const run = spawnSync('Rscript', ['-e', script], { encoding: 'utf8', timeout: 900_000 })
    return run.status === 0 ? (JSON.parse(run.stdout) as FromR) : undefined
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

const furthest = (a: ArrayLike<number>, b: readonly number[]) =>
  Math.max(...b.map((value, i) => Math.abs(value - a[i]!)))

/** Of all threads, so that a busy machine does not count. */
function cpuSecondsOf(work: () => void): number {
  const before = process.cpuUsage()
  work()
  const { user, system } = process.cpuUsage(before)
  return (user + system) / 1e6
}

/** The plan's rates of the invented nursery, every kind by every way in every month; and of 41 times as many counts. */
function measureRateBook() {
  const today = '2026-11-25'
  const nursery = foldEntries(makeDemoEntries({ seed: 1, today }))
  const ask = () => {
    const book = readRateBook({ ...nursery }, today)
    for (const kind of nursery.kinds.values())
      for (const { protocol: id } of kind.ways) {
        const protocol = nursery.protocols.get(id)
        if (!protocol) continue
        for (let month = 1; month <= 12; month++)
          protocol.steps.forEach((_, step) => {
            book.survival(protocol, step, { kind: kind.id, startMonth: month })
          })
      }
  }
  const first = cpuSecondsOf(ask)
  ask()
  const again = cpuSecondsOf(ask)
  const seen = seenSteps(nursery, today)
  const many = Array.from({ length: 41 }, (_, copy) =>
    seen.map(row => ({ ...row, year: row.year - 4 * (copy % 14) })),
  ).flat()
  return {
    countsOfInventedNursery: seen.length,
    cpuSecondsForItsRatesFirst: first,
    cpuSecondsForItsRatesAgain: again,
    manyCounts: many.length,
    cpuSecondsToLearnFromThem: cpuSecondsOf(() => learntSurvival(many, nursery.protocols)),
  }
}

/** The rate model on 5,000 batches with six random effects, beside lme4 on the same counts. */
export default function measure(): Measured {
  const data = inventedBatches()
  const fit = fitMixedLogistic(data, { spreadRate: 0 })
  const seconds = medianSeconds(() => fitMixedLogistic(data, { spreadRate: 0 }), 7, 2)
  const cpuSeconds = cpuSecondsOf(() => fitMixedLogistic(data, { spreadRate: 0 }))
  const observations = Array.from({ length: batches }, (_, r) => ({
    entered: data.entered[r]!,
    survived: data.survived[r]!,
    context: {
      method: `method ${data.fixed[2 * r + 1]}`,
      ...Object.fromEntries(names.map((name, f) => [name, `${name} ${data.levels[r * crossed.length + f]}`])),
    },
  }))
  const input = { observations, factors: ['method', ...names] }
  const model = fitRates(input)
  const whole = medianSeconds(() => fitRates(input), 3, 1)
  const context = observations[0]!.context
  const predicting = medianSeconds(() => predictShare(model, context), 200, 20)
  const lme4 = fitByLme4(data)
  return {
    figures: {
      batches,
      randomEffects: crossed.length + 1,
      secondsToFit: seconds,
      cpuSecondsToFit: cpuSeconds,
      secondsToFitRatesWithMethodAsSeventhEffect: whole,
      secondsToPredictOne: predicting,
      logLikelihood: fit.logLikelihood,
      ...measureRateBook(),
    },
    rivals:
      lme4 === undefined
        ? {}
        : {
            lme4: {
              version: lme4.version,
              secondsToFit: lme4.seconds,
              cpuSecondsToFit: lme4.cpuSeconds,
              timesAsLong: lme4.seconds / seconds,
              largestDifferenceInFixedEffects: furthest(fit.fixed, lme4.fixed),
              largestDifferenceInSpreads: furthest(fit.spreads, lme4.spreads),
              logLikelihoodBelowOurs: fit.logLikelihood - lme4.logLikelihood,
            },
          },
    notes: lme4 === undefined ? ['R with lme4 is not installed here: no comparison.'] : [],
  }
}
