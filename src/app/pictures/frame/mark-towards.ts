import type { Box } from './nearest-mark.ts'

export type Way = 'ArrowLeft' | 'ArrowRight' | 'ArrowUp' | 'ArrowDown'

/** Off the way counts so many times what lies along it: the next in a row comes before one of the next row. */
const ASIDE = 3

const middle = ({ left, right, top, bottom }: Box) => ({ x: (left + right) / 2, y: (top + bottom) / 2 })

/** Which of the marks an arrow key goes to from one of them, by its place among them; null where none lies that way. */
export const markTowards = (boxes: readonly Box[], from: number, way: Way): number | null => {
  const here = middle(boxes[from]!)
  const isAcross = way === 'ArrowLeft' || way === 'ArrowRight'
  const sign = way === 'ArrowLeft' || way === 'ArrowUp' ? -1 : 1
  let best: { readonly index: number; readonly far: number } | null = null
  for (const [index, box] of boxes.entries()) {
    const there = middle(box)
    const [along, aside] = isAcross
      ? [sign * (there.x - here.x), Math.abs(there.y - here.y)]
      : [sign * (there.y - here.y), Math.abs(there.x - here.x)]
    if (index === from || along < 1) continue
    const far = along + ASIDE * aside
    if (best === null || far < best.far) best = { index, far }
  }
  return best?.index ?? null
}
