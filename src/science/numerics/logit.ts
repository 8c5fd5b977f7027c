/** log(1 + eˣ) without overflow. */
export const logOnePlusExp = (x: number): number =>
  x > 0 ? x + Math.log1p(Math.exp(-x)) : Math.log1p(Math.exp(x))

/** The share whose logit is x. */
export const shareOfLogit = (x: number): number => 1 / (1 + Math.exp(-x))

/** The logit of a share strictly between 0 and 1. */
export const logitOfShare = (share: number): number => Math.log(share / (1 - share))
