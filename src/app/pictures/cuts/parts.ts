import { away, beside, blob, flowing, lines, oval, type Point, shape } from './path.ts'
import type { Role, Stroke } from './stroke.ts'

/** The parts that every drawing is put together from. */
const one = (role: Role, d: string): Stroke => ({ role, d })
export const stroke = one

/** A round stem or branch along a line, base first; a cut end is closed, another goes on. */
export function limb(
  middle: readonly Point[],
  width: number,
  { tipWidth = width, cutBase = false, cutTip = false } = {},
): Stroke[] {
  const half = (index: number) => (width + ((tipWidth - width) * index) / (middle.length - 1)) / 2
  const left = beside(middle, index => half(index))
  const right = beside(middle, index => -half(index))
  const [leftD, rightD] = [flowing(left), flowing([...right].reverse())]
  return [
    one('bark', `${leftD}${rightD.replace('M', 'L')}Z`),
    one('edge', leftD),
    one('edge', rightD),
    ...(cutBase ? [one('edge', lines(left[0]!, right[0]!))] : []),
    ...(cutTip ? [one('edge', lines(left.at(-1)!, right.at(-1)!))] : []),
  ]
}

/** An upright stem from its base up. */
export const stem = (
  x: number,
  base: number,
  tip: number,
  width: number,
  ends: { readonly cutBase?: boolean; readonly cutTip?: boolean; readonly tipWidth?: number } = {},
): Stroke[] =>
  limb(
    [
      [x, base],
      [x, (base + tip) / 2],
      [x, tip],
    ],
    width,
    ends,
  )

/** The flat top of a cut stem seen from a little above: bark, the ring of cambium, wood and pith. */
export const stump = (x: number, y: number, width: number): Stroke[] => [
  one('wood', oval(x, y, width / 2, width * 0.15)),
  one('cambium', oval(x, y, width * 0.41, width * 0.115)),
  one('fine', oval(x, y, width * 0.06, width * 0.02)),
]

/** A slanting cut seen from the front: an oval of wood with the cambium along its edge. */
export const slantFace = (x: number, top: number, bottom: number, width: number): Stroke[] => {
  const [y, ry] = [(top + bottom) / 2, (bottom - top) / 2]
  return [
    one('wood', oval(x, y, width / 2, ry)),
    one('cambium', oval(x, y, width / 2 - 3.5, ry - 5)),
    one('fine', lines([x, y - ry / 2], [x, y + ry / 2])),
  ]
}

/** The face of a wedge or long slant from the front: an arch above, and as wide as the stem down to its edge. */
export const archFace = (x: number, top: number, bottom: number, width: number): Stroke[] => {
  const arch = (half: number, from: number, to: number): Point[] => [
    [x - half, to],
    [x - half, from + 0.55 * (to - from)],
    [x - half * 0.8, from + 0.2 * (to - from)],
    [x, from],
    [x + half * 0.8, from + 0.2 * (to - from)],
    [x + half, from + 0.55 * (to - from)],
    [x + half, to],
  ]
  const [left, right] = [x - width / 2, x + width / 2]
  return [
    one('bark', shape([left, top], [right, top], [right, bottom], [left, bottom])),
    one('wood', `${flowing(arch(width / 2, top, bottom))}Z`),
    one('cambium', flowing(arch(width / 2 - 3.5, top + 6, bottom))),
    one('fine', lines([x, top + 20], [x, bottom - 6])),
  ]
}

/** A leaf from its foot, pointing so many degrees (0 right, 90 up); cut across where it is to be halved. */
export function leaf(foot: Point, degrees: number, length: number, cut = false): Stroke[] {
  const start = away(foot, degrees, length * 0.14)
  const along = (share: number, aside: number): Point =>
    away(away(start, degrees, length * 0.86 * share), degrees + 90, length * aside)
  const end = cut ? 0.5 : 1
  const outline: Point[] = cut
    ? [start, along(0.25, 0.15), along(0.5, 0.19), along(0.5, -0.19), along(0.25, -0.15)]
    : [
        start,
        along(0.25, 0.15),
        along(0.5, 0.19),
        along(0.8, 0.11),
        along(1, 0),
        along(0.8, -0.11),
        along(0.5, -0.19),
        along(0.25, -0.15),
      ]
  return [
    one('fine', lines(foot, start)),
    one('leaf', cut ? shape(...outline) : blob(outline)),
    one('fine', lines(start, along(end * 0.9, 0))),
  ]
}

