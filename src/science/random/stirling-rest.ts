const SMALL = Array.from({ length: 10 }, (_, k) => {
  let logFactorial = 0
  for (let i = 2; i <= k; i++) logFactorial += Math.log(i)
  return logFactorial - stirling(k + 1)
})

/** Stirling's formula for log Γ(x) at x = k + 1, without its series. */
function stirling(x: number): number {
  return (x - 0.5) * Math.log(x) - x + 0.5 * Math.log(2 * Math.PI)
}

/**
 * What Stirling's formula lacks of log k!, with log k! = (k + 1/2) log(k + 1) − (k + 1) + log √2π + rest.
 * @param k whole, 0 or more
 * @returns error below 1e-13
 */
export function stirlingRest(k: number): number {
  if (k < 10) return SMALL[k]!
  const x = 1 / (k + 1)
  const square = x * x
  return x * (1 / 12 - square * (1 / 360 - square * (1 / 1260 - square / 1680)))
}
