import { requireAbove, requireWithin } from '../bounds.ts'
import { normalCdf } from '../distributions/normal.ts'

/** What may be said of a difference between two shares. Codes, so that every language has its own words. */
export type FindingKind = 'cannot-tell-yet' | 'no-difference-shown' | 'probably-different' | 'hardly-chance'

export interface Finding {
  readonly kind: FindingKind
  /** Chance that the first is truly the better one, with no preference beforehand. */
  readonly chanceFirstBetter: number
  /** Odds of the first over those of the second: estimate, and where it lies with 95 in 100. */
  readonly oddsRatio: number
  readonly oddsRatioLow: number
  readonly oddsRatioHigh: number
  /** How many plants more, of the same kind of batches, before a difference that matters would be seen 8 times in 10. */
  readonly plantsMore: number
}

/** A difference that matters: odds two to one (a take of 67 % against 50 %, or 89 % against 80 %). Our choice. */
const MATTERS = Math.log(2)
/** Standard error at which such a difference is found 8 times in 10 at 5 in 100: log 2 / (1.960 + 0.842). */
const SHARP_ENOUGH = MATTERS / 2.802

/**
 * Says what a difference on the logit scale is worth.
 *
 * - hardly-chance: more than three standard errors; probably-different: more than 1.96;
 * - below that: no-difference-shown if a difference that matters would have been seen, else cannot-tell-yet.
 *
 * @param effect logit of the first less logit of the second
 * @param standardError above 0
 * @param plants behind it, both together: only for `plantsMore`
 * @throws RangeError for an argument out of range
 * @source normal law of a log odds ratio (Woolf 1955, Annals of Human Genetics 19:251-253, from memory); what matters is our choice
 * @example findingOf(1.2, 0.35, 80).chanceFirstBetter // 0.9997
 */
export function findingOf(effect: number, standardError: number, plants: number): Finding {
  requireAbove('findingOf', 'standardError', standardError, 0)
  requireWithin('findingOf', 'plants', plants, 0, Number.MAX_VALUE)
  const z = Math.abs(effect) / standardError
  const kind: FindingKind =
    z > 3
      ? 'hardly-chance'
      : z > 1.96
        ? 'probably-different'
        : standardError <= SHARP_ENOUGH
          ? 'no-difference-shown'
          : 'cannot-tell-yet'
  return {
    kind,
    chanceFirstBetter: normalCdf(effect / standardError),
    oddsRatio: Math.exp(effect),
    oddsRatioLow: Math.exp(effect - 1.96 * standardError),
    oddsRatioHigh: Math.exp(effect + 1.96 * standardError),
    plantsMore:
      kind === 'cannot-tell-yet' ? Math.ceil(plants * ((standardError / SHARP_ENOUGH) ** 2 - 1)) : 0,
  }
}

/**
 * The finding as an English sentence about two named things.
 * @source as `findingOf`
 * @example findingInWords(findingOf(0.4, 0.5, 80), 'Ana', 'Ben') // 'Cannot tell yet between Ana and Ben: this may
 *   be chance. About 247 plants more would tell.'
 */
export function findingInWords(finding: Finding, first: string, second: string): string {
  const better = finding.oddsRatio >= 1 ? first : second
  const worse = finding.oddsRatio >= 1 ? second : first
  const sure = Math.round(100 * Math.max(finding.chanceFirstBetter, 1 - finding.chanceFirstBetter))
  if (finding.kind === 'hardly-chance') return `${better} does better than ${worse}: this is hardly chance.`
  if (finding.kind === 'probably-different')
    return `${better} probably does better than ${worse} (${sure} in 100); a small part of such differences is chance.`
  if (finding.kind === 'no-difference-shown')
    return `No difference shown between ${first} and ${second}; one that matters would most likely have been seen.`
  return `Cannot tell yet between ${first} and ${second}: this may be chance. About ${finding.plantsMore} plants more would tell.`
}