/** A leaf that has been taken off. */
export const goneLeaf = (foot: Point, degrees: number, length: number): Stroke[] => [
  one('gone', leaf(foot, degrees, length)[1]!.d),
]

/** A bud at the side of a stem: -1 left, 1 right. It points up. */
export const bud = ([x, y]: Point, side: -1 | 1, size = 8): Stroke => ({
  role: 'bud',
  d: flowing([
    [x, y + size * 0.8],
    [x + side * size * 0.75, y],
    [x + side * size * 0.55, y - size],
    [x, y - size * 0.6],
  ]),
})

/** A bud from the front, over the stub of its leaf stalk. */
export const facingBud = ([x, y]: Point, size = 10): Stroke[] => [
  one(
    'fine',
    shape(
      [x - size * 0.45, y + size * 0.9],
      [x - size * 0.35, y + size * 2.1],
      [x + size * 0.35, y + size * 2.1],
      [x + size * 0.45, y + size * 0.9],
    ),
  ),
  one(
    'bud',
    blob([
      [x, y - size * 1.2],
      [x + size * 0.75, y + size * 0.2],
      [x, y + size],
      [x - size * 0.75, y + size * 0.2],
    ]),
  ),
  one(
    'fine',
    flowing([
      [x, y - size * 0.7],
      [x + size * 0.15, y],
      [x, y + size * 0.7],
    ]),
  ),
]

/** Roots from a base, spread below it; `turn` bends the whole bunch (0 straight down). */
export const roots = ([x, y]: Point, { count = 5, length = 40, spread = 110, turn = 0 } = {}): Stroke[] =>
  Array.from({ length: count }, (_, index) => {
    const direction = -90 + turn + (count === 1 ? 0 : (index / (count - 1) - 0.5) * spread)
    const reach = length * (1 - 0.16 * ((index * 2) % 3))
    const bend = index % 2 === 0 ? 9 : -9
    const first = away([x, y], direction + bend, reach * 0.4)
    const second = away(first, direction * 0.6 - 90 * 0.4 - bend, reach * 0.35)
    return one(
      'root',
      flowing([[x, y], first, second, away(second, direction * 0.4 - 90 * 0.6 + bend, reach * 0.25)]),
    )
  })

/** A tie wound about an upright stem; it laps like tiles from below up. */
export const tie = (
  x: number,
  top: number,
  bottom: number,
  width: number,
  turns = Math.round((bottom - top) / 9),
): Stroke[] => {
  const [half, step] = [width / 2 + 2.5, (bottom - top) / turns]
  return Array.from({ length: turns }, (_, index) => {
    const y = bottom - index * step
    return one(
      'tie',
      shape(
        [x - half, y],
        [x + half, y - step * 0.45],
        [x + half, y - step * 1.2],
        [x - half, y - step * 0.8],
      ),
    )
  })
}

/** Specks of the medium inside a box, the same each time. */
export function grains(x0: number, x1: number, y0: number, y1: number, apart = 11): Stroke {
  let d = ''
  for (let row = 0; y0 + 5 + row * apart * 0.7 < y1 - 2; row++)
    for (let column = 0; x0 + 4 + column * apart < x1 - 3; column++) {
      const x = x0 + 4 + column * apart + ((row * 5 + column * 3) % 7) * 0.8
      const y = y0 + 5 + row * apart * 0.7 + ((row * 3 + column * 5) % 5) * 0.8
      if (x < x1 - 2) d += lines([x, y], [x + 0.1, y])
    }
  return one('grain', d)
}

/** The ground or bed in section, with its level. */
export const ground = (level: number, bottom = 196, x0 = 4, x1 = 196): Stroke[] => [
  one('medium', shape([x0, level], [x1, level], [x1, bottom], [x0, bottom])),
  grains(x0, x1, level, bottom),
  one('edge', lines([x0, level], [x1, level])),
]

/** A pot in section, filled to a little under its rim. */
export function pot(x: number, top: number, width: number, bottom = 192, foot = width * 0.72): Stroke[] {
  const level = top + 8
  const at = (y: number) => width / 2 + ((foot - width) / 2) * ((y - top) / (bottom - top))
  const inside = Math.min(at(level), at(bottom))
  return [
    one(
      'medium',
      shape([x - at(level), level], [x + at(level), level], [x + foot / 2, bottom], [x - foot / 2, bottom]),
    ),
    grains(x - inside, x + inside, level, bottom),
    one(
      'edge',
      lines([x - width / 2, top], [x - foot / 2, bottom], [x + foot / 2, bottom], [x + width / 2, top]),
    ),
    one('fine', lines([x - at(level), level], [x + at(level), level])),
  ]
}

