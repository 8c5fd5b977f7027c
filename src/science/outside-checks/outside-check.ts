/**
 * A check of something computed here against something that did not come from here: a standard, a handbook table, a
 * worked example, an open data set, a reference library.
 */
export interface OutsideCheck {
  /** What is checked, as a rule: read alone it says what holds. */
  readonly what: string
  /** Where the expected value comes from. */
  readonly source: string
  /** How firm it is: 'published', 'recomputed with …', 'from memory', 'common practice, no source'. */
  readonly basis: string
  readonly expected: CheckValue
  readonly got: CheckValue
  /** Largest difference allowed for numbers, one for all or one by field (`other` for the fields not named). */
  readonly tolerance: Tolerance
  readonly pass: boolean
}

export type CheckValue =
  | number
  | string
  | boolean
  | null
  | readonly CheckValue[]
  | { readonly [field: string]: CheckValue }

export type Tolerance = number | { readonly [field: string]: number }

/** Compares and says whether it passes. Fields that `got` has beyond those expected are not looked at. */
export const outsideCheck = (check: Omit<OutsideCheck, 'pass'>): OutsideCheck => ({
  ...check,
  pass: agrees(check.expected, check.got, check.tolerance, ''),
})

function agrees(
  expected: CheckValue,
  got: CheckValue | undefined,
  tolerance: Tolerance,
  field: string,
): boolean {
  if (typeof expected === 'number')
    return typeof got === 'number' && Math.abs(got - expected) <= allowed(tolerance, field)
  if (Array.isArray(expected))
    return (
      Array.isArray(got) &&
      got.length === expected.length &&
      expected.every((value, i) => agrees(value, got[i], tolerance, field))
    )
  if (isRecord(expected))
    return (
      isRecord(got) &&
      Object.entries(expected).every(([key, value]) => agrees(value, got[key], tolerance, key))
    )
  return got === expected
}

const isRecord = (value: CheckValue | undefined): value is { readonly [field: string]: CheckValue } =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

const allowed = (tolerance: Tolerance, field: string) =>
  typeof tolerance === 'number' ? tolerance : (tolerance[field] ?? tolerance.other ?? 0)
