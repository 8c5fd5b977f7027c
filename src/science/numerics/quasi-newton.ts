/** A function to be made small: its value and, written into `gradient`, its slope. NaN or ∞ means out of bounds. */
export type Smooth = (at: Float64Array, gradient: Float64Array) => number

export interface Minimum {
  readonly at: Float64Array
  readonly gradient: Float64Array
  readonly value: number
  readonly evaluations: number
  /** Expected fall still to come, ½·gᵀ·H⁻¹·g, at the point returned. */
  readonly expectedFall: number
  readonly converged: boolean
}

export interface MinimiseOptions {
  /** About the standard error of each coordinate: the first guess of the inverse curvature is its square. */
  readonly scale: Float64Array
  /** No coordinate moves farther than this in one step. */
  readonly stepAtMost?: number
  /** Stops once a step promises a smaller fall than this; for a log-likelihood 1e-8 is 1e-4 standard errors. */
  readonly fallBelow?: number
  readonly evaluationsAtMost?: number
}

/**
 * Minimum of a smooth function by the BFGS quasi-Newton method with a backtracking (Armijo) line search
 * that also asks for rising slope (weak Wolfe) before it trusts the curvature.
 *
 * @source Nocedal & Wright 2006, Numerical Optimization, ch. 6 (BFGS), algorithm 3.5 idea; from memory
 */
export function minimise(of: Smooth, start: Float64Array, options: MinimiseOptions): Minimum {
  const size = start.length
  const fallBelow = options.fallBelow ?? 1e-9
  const stepAtMost = options.stepAtMost ?? Number.POSITIVE_INFINITY
  const most = options.evaluationsAtMost ?? 400
  let x: Float64Array = Float64Array.from(start)
  let gradient: Float64Array = new Float64Array(size)
  let value = of(x, gradient)
  if (!Number.isFinite(value))
    throw new RangeError(`minimise: the start must give a finite value, got ${value}`)
  let evaluations = 1
  const inverse = new Float64Array(size * size)
  const reset = () => {
    inverse.fill(0)
    for (let i = 0; i < size; i++) inverse[i * size + i] = options.scale[i]! ** 2
  }
  reset()
  let fresh = true
  const step = new Float64Array(size)
  const curved = new Float64Array(size)
  for (;;) {
    let slope = 0
    for (let i = 0; i < size; i++) {
      let sum = 0
      for (let j = 0; j < size; j++) sum -= inverse[i * size + j]! * gradient[j]!
      step[i] = sum
    }
    for (let i = 0; i < size; i++) slope += step[i]! * gradient[i]!
    if (!(slope < 0) && !fresh) {
      reset()
      fresh = true
      continue
    }
    const expectedFall = -slope / 2
    if (!(expectedFall > fallBelow) || evaluations >= most)
      return { at: x, gradient, value, evaluations, expectedFall, converged: expectedFall <= fallBelow }

    let length = 1
    for (let i = 0; i < size; i++)
      length = Math.min(length, stepAtMost / Math.max(Math.abs(step[i]!), 1e-300))
    let low = 0
    let high = Number.POSITIVE_INFINITY
    let found: { x: Float64Array; gradient: Float64Array; value: number; slope: number } | undefined
    for (let tries = 0; tries < 30 && evaluations < most; tries++) {
      const nextX = x.map((xi, i) => xi + length * step[i]!)
      const nextGradient = new Float64Array(size)
      const nextValue = of(nextX, nextGradient)
      evaluations++
      if (!(nextValue <= value + 1e-4 * length * slope)) {
        high = length
        // The parabola through value, slope and the new value, kept well inside the bracket.
        const parabola = (-slope * length * length) / (2 * (nextValue - value - slope * length))
        const inside = Number.isFinite(parabola) ? parabola : 0
        length = Math.min(Math.max(inside, low + 0.1 * (high - low)), low + 0.6 * (high - low))
        continue
      }
      let nextSlope = 0
      for (let i = 0; i < size; i++) nextSlope += nextGradient[i]! * step[i]!
      found = { x: nextX, gradient: nextGradient, value: nextValue, slope: nextSlope }
      if (nextSlope >= 0.9 * slope) break
      low = length
      length = Number.isFinite(high) ? (low + high) / 2 : 2 * length
    }
    if (found === undefined) {
      if (fresh) return { at: x, gradient, value, evaluations, expectedFall, converged: false }
      reset()
      fresh = true
      continue
    }

    const moved = found.x.map((xi, i) => xi - x[i]!)
    const turned = found.gradient.map((gi, i) => gi - gradient[i]!)
    let along = 0
    for (let i = 0; i < size; i++) along += moved[i]! * turned[i]!
    if (along > 0) {
      let curvature = 0
      for (let i = 0; i < size; i++) {
        let sum = 0
        for (let j = 0; j < size; j++) sum += inverse[i * size + j]! * turned[j]!
        curved[i] = sum
        curvature += sum * turned[i]!
      }
      const weight = (1 + curvature / along) / along
      for (let i = 0; i < size; i++)
        for (let j = 0; j < size; j++)
          inverse[i * size + j] =
            inverse[i * size + j]! +
            weight * moved[i]! * moved[j]! -
            (curved[i]! * moved[j]! + moved[i]! * curved[j]!) / along
    }
    fresh = false
    x = found.x
    gradient = found.gradient
    value = found.value
  }
}

/** Second derivatives by differences of the slope one step forward of a minimum: symmetric, row by row. */
export function curvature(of: Smooth, minimum: Minimum, step: number): Float64Array {
  const size = minimum.at.length
  const out = new Float64Array(size * size)
  const moved = new Float64Array(size)
  for (let i = 0; i < size; i++) {
    const x = Float64Array.from(minimum.at)
    x[i]! += step
    of(x, moved)
    for (let j = 0; j < size; j++) {
      const half = (moved[j]! - minimum.gradient[j]!) / (2 * step)
      out[i * size + j]! += half
      out[j * size + i]! += half
    }
  }
  return out
}

/** A function with its slope by central differences, for few coordinates and cheap values. */
export const withSlope =
  (of: (at: Float64Array) => number, step = 1e-5): Smooth =>
  (at, gradient) => {
    const moved = Float64Array.from(at)
    for (let i = 0; i < at.length; i++) {
      moved[i] = at[i]! + step
      const above = of(moved)
      moved[i] = at[i]! - step
      gradient[i] = (above - of(moved)) / (2 * step)
      moved[i] = at[i]!
    }
    return of(at)
  }
