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
 * @throws RangeError for an argument out of range
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
  3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987,
  67265.7709270087, 33430.57558358813, 2509.0809287301227,
]
const CENTRE_BOTTOM = [
  1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271,
  28729.085735721943, 5226.495278852546,
]
const SIDE_TOP = [
  1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684,
  0.2417807251774506, 0.022723844989269184, 0.0007745450142783414,
]
const SIDE_BOTTOM = [
  1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457,
  0.0005475938084995347, 1.0507500716444169e-9,
]
const TAIL_TOP = [
  6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124,
  0.0012426609473880784, 2.7115555687434876e-5, 2.0103343992922881e-7,
]
const TAIL_BOTTOM = [
  1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133,
  1.8463183175100548e-5, 1.421511758316446e-7, 2.0442631033899397e-15,
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

const INVERSE_SQRT_PI = 0.5641895835477563
const ERF_TOP = [
  3209.3775891384694, 377.485237685302, 113.86415415105016, 3.1611237438705655, 0.18577770618460315,
]
const ERF_BOTTOM = [2844.236833439171, 1282.6165260773723, 244.02463793444417, 23.601290952344122, 1]
const ERFC_TOP = [
  1230.3393547979972, 2051.0783778260716, 1712.0476126340707, 881.952221241769, 298.6351381974001,
  66.11919063714163, 8.883149794388377, 0.5641884969886701, 2.1531153547440383e-8,
]
const ERFC_BOTTOM = [
  1230.3393548037495, 3439.3676741437216, 4362.619090143247, 3290.7992357334597, 1621.3895745666903,
  537.1811018620099, 117.6939508913125, 15.744926110709835, 1,
]
const FAR_TOP = [
  0.0006587491615298378, 0.016083785148742275, 0.12578172611122926, 0.36034489994980445, 0.30532663496123236,
  0.016315387137302097,
]
const FAR_BOTTOM = [
  0.0023352049762686918, 0.06051834131244132, 0.5279051029514285, 1.8729528499234673, 2.568520192289822, 1,
]
