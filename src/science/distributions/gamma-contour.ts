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

/** A panel is no longer than its distance from the saddle, nor than it takes to fall by exp(−12). */
const FALL_IN_A_PANEL = 12
const MOST_PANELS = 400
/** The path rises at 45° at least: it leaves the real line with its poles behind, and Stirling's series holds on it. */
const LEAST_RISE = Math.SQRT1_2

/** Gauss–Legendre points and weights on 0 to 1. */
const POINTS = [
  0.009219682876640378, 0.0479413718147626, 0.11504866290284765, 0.20634102285669126, 0.31608425050090994,
  0.43738329574426554, 0.5626167042557344, 0.6839157494990901, 0.7936589771433087, 0.8849513370971523,
  0.9520586281852375, 0.9907803171233596,
]
const WEIGHTS = [
  0.023587668193255706, 0.05346966299765953, 0.08003916427167321, 0.10158371336153287, 0.1167462682691773,
  0.12457352290670134, 0.12457352290670134, 0.1167462682691773, 0.10158371336153287, 0.08003916427167321,
  0.05346966299765953, 0.023587668193255706,
]

/**
 * (1 / 2πi) ∫ F(s) ds, or ∫ F(s)/s ds with `overS`, along a path from −i∞ to i∞ that crosses the real line
 * between `low` and `high`, where F has no pole.
 *
 * The path begins at the saddle point, where the integrand is largest and does not swing, and goes on in straight
 * panels, each in the direction in which the integrand falls fastest, for then it swings least. Each panel is integrated
 * by 12 Gauss–Legendre points; 5 to 8 panels usually give 11 digits. The lower half mirrors the upper.
 *
 * @param from a guess of the saddle point
 * @source Daniels 1987, International Statistical Review 55:37-48 (saddle point and steepest descent)
 */
export function gammaContourIntegral(
  product: GammaProduct,
  low: number,
  high: number,
  overS: boolean,
  from: number,
): number {
  const { saddle, logHeight, curvature } = saddlePoint(product, low, high, overS, from)
  let re = saddle
  let im = 0
  let wayRe = 0
  let wayIm = 1
  let length = 1.2 / Math.sqrt(curvature)
  let sum = 0
  for (let panel = 0; panel < MOST_PANELS; panel++) {
    let highest = 0
    for (let i = 0; i < POINTS.length; i++) {
      const atRe = re + POINTS[i]! * length * wayRe
      const atIm = im + POINTS[i]! * length * wayIm
      let logSize = product.slope * atRe - logHeight
      let angle = product.slope * atIm
      for (const { at, direction, power } of product.factors) {
        logGamma(at + direction * atRe, direction * atIm)
        logSize += power * logGammaRe
        angle += power * logGammaIm
      }
      // The direction, divided by s or not, over i: its real part times F is what counts.
      const size = overS ? atRe * atRe + atIm * atIm : 1
      const stepRe = overS ? (wayRe * atRe + wayIm * atIm) / size : wayRe
      const stepIm = overS ? (wayIm * atRe - wayRe * atIm) / size : wayIm
      const height = Math.exp(logSize)
      sum += WEIGHTS[i]! * length * height * (stepIm * Math.cos(angle) + stepRe * Math.sin(angle))
      highest = height * Math.hypot(stepRe, stepIm)
    }
    re += length * wayRe
    im += length * wayIm
    const distance = Math.hypot(re - saddle, im)
    if (highest * distance < 1e-14 * Math.abs(sum)) break

    // d log F / ds, whose direction says where F falls.
    let fallRe = product.slope
    let fallIm = 0
    for (const { at, direction, power } of product.factors) {
      digamma(at + direction * re, direction * im)
      fallRe += power * direction * digammaRe
      fallIm += power * direction * digammaIm
    }
    if (overS) {
      const size = re * re + im * im
      fallRe -= re / size
      fallIm += im / size
    }
    const steepness = Math.hypot(fallRe, fallIm)
    wayIm = Math.max(LEAST_RISE, fallIm / steepness)
    wayRe = -Math.sign(fallRe) * Math.sqrt(Math.max(0, 1 - wayIm * wayIm))
    length = Math.min(distance, FALL_IN_A_PANEL / steepness)
  }
  let logScale = logHeight
  for (const { at, power } of product.factors) {
    logGamma(at, 0)
    logScale -= power * logGammaRe
  }
  return (Math.exp(logScale) * sum) / Math.PI
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
  while (re < 9 && re * re + zIm * zIm < 200) {
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

let digammaRe = 0
let digammaIm = 0

/** Derivative of log Γ at z; relative error about 1e-6, enough for a direction. */
function digamma(zRe: number, zIm: number): void {
  let re = zRe
  let sumRe = 0
  let sumIm = 0
  while (re < 3 && re * re + zIm * zIm < 25) {
    const size = re * re + zIm * zIm
    sumRe -= re / size
    sumIm += zIm / size
    re += 1
  }
  const size = re * re + zIm * zIm
  const inverseRe = re / size
  const inverseIm = -zIm / size
  digammaRe =
    sumRe + 0.5 * Math.log(size) - inverseRe / 2 - (inverseRe * inverseRe - inverseIm * inverseIm) / 12
  digammaIm = sumIm + Math.atan2(zIm, re) - inverseIm / 2 - (inverseRe * inverseIm) / 6
}

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
