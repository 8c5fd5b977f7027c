/** Beyond so many trees luck evens out and the share itself is used. */
const MANY = 60

/**
 * Share of a number of trees that turn out well, each with the same chance: the number that luck between 0 and 1 gives
 * by the binomial distribution, so that one tree is either good or not.
 */
export function goodOf(trees: number, chance: number, luck: number): number {
  if (chance <= 0) return 0
  if (chance >= 1) return 1
  if (trees > MANY) return chance
  // Luck near 1 gives many: it counts from the other end of the distribution.
  let term = (1 - chance) ** trees
  let below = term
  let good = 0
  while (below < luck && good < trees) {
    term *= ((trees - good) / (good + 1)) * (chance / (1 - chance))
    good += 1
    below += term
  }
  return good / trees
}
