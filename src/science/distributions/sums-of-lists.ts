/**
 * Sums of independent whole numbers, each given as the list of its chances of 0, 1, 2 …
 * By fast Fourier transform; absolute error about 1e-15.
 */

/** Chances of the sum of `times` independent numbers with the same list. */
export function powerOfList(list: Float64Array, times: number): Float64Array {
  if (times === 1) return list
  const length = (list.length - 1) * times + 1
  const size = powerOfTwo(length)
  const re = new Float64Array(size)
  const im = new Float64Array(size)
  re.set(list)
  transform(re, im, 1)
  for (let i = 0; i < size; i++) {
    const radius = Math.hypot(re[i]!, im[i]!) ** times
    const angle = Math.atan2(im[i]!, re[i]!) * times
    re[i] = radius * Math.cos(angle)
    im[i] = radius * Math.sin(angle)
  }
  transform(re, im, -1)
  return cleaned(re, length, size)
}

/** Chances of the sum of two independent numbers. */
export function productOfLists(one: Float64Array, other: Float64Array): Float64Array {
  const length = one.length + other.length - 1
  const size = powerOfTwo(length)
  // Both lists in one transform: one as the real part, the other as the imaginary part.
  const re = new Float64Array(size)
  const im = new Float64Array(size)
  re.set(one)
  im.set(other)
  transform(re, im, 1)
  const productRe = new Float64Array(size)
  const productIm = new Float64Array(size)
  for (let i = 0; i < size; i++) {
    const j = (size - i) & (size - 1)
    const oneRe = (re[i]! + re[j]!) / 2
    const oneIm = (im[i]! - im[j]!) / 2
    const otherRe = (im[i]! + im[j]!) / 2
    const otherIm = (re[j]! - re[i]!) / 2
    productRe[i] = oneRe * otherRe - oneIm * otherIm
    productIm[i] = oneRe * otherIm + oneIm * otherRe
  }
  transform(productRe, productIm, -1)
  return cleaned(productRe, length, size)
}

function cleaned(values: Float64Array, length: number, size: number): Float64Array {
  const list = new Float64Array(length)
  for (let i = 0; i < length; i++) list[i] = Math.max(0, values[i]! / size)
  return list
}

function powerOfTwo(atLeast: number): number {
  let size = 1
  while (size < atLeast) size *= 2
  return size
}

/** Cooley and Tukey's transform in place; the length is a power of two. */
function transform(re: Float64Array, im: Float64Array, sign: 1 | -1): void {
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
    for (let k = 0; k < half; k++) {
      const angle = (-sign * Math.PI * k) / half
      const cos = Math.cos(angle)
      const sin = Math.sin(angle)
      for (let i = k; i < size; i += 2 * half) {
        const j = i + half
        const turnedRe = re[j]! * cos - im[j]! * sin
        const turnedIm = re[j]! * sin + im[j]! * cos
        re[j] = re[i]! - turnedRe
        im[j] = im[i]! - turnedIm
        re[i]! += turnedRe
        im[i]! += turnedIm
      }
    }
  }
}
