export interface Relative {
  readonly key: string
  readonly generation: number
}

export interface PlacedRelative {
  readonly key: string
  readonly x: number
  readonly y: number
}

export interface LineageLayout {
  readonly places: ReadonlyMap<string, PlacedRelative>
  readonly width: number
  readonly height: number
}

/** How large each relative is drawn, and how far the generations stand apart. */
export interface LineageSize {
  readonly width: number
  readonly height: number
  readonly across: number
}
export const WIDE: LineageSize = { width: 190, height: 50, across: 64 }
/** On a phone parents and children stand side by side without scrolling. */
export const NARROW: LineageSize = { width: 136, height: 50, across: 24 }
/** Where there is room all boxes are so wide, and no wider. */
const WIDEST = 280
const DOWN = 12
const SWEEPS = 6

/** As wide as the room for the drawing lets so many generations be. */
export const widened = (size: LineageSize, generations: number, room: number): LineageSize => ({
  ...size,
  width: Math.max(size.width, Math.min(WIDEST, (room + size.across) / generations - size.across)),
})

/**
 * The family in columns, a generation each, ancestors before it. Within a column relatives stand near those they are
 * linked to: each sweep orders a column by the mean place of its neighbours (barycentre method of Sugiyama, Tagawa and
 * Toda, 1981).
 */
export const layOutLineage = (
  relatives: readonly Relative[],
  links: readonly { readonly from: string; readonly to: string }[],
  size: LineageSize = WIDE,
): LineageLayout => {
  const columns = new Map<number, string[]>()
  for (const { key, generation } of relatives)
    columns.set(generation, [...(columns.get(generation) ?? []), key])
  const generations = [...columns.keys()].sort((a, b) => a - b)
  const neighbours = new Map<string, string[]>()
  for (const { from, to } of links) {
    neighbours.set(from, [...(neighbours.get(from) ?? []), to])
    neighbours.set(to, [...(neighbours.get(to) ?? []), from])
  }
  const order = new Map<string, number>()
  const number = (): void => {
    for (const column of columns.values())
      for (const [index, key] of column.entries()) order.set(key, index - (column.length - 1) / 2)
  }
  number()
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    for (const generation of sweep % 2 === 0 ? generations : [...generations].reverse()) {
      const column = columns.get(generation)!
      const mean = (key: string): number => {
        const near = (neighbours.get(key) ?? []).filter(one => order.has(one))
        return near.length === 0
          ? order.get(key)!
          : near.reduce((sum, one) => sum + order.get(one)!, 0) / near.length
      }
      const weights = new Map(column.map(key => [key, mean(key)]))
      column.sort((a, b) => weights.get(a)! - weights.get(b)!)
      for (const [index, key] of column.entries()) order.set(key, index - (column.length - 1) / 2)
    }
  }
  const tallest = Math.max(1, ...[...columns.values()].map(({ length }) => length))
  const pitch = size.height + DOWN
  const height = tallest * pitch - DOWN
  const places = new Map<string, PlacedRelative>()
  generations.forEach((generation, column) => {
    for (const key of columns.get(generation)!)
      places.set(key, {
        key,
        x: column * (size.width + size.across),
        y: height / 2 - size.height / 2 + order.get(key)! * pitch,
      })
  })
  return { places, width: generations.length * (size.width + size.across) - size.across, height }
}
