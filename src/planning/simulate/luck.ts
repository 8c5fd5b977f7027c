import { type SeededRandom, seededRandom } from '../../science/index.ts'
import { normalScore } from './normal-scores.ts'

/** The luck of the endless row of seasons that belongs to a seed. It is the same whatever is planned. */
export interface Luck {
  readonly seed: number
  /** What a batch draws in a season comes from this one's streams. */
  ofSeason(season: number): SeededRandom
  /** How good a year was for a group, step and calendar year: its normal score by season, up to `to`. */
  ofYears(key: number, to: number): Float64Array
}

export function luckOf(seed: number): Luck {
  const all = seededRandom(seed)
  const seasons: SeededRandom[] = []
  const years = new Map<number, Float64Array>()
  const ofSeason = (season: number) => {
    for (let s = seasons.length; s <= season; s++) seasons.push(all.stream(s))
    return seasons[season]!
  }
  return {
    seed,
    ofSeason,
    ofYears(key, to) {
      const known = years.get(key) ?? new Float64Array(0)
      if (known.length >= to) return known
      const scores = new Float64Array(to)
      scores.set(known)
      for (let s = known.length; s < to; s++) scores[s] = normalScore(ofSeason(s).stream(key).uniform())
      years.set(key, scores)
      return scores
    },
  }
}
