export interface Standing {
  readonly id: string
  readonly xMetres: number
  readonly yMetres: number
}

export interface BlockLayout {
  readonly trees: readonly { readonly id: string; readonly x: number; readonly y: number }[]
  readonly radius: number
  readonly height: number
  /** Pixels to a metre. */
  readonly scale: number
}

const LARGEST = 26
const SMALLEST = 9

/** Trees where they stand, to scale, each ring as large as the closest neighbours leave room for. */
export const layOutBlock = (trees: readonly Standing[], width: number): BlockLayout => {
  const xs = trees.map(({ xMetres }) => xMetres)
  const ys = trees.map(({ yMetres }) => yMetres)
  const [left, right] = [Math.min(...xs), Math.max(...xs)]
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)]
  const margin = LARGEST + 4
  const across = right - left
  const scale = across > 0 ? (width - 2 * margin) / across : 24
  const nearest = closest(trees) * scale
  const radius = Math.max(SMALLEST, Math.min(LARGEST, nearest * 0.42))
  const down = (bottom - top) * scale
  return {
    scale,
    radius,
    height: down + 2 * margin + 16,
    trees: trees.map(({ id, xMetres, yMetres }) => ({
      id,
      x: across > 0 ? margin + (xMetres - left) * scale : width / 2,
      y: margin + (yMetres - top) * scale,
    })),
  }
}

const closest = (trees: readonly Standing[]): number => {
  let least = Number.POSITIVE_INFINITY
  trees.forEach((a, index) => {
    for (const b of trees.slice(index + 1))
      least = Math.min(least, Math.hypot(a.xMetres - b.xMetres, a.yMetres - b.yMetres))
  })
  return least
}

/** Trees without a place, in rows of ten, four metres apart. */
export const inRows = (ids: readonly string[]): readonly Standing[] =>
  ids.map((id, index) => ({ id, xMetres: (index % 10) * 4, yMetres: Math.floor(index / 10) * 4 }))
