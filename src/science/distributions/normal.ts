import { requireBetween } from '../bounds.ts'

/**
 * Share of a standard normal distribution below z.
 * @returns 0 to 1, relative error below 1e-12 for |z| under 37
 * @source Cody 1969, Mathematics of Computation 23:631-637 (rational approximations of erf), coefficients from memory,
 *   checked against an error function of a reference library
 * @example normalCdf(1.96) // 0.975002
 */
export function normalCdf(z: number): number {
  const x = Math.abs(z) / Math.SQRT2
  const upper = 0.5 * erfcOfPositive(x)
  return z > 0 ? 1 - upper : upper
}

/**
 * The z below which a share of a standard normal distribution lies; the inverse of `normalCdf`.
 * @param share between 0 and 1, both excluded
 * @returns relative error about 1e-15
 * @source Wichura 1988, Applied Statistics 37:477-484 (algorithm AS 241, PPND16), coefficients from memory,
 *   checked against the inverse error function of a reference library
 * @example normalQuantile(0.975) // 1.959964
 */
export function normalQuantile(share: number): number {
  requireBetween('normalQuantile', 'share', share, 0, 1)
  return quantile(share)
}

/** Without the check, for hot loops. */
export function quantile(share: number): number {
  const q = share - 0.5
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q
    return (q * polynomial(CENTRE_TOP, r)) / polynomial(CENTRE_BOTTOM, r)
  }
  const r = Math.sqrt(-Math.log(q < 0 ? share : 1 - share))
  const size =
    r <= 5
      ? polynomial(SIDE_TOP, r - 1.6) / polynomial(SIDE_BOTTOM, r - 1.6)
      : polynomial(TAIL_TOP, r - 5) / polynomial(TAIL_BOTTOM, r - 5)
  return q < 0 ? -size : size
}

/** Coefficients from the constant term upwards. */
function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0
  for (let i = coefficients.length - 1; i >= 0; i--) sum = sum * x + coefficients[i]!
  return sum
}

const CENTRE_TOP = [
  3.387132872796366608, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125,
  45921.953931549871457, 67265.770927008700853, 33430.575583588128105, 2509.0809287301226727,
]
const CENTRE_BOTTOM = [
  1, 42.313330701600911252, 687.1870074920579083, 5394.1960214247511077, 21213.794301586595867,
  39307.89580009271061, 28729.085735721942674, 5226.495278852545925,
]
const SIDE_TOP = [
  1.42343711074968357734, 4.6303378461565452959, 5.7694972214606914055, 3.64784832476320460504,
  1.27045825245236838258, 0.24178072517745061177, 0.0227238449892691845833, 0.00077454501427834140764,
]
const SIDE_BOTTOM = [
  1, 2.05319162663775882187, 1.6763848301838038494, 0.68976733498510000455, 0.14810397642748007459,
  0.0151986665636164571966, 0.00054759380849953464, 1.05075007164441684324e-9,
]
const TAIL_TOP = [
  6.6579046435011037772, 5.4637849111641143699, 1.7848265399172913358, 0.29656057182850489123,
  0.026532189526576123093, 0.0012426609473880784386, 2.71155556874348757815e-5, 2.01033439929228813265e-7,
]
const TAIL_BOTTOM = [
  1, 0.59983220655588793769, 0.13692988092273580531, 0.0148753612908506148525, 0.00078686913114561325,
  1.8463183175100546818e-5, 1.4215117583164458887e-7, 2.04426310338993978564e-15,
]

/** Complementary error function for x of 0 or more. */
function erfcOfPositive(x: number): number {
  if (x < 0.46875) {
    const y = x * x
    return 1 - (x * polynomial(ERF_TOP, y)) / polynomial(ERF_BOTTOM, y)
  }
  const scale = Math.exp(-x * x)
  if (x <= 4) return (scale * polynomial(ERFC_TOP, x)) / polynomial(ERFC_BOTTOM, x)
  const y = 1 / (x * x)
  return (scale / x) * (INVERSE_SQRT_PI - (y * polynomial(FAR_TOP, y)) / polynomial(FAR_BOTTOM, y))
}

const INVERSE_SQRT_PI = 0.5641895835477562869
const ERF_TOP = [
  3.20937758913846947e3, 3.77485237685302021e2, 1.1386415415105016e2, 3.1611237438705656,
  1.85777706184603153e-1,
]
const ERF_BOTTOM = [
  2.84423683343917062e3, 1.28261652607737228e3, 2.44024637934444173e2, 2.36012909523441209e1, 1,
]
const ERFC_TOP = [
  1.23033935479799725e3, 2.05107837782607147e3, 1.71204761263407058e3, 8.8195222124176909e2,
  2.98635138197400131e2, 6.61191906371416295e1, 8.88314979438837594, 5.64188496988670089e-1,
  2.15311535474403846e-8,
]
const ERFC_BOTTOM = [
  1.23033935480374942e3, 3.43936767414372164e3, 4.36261909014324716e3, 3.29079923573345963e3,
  1.62138957456669019e3, 5.37181101862009858e2, 1.17693950891312499e2, 1.57449261107098347e1, 1,
]
const FAR_TOP = [
  6.58749161529837803e-4, 1.60837851487422766e-2, 1.25781726111229246e-1, 3.60344899949804439e-1,
  3.05326634961232344e-1, 1.63153871373020978e-2,
]
const FAR_BOTTOM = [
  2.33520497626869185e-3, 6.05183413124413191e-2, 5.27905102951428412e-1, 1.87295284992346725,
  2.56852019228982242, 1,
]
