export interface PlacedStep {
  /** Where its words begin, one line under another. */
  readonly x: number
  readonly y: number
  /** As wide as the number that came in, narrowing to what went on; a line where nothing came yet. */
  readonly band: string
}

export interface LifeLayout {
  readonly steps: readonly PlacedStep[]
  readonly height: number
}

export const LIFE_LINE = 19
const BAND = 60
/** Of half the band, for a batch that lost nothing. */
const REACH = 29
const LETTER = 7
const LEAST_COLUMN = 150
const ROW = { band: 60, words: 76, gap: 14 } as const

/** How many letters stand in a line, and whether the steps stand under each other, as on a phone. */
export function lifeRoom(
  steps: number,
  width: number,
): { readonly isRows: boolean; readonly letters: number } {
  const column = width / Math.max(1, steps)
  const isRows = column < LEAST_COLUMN
  return { isRows, letters: Math.floor((isRows ? width - ROW.words : column - 12) / LETTER) }
}

/**
 * The life of a batch from left to right or, where there is little room, downwards.
 * @param steps how many came in and went on, as parts of the most; and how many lines are said of each
 */
export function layOutLife(
  steps: readonly { readonly entered: number; readonly out: number; readonly lines: number }[],
  width: number,
): LifeLayout {
  const { isRows } = lifeRoom(steps.length, width)
  if (!isRows) {
    const column = width / Math.max(1, steps.length)
    const middle = BAND / 2
    return {
      height: BAND + (1 + Math.max(0, ...steps.map(({ lines }) => lines))) * LIFE_LINE,
      steps: steps.map(({ entered, out }, index) => {
        const [from, to] = [index * column, (index + 1) * column]
        return {
          x: from,
          y: BAND + LIFE_LINE + 2,
          band:
            entered > 0
              ? `M${from} ${middle - REACH * entered}L${to} ${middle - REACH * out}V${middle + REACH * out}L${from} ${middle + REACH * entered}Z`
              : `M${from} ${middle}H${to}`,
        }
      }),
    }
  }
  let y = 0
  const middle = ROW.band / 2
  const placed = steps.map(({ entered, out, lines }) => {
    const [from, to] = [y, y + Math.max(2, lines) * LIFE_LINE + ROW.gap]
    y = to
    return {
      x: ROW.words,
      y: from + LIFE_LINE - 3,
      band:
        entered > 0
          ? `M${middle - REACH * entered} ${from}H${middle + REACH * entered}L${middle + REACH * out} ${to}H${middle - REACH * out}Z`
          : `M${middle} ${from}V${to}`,
    }
  })
  return { steps: placed, height: y }
}
