/** Chances of the whole numbers from `first` on. */
export interface ListOfChances {
  readonly first: number
  readonly chances: Float64Array
}

/** Independent whole numbers, some with one list of chances and some with another. */
export interface SumOfTwoKinds {
  readonly one: ListOfChances
  readonly times: number
  readonly other: ListOfChances
  readonly otherTimes: number
}

/**
 * Chances of the sum of independent whole numbers, by fast Fourier transform, where independent numbers multiply.
 * @returns absolute error about 1e-15 for each list
 */
export function chancesOfSum({ one, times, other, otherTimes }: SumOfTwoKinds): ListOfChances {
  const length = times * (one.chances.length - 1) + otherTimes * (other.chances.length - 1) + 1
  let size = 1
  while (size < length) size *= 2
  const turns = unitRoots(size)
  const re = new Float64Array(size)
  const im = new Float64Array(size)
  const sumRe = new Float64Array(size)
  const sumIm = new Float64Array(size)
  // Both lists in one transform: one as the real part, the other as the imaginary part.
  re.set(one.chances)
  im.set(other.chances)
  transform(re, im, turns)
  for (let i = 0; i < size; i++) {
    const j = (size - i) & (size - 1)
    power((re[i]! + re[j]!) / 2, (im[i]! - im[j]!) / 2, times)
    const oneRe = powerRe
    const oneIm = powerIm
    power((im[i]! + im[j]!) / 2, (re[j]! - re[i]!) / 2, otherTimes)
    sumRe[i] = oneRe * powerRe - oneIm * powerIm
    sumIm[i] = -(oneRe * powerIm + oneIm * powerRe)
  }
  // The way back is the same transform of the conjugate.
  transform(sumRe, sumIm, turns)
  const chances = new Float64Array(length)
  for (let i = 0; i < length; i++) chances[i] = Math.max(0, sumRe[i]! / size)
  return { first: times * one.first + otherTimes * other.first, chances }
}

let powerRe = 1
let powerIm = 0

/** A complex number to a whole power, into `powerRe` and `powerIm`. */
function power(re: number, im: number, times: number): void {
  let baseRe = re
  let baseIm = im
  powerRe = 1
  powerIm = 0
  for (let left = times; left > 0; left = Math.floor(left / 2)) {
    if (left % 2 === 1) {
      const kept = powerRe
      powerRe = kept * baseRe - powerIm * baseIm
      powerIm = kept * baseIm + powerIm * baseRe
    }
    const kept = baseRe
    baseRe = kept * kept - baseIm * baseIm
    baseIm *= 2 * kept
  }
}

interface UnitRoots {
  readonly cos: Float64Array
  readonly sin: Float64Array
}

const knownRoots = new Map<number, UnitRoots>()

function unitRoots(size: number): UnitRoots {
  const known = knownRoots.get(size)
  if (known) return known
  const cos = new Float64Array(size / 2)
  const sin = new Float64Array(size / 2)
  for (let i = 0; i < size / 2; i++) {
    cos[i] = Math.cos((2 * Math.PI * i) / size)
    sin[i] = -Math.sin((2 * Math.PI * i) / size)
  }
  const roots = { cos, sin }
  knownRoots.set(size, roots)
  return roots
}

/**
 * The discrete Fourier transform in place; the length is a power of two.
 * @source Cooley & Tukey 1965, Mathematics of Computation 19:297-301
 */
function transform(re: Float64Array, im: Float64Array, { cos, sin }: UnitRoots): void {
  const size = re.length
  for (let i = 1, j = 0; i < size; i++) {
    let bit = size >> 1
    for (; j & bit; bit >>= 1) j ^= bit
    j ^= bit
    if (i < j) {
      const keptRe = re[i]!
      const keptIm = im[i]!
      re[i] = re[j]!
      im[i] = im[j]!
      re[j] = keptRe
      im[j] = keptIm
    }
  }
  for (let half = 1; half < size; half *= 2) {
    const stride = size / (2 * half)
    for (let begin = 0; begin < size; begin += 2 * half)
      for (let k = 0; k < half; k++) {
        const i = begin + k
        const j = i + half
        const turnRe = cos[k * stride]!
        const turnIm = sin[k * stride]!
        const turnedRe = re[j]! * turnRe - im[j]! * turnIm
        const turnedIm = re[j]! * turnIm + im[j]! * turnRe
        re[j] = re[i]! - turnedRe
        im[j] = im[i]! - turnedIm
        re[i]! += turnedRe
        im[i]! += turnedIm
      }
  }
}
