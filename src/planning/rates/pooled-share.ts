/** Shares of batches seen. */
export interface SeenShare {
  readonly entered: number
  readonly survived: number
}

export interface Beta {
  readonly alpha: number
  readonly beta: number
}

/** How many batches what was believed before is worth: for the mean, and for the spread between batches. */
const MEAN_WORTH_BATCHES = 2
const SPREAD_WORTH_BATCHES = 6

/**
 * The share of the next batch, from what was believed before and the batches seen, weighed by credibility.
 *
 * The variance V before is split: the mean is worth 2 batches, so Var(mean) = V/3 and batches differ by 2V/3.
 * A batch of n plants tells of the mean with variance m(1−m)(ρ + (1−ρ)/n); the spread ρ between batches is
 * the one before, worth 6 batches, together with what the batches seen show. The answer is the Beta with the mean
 * and the variance of a future batch. Takes a microsecond a batch, where the exact mixture of science's
 * `rateFromCounts` takes 0.2 ms; its mean stays within 0.03 of that one (tested).
 *
 * @source Bühlmann & Straub 1970, Mitteilungen der Vereinigung schweizerischer Versicherungsmathematiker 70:111-133
 *   (credibility), from memory; the worth of the prior is our choice
 */
export function pooledShare(before: Beta, seen: readonly SeenShare[]): Beta {
  const rows = seen.filter(row => row.entered > 0)
  if (rows.length === 0) return before
  const total = before.alpha + before.beta
  const mean0 = before.alpha / total
  const variance0 = (mean0 * (1 - mean0)) / (total + 1)
  const meanVariance = variance0 / (MEAN_WORTH_BATCHES + 1)
  const rho0 = (variance0 - meanVariance) / (mean0 * (1 - mean0) - meanVariance)

  let mean = mean0
  let rho = rho0
  let left = meanVariance
  for (let round = 0; round < 8; round++) {
    const unit = Math.max(mean * (1 - mean), 1e-6)
    let weights = 1 / meanVariance
    let weighed = mean0 / meanVariance
    for (const { entered, survived } of rows) {
      const weight = 1 / (unit * (rho + (1 - rho) / entered))
      weights += weight
      weighed += (weight * survived) / entered
    }
    mean = weighed / weights
    left = 1 / weights
    rho = spreadSeen(rows, mean, rho, rho0)
  }
  const clamped = Math.min(Math.max(mean, 1e-4), 1 - 1e-4)
  const unit = clamped * (1 - clamped)
  const variance = Math.min(left + rho * (unit - Math.min(left, unit)), 0.95 * unit)
  const precision = unit / variance - 1
  return { alpha: clamped * precision, beta: (1 - clamped) * precision }
}

/** Spread between batches: the one before and each batch's own squared distance, beyond what its size explains. */
function spreadSeen(rows: readonly SeenShare[], mean: number, rho: number, rho0: number): number {
  const unit = Math.max(mean * (1 - mean), 1e-6)
  let sum = SPREAD_WORTH_BATCHES * rho0
  let weights = SPREAD_WORTH_BATCHES
  for (const { entered, survived } of rows) {
    if (entered < 2) continue
    const weight = rho / (rho + (1 - rho) / entered)
    const own = ((survived / entered - mean) ** 2 / unit - 1 / entered) / (1 - 1 / entered)
    sum += weight * own
    weights += weight
  }
  return Math.min(Math.max(sum / weights, rho0 / 10, 1e-5), 0.9)
}
