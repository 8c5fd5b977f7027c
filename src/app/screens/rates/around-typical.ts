export interface Shares {
  readonly low: number
  readonly typical: number
  readonly high: number
}

const logOdds = (share: number): number => Math.log(share / (1 - share))
const shareOf = (odds: number): number => 1 / (1 + Math.exp(-odds))

/** The same doubt around another typical share: low and high stay as far from it in log odds, and so between 0 and 1. */
export function aroundTypical({ low, typical, high }: Shares, to: number): Shares {
  const by = logOdds(to) - logOdds(typical)
  const moved = (share: number) => (share <= 0 || share >= 1 ? share : shareOf(logOdds(share) + by))
  return { low: Math.min(to, moved(low)), typical: to, high: Math.max(to, moved(high)) }
}
