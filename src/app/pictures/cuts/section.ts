import { lines, type Point, shape } from './path.ts'
import { FIELD, type Stroke } from './stroke.ts'

const RIM = 10

/** A stem cut through lengthwise: bark outside, the line of cambium under it, wood within. */

/** The part of a shape between two uprights. */
function between(outline: readonly Point[], x0: number, x1: number): Point[] {
  const cut = (points: readonly Point[], at: number, isIn: (x: number) => boolean): Point[] =>
    points.flatMap((point, index) => {
      const next = points[(index + 1) % points.length]!
      const crossing: Point[] =
        isIn(point[0]) === isIn(next[0])
          ? []
          : [[at, point[1] + ((next[1] - point[1]) * (at - point[0])) / (next[0] - point[0])]]
      return isIn(point[0]) ? [point, ...crossing] : crossing
    })
  return cut(
    cut(outline, x0, x => x >= x0),
    x1,
    x => x <= x1,
  )
}

/** Where an upright runs inside a shape, from above down. */
export function uprightWithin(outline: readonly Point[], x: number): (readonly [Point, Point])[] {
  const crossings = outline
    .flatMap((point, index) => {
      const next = outline[(index + 1) % outline.length]!
      return point[0] <= x === next[0] <= x
        ? []
        : [point[1] + ((next[1] - point[1]) * (x - point[0])) / (next[0] - point[0])]
    })
    .sort((a, b) => a - b)
  return crossings.flatMap((y, index) =>
    index % 2 === 0 && crossings[index + 1] !== undefined
      ? [[[x, y] as const, [x, crossings[index + 1]!] as const] as const]
      : [],
  )
}

/** The outline without the stretches at the rim of the picture, where the piece goes on. */
function edgeOf(outline: readonly Point[]): string {
  const goesOn = (a: Point, b: Point) => a[1] === b[1] && (a[1] <= RIM || a[1] >= FIELD - RIM)
  return outline
    .slice(1)
    .map((point, index) => {
      const before = outline[index]!
      if (goesOn(before, point)) return ''
      const isJoined = index > 0 && !goesOn(outline[index - 1]!, before)
      return isJoined ? lines(before, point).replace(/^M[^L]*/, '') : lines(before, point)
    })
    .join('')
}

export interface Side {
  /** The upright along the outside of the bark. */
  readonly outside: number
  /** How thick the bark is, towards the wood. */
  readonly bark: number
}

/**
 * A piece in section. The outline is a line whose two ends go on, beyond the picture, unless `isClosed`.
 * `left` and `right` say where bark lies; without one, that side is wood.
 */
export function section(
  outline: readonly Point[],
  {
    left,
    right,
    isClosed = false,
  }: { readonly left?: Side; readonly right?: Side; readonly isClosed?: boolean },
): Stroke[] {
  const xs = outline.map(([x]) => x)
  const inner: [number, number] = [
    left === undefined ? Math.min(...xs) : left.outside + left.bark,
    right === undefined ? Math.max(...xs) : right.outside - right.bark,
  ]
  const cambium = [...(left === undefined ? [] : [inner[0]]), ...(right === undefined ? [] : [inner[1]])]
  return [
    { role: 'bark', d: shape(...outline) },
    { role: 'heartwood', d: shape(...between(outline, ...inner)) },
    ...cambium.flatMap(x =>
      uprightWithin(outline, x).map(([top, bottom]): Stroke => ({ role: 'cambium', d: lines(top, bottom) })),
    ),
    { role: 'edge', d: isClosed ? shape(...outline) : edgeOf(outline) },
  ]
}
