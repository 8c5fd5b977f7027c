import { drawBinomial, drawNormal, type SeededRandom } from '../science/index.ts'
import type { KindId, PersonId, Protocol, Step } from '../trade/index.ts'

/** What really holds at this nursery and nobody knows: how far each kind, hand and year lies from the written rate. */
export interface Truth {
  /** Plants of `entered` that survive the step. */
  survivors(
    random: SeededRandom,
    entered: number,
    step: Step,
    protocol: Protocol,
    kind: KindId,
    year: number,
    by: PersonId,
  ): number
  /** Days that a batch spends in the step. */
  days(random: SeededRandom, step: Step): number
}

const SPREAD = { kind: 0.35, year: 0.25, person: 0.2, batch: 0.3 } as const
/** 5 % and 95 % points of the normal law lie this many standard deviations from its middle. */
const NINE_OF_TEN = 1.645

const logit = (share: number): number => Math.log(share / (1 - share))
const within = (share: number): number => Math.min(0.995, Math.max(0.02, share))
const keyOf = (text: string): number =>
  [...text].reduce((sum, letter) => (sum * 31 + letter.codePointAt(0)!) % 1_000_003, 7)

export const drawTruth = (random: SeededRandom): Truth => {
  const effect = (what: string, spread: number): number => spread * drawNormal(random.stream(keyOf(what)))
  return {
    survivors: (luck, entered, step, protocol, kind, year, by) => {
      const onScale =
        logit(within(step.survival.typical)) +
        effect(`kind ${kind} ${step.id}`, SPREAD.kind) +
        effect(`year ${protocol.method} ${protocol.species} ${year}`, SPREAD.year) +
        effect(`person ${by} ${protocol.method}`, SPREAD.person) +
        SPREAD.batch * drawNormal(luck)
      return drawBinomial(luck, entered, 1 / (1 + Math.exp(-onScale)))
    },
    days: (luck, step) => {
      const { low, typical, high } = step.days
      const spread = low > 0 && high > low ? Math.log(high / low) / (2 * NINE_OF_TEN) : 0
      return Math.max(1, Math.round(typical * Math.exp(0.6 * spread * drawNormal(luck))))
    },
  }
}
