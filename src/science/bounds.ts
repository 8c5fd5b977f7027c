/**
 * Checks of arguments: what is out of bounds is a mistake of the caller, so it throws, naming the function,
 * the argument, the bound and the value.
 */

export function requireWithin(
  place: string,
  name: string,
  value: number,
  lowest: number,
  highest: number,
): void {
  if (!(value >= lowest && value <= highest))
    throw new RangeError(`${place}: ${name} must be ${lowest} to ${highest}, got ${value}`)
}

export function requireBetween(
  place: string,
  name: string,
  value: number,
  above: number,
  below: number,
): void {
  if (!(value > above && value < below))
    throw new RangeError(
      `${place}: ${name} must be between ${above} and ${below}, both excluded, got ${value}`,
    )
}

export function requireAbove(place: string, name: string, value: number, above: number): void {
  if (!(value > above && Number.isFinite(value)))
    throw new RangeError(`${place}: ${name} must be above ${above}, got ${value}`)
}

export function requireWhole(
  place: string,
  name: string,
  value: number,
  lowest: number,
  highest = Number.MAX_SAFE_INTEGER,
): void {
  if (!(Number.isSafeInteger(value) && value >= lowest && value <= highest))
    throw new RangeError(
      highest === Number.MAX_SAFE_INTEGER
        ? `${place}: ${name} must be a whole number of ${lowest} or more, got ${value}`
        : `${place}: ${name} must be a whole number of ${lowest} to ${highest}, got ${value}`,
    )
}
