/**
 * A function of a complex s built from gamma functions,
 *   F(s) = exp(slope · s) · Π [Γ(at + direction · s) / Γ(at)]^power,
 * such as the Mellin transform of a product of Beta variables.
 */
export interface GammaProduct {
  readonly slope: number
  readonly factors: readonly GammaFactor[]
}

export interface GammaFactor {
  readonly at: number
  readonly direction: 1 | -1
  readonly power: 1 | -1
}

/** Width of a step along the path. Halving it changes the results by less than 1e-12. */
const STEP = 0.2
const LONGEST_PATH = 60

/**
 * (1 / 2πi) ∫ F(s) ds, or ∫ F(s)/s ds with `overS`, along a path from −i∞ to i∞ that crosses the real line
 * between `low` and `high`, where F has no pole.
 *
 * The path goes through the saddle point, where the integrand is largest and does not swing, as wide as the saddle is:
 * s = c + σ (i sinh u + bend · (cosh u − 1)). Along u the integrand falls off doubly exponentially or, far out,
 * exponentially, so that the trapezoid rule converges exponentially: 15 to 20 points usually give 12 digits.
 * `bend` turns the far ends to where exp(slope · s) falls.
 *
 * @source Daniels 1987, International Statistical Review 55:37-48 (saddle point); Trefethen & Weideman 2014,
 *   SIAM Review 56:385-458 (trapezoid rule); their joining is ours
 */
export function gammaContourIntegral(
  product: GammaProduct,
  low: number,
  high: number,
  overS: boolean,
  from: number,
): number {
  const { saddle, logHeight, curvature } = saddlePoint(product, low, high, overS, from)
  const width = 1 / Math.sqrt(curvature)
  const bend = product.slope === 0 ? 0 : -0.3 * Math.sign(product.slope)
  let sum = 0
  let small = 0
  for (let u = 0; u < LONGEST_PATH; u += STEP) {
    const sinh = Math.sinh(u)
    const cosh = Math.cosh(u)
    const re = saddle + width * bend * (cosh - 1)
    const im = width * sinh
    let logSize = product.slope * re - logHeight
    let angle = product.slope * im
    for (const { at, direction, power } of product.factors) {
      logGamma(at + direction * re, direction * im)
      logSize += power * logGammaRe
      angle += power * logGammaIm
    }
    // The path's own direction, and the division by s.
    let wayRe = bend * sinh
    let wayIm = cosh
    if (overS) {
      const size = re * re + im * im
      const turnedRe = (wayRe * re + wayIm * im) / size
      wayIm = (wayIm * re - wayRe * im) / size
      wayRe = turnedRe
    }
    const height = Math.exp(logSize)
    const term = height * (wayIm * Math.cos(angle) + wayRe * Math.sin(angle))
    sum += u === 0 ? term / 2 : term
    // The integrand may swing through 0: only a long run of nothing ends it.
    small = height * Math.hypot(wayRe, wayIm) < 1e-17 * Math.abs(sum) ? small + 1 : 0
    if (small === 3) break
  }
  let logScale = logHeight
  for (const { at, power } of product.factors) {
    logGamma(at, 0)
    logScale -= power * logGammaRe
  }
  return ((Math.exp(logScale) * width * STEP) / Math.PI) * sum
}

/** The point of the real line between `low` and `high` where F, or F/|s|, is least. */
function saddlePoint(
  { slope, factors }: GammaProduct,
  low: number,
  high: number,
  overS: boolean,
  from: number,
): { saddle: number; logHeight: number; curvature: number } {
  let left = low
  let right = high
  let s = from > low && from < high ? from : Number.isFinite(high) ? (low + high) / 2 : low + 1
  let curvature = 1
  for (let i = 0; i < 100; i++) {
    let rise = slope - (overS ? 1 / s : 0)
    curvature = overS ? 1 / (s * s) : 0
    for (const { at, direction, power } of factors) {
      polygammas(at + direction * s)
      rise += power * direction * digammaValue
      curvature += power * trigammaValue
    }
    if (rise > 0) right = s
    else left = s
    const next = s - rise / curvature
    // Close to the saddle is enough: the path need not go exactly through it.
    if (Math.abs(next - s) * Math.sqrt(curvature) < 0.05 && next > left && next < right) break
    s =
      next > left && next < right
        ? next
        : Number.isFinite(right)
          ? (left + right) / 2
          : left + 2 * Math.max(1, s - left)
  }
  let logHeight = slope * s
  for (const { at, direction, power } of factors) {
    logGamma(at + direction * s, 0)
    logHeight += power * logGammaRe
  }
  return { saddle: s, logHeight, curvature }
}

let logGammaRe = 0
let logGammaIm = 0

/**
 * log Γ(z) into `logGammaRe` and `logGammaIm`, up to whole turns of the angle; z not on the negative real line.
 * Stirling's series after moving z out to where it holds; relative error about 1e-15.
 */
function logGamma(zRe: number, zIm: number): void {
  let re = zRe
  let productRe = 1
  let productIm = 0
  const y = Math.abs(zIm)
  while (re < 9 && re + y < 14) {
    const nextRe = productRe * re - productIm * zIm
    productIm = productRe * zIm + productIm * re
    productRe = nextRe
    re += 1
  }
  const size = re * re + zIm * zIm
  const logSize = 0.5 * Math.log(size)
  const angle = Math.atan2(zIm, re)
  const inverseRe = re / size
  const inverseIm = -zIm / size
  const squareRe = inverseRe * inverseRe - inverseIm * inverseIm
  const squareIm = 2 * inverseRe * inverseIm
  let seriesRe = 1 / 156
  let seriesIm = 0
  for (let i = STIRLING.length - 1; i >= 0; i--) {
    const nextRe = seriesRe * squareRe - seriesIm * squareIm + STIRLING[i]!
    seriesIm = seriesRe * squareIm + seriesIm * squareRe
    seriesRe = nextRe
  }
  logGammaRe =
    (re - 0.5) * logSize - zIm * angle - re + HALF_LOG_2_PI + seriesRe * inverseRe - seriesIm * inverseIm
  logGammaIm = (re - 0.5) * angle + zIm * logSize - zIm + seriesRe * inverseIm + seriesIm * inverseRe
  if (productIm !== 0 || productRe !== 1) {
    logGammaRe -= 0.5 * Math.log(productRe * productRe + productIm * productIm)
    logGammaIm -= Math.atan2(productIm, productRe)
  }
}

const HALF_LOG_2_PI = 0.5 * Math.log(2 * Math.PI)
/** B(2k) / (2k (2k − 1)), k = 1 … 6; the seventh is 1/156. */
const STIRLING = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360]

let digammaValue = 0
let trigammaValue = 0

/** First and second derivative of log Γ at a positive x. */
function polygammas(from: number): void {
  let x = from
  let digamma = 0
  let trigamma = 0
  while (x < 8) {
    const inverse = 1 / x
    digamma -= inverse
    trigamma += inverse * inverse
    x += 1
  }
  const inverse = 1 / x
  const square = inverse * inverse
  digammaValue =
    digamma +
    Math.log(x) -
    inverse / 2 -
    square * (1 / 12 - square * (1 / 120 - square * (1 / 252 - square / 240)))
  trigammaValue =
    trigamma +
    inverse +
    square / 2 +
    inverse * square * (1 / 6 - square * (1 / 30 - square * (1 / 42 - square / 30)))
}
