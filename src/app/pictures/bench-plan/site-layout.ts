import type { Bench } from '../../../record/index.ts'

export interface SitePlace {
  readonly id: string
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

export interface SiteLayout {
  readonly width: number
  readonly height: number
  readonly places: readonly SitePlace[]
  /** Whether every bench said where it stands. */
  readonly isPlaced: boolean
}

/** A bench as it is drawn, in pixels. */
export interface DrawnBench {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

const AISLE = 4
const LINE = 16
const LETTER = 7
const GAP = 6

/**
 * What stands over a bench, `share` and name, cut to the room of its line before the next bench or its line begins;
 * nothing where not even the share has room.
 */
export const lineOver = (
  bench: DrawnBench,
  share: string,
  name: string,
  all: readonly DrawnBench[],
  width: number,
): string => {
  const [top, bottom] = [bench.y - LINE, bench.y - 3]
  const inWay = all.filter(
    one =>
      one !== bench &&
      one.x + one.width > bench.x &&
      ((one.y < bottom && one.y + one.height > top) ||
        (one.x > bench.x && one.y - LINE < bottom && one.y - 3 > top)),
  )
  const end = Math.min(width, ...inWay.map(({ x }) => x - GAP))
  const letters = Math.floor((end - bench.x) / LETTER)
  const line = `${share} ${name}`
  if (line.length <= letters) return line
  if (letters >= share.length + 5) return `${line.slice(0, letters - 1).trimEnd()}…`
  return letters >= share.length ? share : ''
}

/** The nursery in metres: benches where they stand; those without a place beneath, in rows. */
export const layOutSite = (
  benches: readonly Bench[],
  sizeOf: (bench: Bench) => { readonly length: number; readonly width: number },
): SiteLayout => {
  const placed: SitePlace[] = []
  let right = 0
  let bottom = 0
  for (const bench of benches) {
    if (bench.position === null) continue
    const { length, width } = sizeOf(bench)
    placed.push({
      id: bench.id,
      x: bench.position.xMetres,
      y: bench.position.yMetres,
      width: length,
      height: width,
    })
    right = Math.max(right, bench.position.xMetres + length)
    bottom = Math.max(bottom, bench.position.yMetres + width)
  }
  const loose = benches.filter(({ position }) => position === null)
  const sizes = loose.map(sizeOf)
  const rowLength = Math.max(right, ...sizes.map(({ length }) => length), 60)
  let x = 0
  let y = bottom === 0 ? 0 : bottom + AISLE
  let rowHeight = 0
  loose.forEach((bench, index) => {
    const { length, width } = sizes[index]!
    if (x > 0 && x + length > rowLength) {
      x = 0
      y += rowHeight + AISLE
      rowHeight = 0
    }
    placed.push({ id: bench.id, x, y, width: length, height: width })
    x += length + AISLE
    rowHeight = Math.max(rowHeight, width)
    right = Math.max(right, x - AISLE)
    bottom = Math.max(bottom, y + width)
  })
  const left = Math.min(...placed.map(place => place.x), right)
  const top = Math.min(...placed.map(place => place.y), bottom)
  return {
    width: right - left,
    height: bottom - top,
    isPlaced: loose.length === 0,
    places: placed.map(place => ({ ...place, x: place.x - left, y: place.y - top })),
  }
}
