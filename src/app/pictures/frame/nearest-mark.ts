export interface Box {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** A mark answers to a touch this far from its middle at least: half of what a hand needs. */
const REACH = 24

const beside = (at: number, from: number, to: number): number => Math.max(from - at, 0, at - to)

/**
 * Which of the marks a finger meant, by its place among them: the one it is on, or else the nearest within reach.
 * Of marks that lie over each other it is the one whose middle is nearest. Pixels; null where none is in reach.
 */
export const nearestMark = (boxes: readonly Box[], x: number, y: number): number | null => {
  let best: { readonly index: number; readonly off: number; readonly middle: number } | null = null
  for (const [index, { left, right, top, bottom }] of boxes.entries()) {
    const middle = { x: (left + right) / 2, y: (top + bottom) / 2 }
    const off = Math.hypot(beside(x, left, right), beside(y, top, bottom))
    const isInReach = Math.abs(x - middle.x) <= REACH && Math.abs(y - middle.y) <= REACH
    if (off > 0 && !isInReach) continue
    const toMiddle = Math.hypot(x - middle.x, y - middle.y)
    if (best === null || off < best.off || (off === best.off && toMiddle < best.middle))
      best = { index, off, middle: toMiddle }
  }
  return best?.index ?? null
}
