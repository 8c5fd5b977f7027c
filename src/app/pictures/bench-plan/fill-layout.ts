/** Rectangles as large as their areas, filling a bench from one end: what is left over stays free at the other. */

export interface Block {
  readonly id: string
  readonly area: number
}

export interface PlacedBlock {
  readonly id: string
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

export interface FillLayout {
  readonly blocks: readonly PlacedBlock[]
  /** End of the filled part, in metres along the bench. */
  readonly filledTo: number
  /** Area that does not fit. */
  readonly over: number
}

interface Strip {
  readonly blocks: readonly Block[]
  readonly area: number
}

/** How far from square the worst block of a strip is. */
const worst = ({ blocks, area }: Strip, across: number): number => {
  const depth = area / across
  return Math.max(
    ...blocks.map(block => {
      const length = block.area / depth
      return Math.max(depth / length, length / depth)
    }),
  )
}

/**
 * Blocks in strips across the bench, each strip taking as many as keeps them near to square (the squarified treemap of
 * Bruls, Huizing and van Wijk, 2000, in one direction). What is more than the bench holds is cut at its end and counted.
 */
export const fillBench = (blocks: readonly Block[], length: number, width: number): FillLayout => {
  const sorted = blocks.filter(({ area }) => area > 0).sort((a, b) => b.area - a.area)
  const strips: Strip[] = []
  let strip: Strip = { blocks: [], area: 0 }
  for (const block of sorted) {
    const with_: Strip = { blocks: [...strip.blocks, block], area: strip.area + block.area }
    if (strip.blocks.length > 0 && worst(with_, width) > worst(strip, width)) {
      strips.push(strip)
      strip = { blocks: [block], area: block.area }
    } else strip = with_
  }
  if (strip.blocks.length > 0) strips.push(strip)
  const total = sorted.reduce((sum, { area }) => sum + area, 0)
  const room = length * width
  // Too much is drawn pressed together, and said.
  const squeeze = total > room ? room / total : 1
  const placed: PlacedBlock[] = []
  let x = 0
  for (const { blocks: row, area } of strips) {
    const depth = (area * squeeze) / width
    let y = 0
    for (const block of row) {
      const along = (block.area / area) * width
      placed.push({ id: block.id, x, y, width: depth, height: along })
      y += along
    }
    x += depth
  }
  return { blocks: placed, filledTo: x, over: Math.max(0, total - room) }
}