const head = (from: Point, to: Point, size: number): string => {
  const degrees = (Math.atan2(from[1] - to[1], to[0] - from[0]) * 180) / Math.PI
  return shape(to, away(to, degrees + 155, size), away(to, degrees - 155, size))
}

/** The way of the blade. */
export const knife = (...way: readonly Point[]): Stroke[] => [
  one('knife', flowing(way)),
  one('knife-head', head(way.at(-2)!, way.at(-1)!, 11)),
]

/** The way in which a part is moved. */
export const move = (...way: readonly Point[]): Stroke[] => [
  one('move', flowing(way)),
  one('move-head', head(way.at(-2)!, way.at(-1)!, 10)),
]

/** What would be wrong. */
export const wrong = ([x, y]: Point, size = 12): Stroke => ({
  role: 'wrong',
  d: `${lines([x - size, y - size], [x + size, y + size])}${lines([x - size, y + size], [x + size, y - size])}`,
})

/** An upright measure with a tick at both ends. */
export const measure = (x: number, from: number, to: number): Stroke => ({
  role: 'measure',
  d: `${lines([x - 4, from], [x + 4, from])}${lines([x, from], [x, to])}${lines([x - 4, to], [x + 4, to])}`,
})

/** Warmth that rises from below. */
export const warmth = (y: number, ...places: readonly number[]): Stroke[] =>
  places.map(x =>
    one(
      'heat',
      flowing([
        [x, y],
        [x + 3.5, y - 5],
        [x - 2, y - 11],
        [x + 1.5, y - 17],
      ]),
    ),
  )

/** A thermometer whose bulb lies at the place to be measured. */
export const thermometer = ([x, y]: Point, length = 46): Stroke[] => [
  one(
    'tool',
    blob([
      [x - 4, y - length],
      [x, y - length - 4],
      [x + 4, y - length],
      [x + 4, y - 8],
      [x + 6, y],
      [x, y + 6],
      [x - 6, y],
      [x - 4, y - 8],
    ]),
  ),
  one('heat', lines([x, y], [x, y - length * 0.6])),
]

/** A label on its string. */
export const label = ([x, y]: Point, side: -1 | 1 = 1): Stroke[] => [
  one(
    'fine',
    flowing([
      [x, y],
      [x + side * 8, y + 7],
      [x + side * 13, y + 16],
    ]),
  ),
  one(
    'tool',
    shape(
      [x + side * 13, y + 12],
      [x + side * 18, y + 17],
      [x + side * 18, y + 40],
      [x + side * 8, y + 40],
      [x + side * 8, y + 17],
    ),
  ),
  one(
    'fine',
    `${lines([x + side * 11, y + 24], [x + side * 15.5, y + 24])}${lines([x + side * 11, y + 29], [x + side * 15.5, y + 29])}`,
  ),
]

/** A scion or cutting without leaves: its buds change sides from node to node. */
export const stick = (
  x: number,
  base: number,
  tip: number,
  width: number,
  buds: readonly number[],
  budSize = 8,
): Stroke[] => [
  ...stem(x, base, tip, width, { cutTip: true }),
  ...buds.map((y, index) =>
    bud([x + (index % 2 === 0 ? 1 : -1) * (width / 2), y], index % 2 === 0 ? 1 : -1, budSize),
  ),
]

/** Wax on the cut tip of a stick. */
export const waxCap = (x: number, y: number, width: number): Stroke => ({
  role: 'wax',
  d: blob([
    [x - width / 2 - 2, y + 7],
    [x - width / 2 - 1, y - 2],
    [x, y - 5],
    [x + width / 2 + 1, y - 2],
    [x + width / 2 + 2, y + 7],
    [x, y + 4],
  ]),
})

/** Shade cloth above. */
export const shadeCloth = (y = 14, x0 = 14, x1 = 186): Stroke[] => [
  one('edge', lines([x0, y], [x1, y])),
  ...Array.from({ length: Math.floor((x1 - x0) / 12) }, (_, index) =>
    one('fine', lines([x0 + 4 + index * 12, y + 8], [x0 + 12 + index * 12, y])),
  ),
  one('fine', lines([x0, y + 8], [x1, y + 8])),
]
