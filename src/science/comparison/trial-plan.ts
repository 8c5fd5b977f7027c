import { requireWhole, requireWithin } from '../bounds.ts'
import { powerForTwoShares, sampleForTwoShares } from '../counts/sample-size.ts'
import { seededRandom } from '../random/seeded-random.ts'

export interface TrialSizeInput {
  /** The share as it is, and the share that would make a change worth while. */
  readonly shareNow: number
  readonly shareHoped: number
  /** Chance of finding a difference where there is none; 0.05 unless told. */
  readonly alpha?: number
  /** Chance of finding the difference if it is there; 0.8 unless told. */
  readonly power?: number
  readonly plantsPerPlot: number
  /** How alike plants of one plot are (see `intraclassCorrelation`); 0 to 1. */
  readonly correlation: number
}

export interface TrialSize {
  readonly plotsPerTreatment: number
  readonly plantsPerTreatment: number
  /** What it would take if plants were independent of their plot. */
  readonly plantsIfIndependent: number
  readonly designEffect: number
  /** The chance of finding the difference with just these plots. */
  readonly power: number
}

/**
 * Plots and plants for each of two treatments, when plants of one plot are alike: the plain number times
 * 1 + (plants per plot − 1) · correlation. At least two plots, or no difference between plots can be told from one
 * between treatments.
 *
 * @throws RangeError for an argument out of range
 * @source Fleiss, Tytun & Ury 1980 (`sampleForTwoShares`); Donner, Birkett & Buck 1981, Am. J. Epidemiol. 114:906-914
 *   (plots), from memory
 * @example trialSize({ shareNow: 0.6, shareHoped: 0.8, plantsPerPlot: 20, correlation: 0.05 }).plotsPerTreatment // 8
 */
export function trialSize(input: TrialSizeInput): TrialSize {
  const { shareNow, shareHoped, alpha = 0.05, power = 0.8, plantsPerPlot, correlation } = input
  requireWhole('trialSize', 'plantsPerPlot', plantsPerPlot, 1)
  requireWithin('trialSize', 'correlation', correlation, 0, 1)
  const { exact, perLot } = sampleForTwoShares(shareNow, shareHoped, alpha, power)
  const designEffect = 1 + (plantsPerPlot - 1) * correlation
  const plotsPerTreatment = Math.max(2, Math.ceil((exact * designEffect) / plantsPerPlot - 1e-9))
  const effective = Math.max(1, Math.floor((plotsPerTreatment * plantsPerPlot) / designEffect))
  return {
    plotsPerTreatment,
    plantsPerTreatment: plotsPerTreatment * plantsPerPlot,
    plantsIfIndependent: perLot,
    designEffect,
    power: powerForTwoShares(shareNow, shareHoped, alpha, effective),
  }
}

export interface TrialBench {
  readonly bench: string
  /** Places on it that take one plot each, in the order in which they stand. */
  readonly plots: number
}

export interface AllocatedPlot {
  readonly bench: string
  /** Counted from 1 along the bench. */
  readonly plot: number
  readonly treatment: string
}

/**
 * Which treatment stands where: every bench is a block that has each treatment equally often (or once more), in random
 * order. Treatments that get one plot more on a bench are drawn so that over all benches numbers stay within one.
 * The same seed gives the same trial again.
 *
 * @param treatments two or more different names
 * @param benches each with plots for all treatments at least once, or the bench cannot be a block
 * @throws RangeError for an argument out of range
 * @source Fisher 1935, The Design of Experiments (randomised blocks)
 * @example allocatePlots(['mist', 'fog'], [{ bench: 'east', plots: 4 }], 1).map(({ treatment }) => treatment) //
 *   ['mist', 'mist', 'fog', 'fog']
 */
export function allocatePlots(
  treatments: readonly string[],
  benches: readonly TrialBench[],
  seed: number,
): readonly AllocatedPlot[] {
  if (new Set(treatments).size !== treatments.length || treatments.length < 2)
    throw new RangeError(
      `allocatePlots: treatments must be 2 or more different names, got ${treatments.join(', ')}`,
    )
  for (const { bench, plots } of benches)
    if (!(Number.isInteger(plots) && plots >= treatments.length))
      throw new RangeError(
        `allocatePlots: plots of ${bench} must be a whole number of ${treatments.length} or more, got ${plots}`,
      )
  const random = seededRandom(seed)
  const shuffled = <T>(list: readonly T[]): T[] => {
    const out = [...list]
    for (let i = out.length - 1; i > 0; i--) {
      const j = Math.floor(random.uniform() * (i + 1))
      const kept = out[i]!
      out[i] = out[j]!
      out[j] = kept
    }
    return out
  }
  const extras = new Map(treatments.map(treatment => [treatment, 0]))
  return benches.flatMap(({ bench, plots }) => {
    const rounds = Math.floor(plots / treatments.length)
    const list = Array.from({ length: rounds }, () => treatments).flat()
    const more = shuffled(treatments)
      .sort((a, b) => extras.get(a)! - extras.get(b)!)
      .slice(0, plots - list.length)
    for (const treatment of more) extras.set(treatment, extras.get(treatment)! + 1)
    return shuffled([...list, ...more]).map((treatment, i) => ({ bench, plot: i + 1, treatment }))
  })
}
