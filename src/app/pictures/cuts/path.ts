/** Paths of the drawings: absolute, of points, lines and cubic curves alone, so that a test can read every number. */
export type Point = readonly [x: number, y: number]

const number = (value: number): string => String(Math.round(value * 10) / 10)
const at = ([x, y]: Point): string => `${number(x)} ${number(y)}`

export const lines = (...points: readonly Point[]): string =>
  points.map((point, index) => `${index === 0 ? 'M' : 'L'}${at(point)}`).join('')

export const shape = (...points: readonly Point[]): string => `${lines(...points)}Z`

/** A curve through all points: cubic pieces whose tangents follow the neighbours (Catmull-Rom, tension 1/6). */
export function flowing(points: readonly Point[]): string {
  const of = (index: number): Point => points[Math.max(0, Math.min(points.length - 1, index))]!
  const pieces = points.slice(1).map((end, index) => {
    const [before, start, after] = [of(index - 1), of(index), of(index + 2)]
    const first: Point = [start[0] + (end[0] - before[0]) / 6, start[1] + (end[1] - before[1]) / 6]
    const second: Point = [end[0] - (after[0] - start[0]) / 6, end[1] - (after[1] - start[1]) / 6]
    return `C${at(first)} ${at(second)} ${at(end)}`
  })
  return `M${at(points[0]!)}${pieces.join('')}`
}

/** The same, closed. */
export function blob(points: readonly Point[]): string {
  const of = (index: number): Point => points[(index + points.length) % points.length]!
  const pieces = points.map((start, index) => {
    const [before, end, after] = [of(index - 1), of(index + 1), of(index + 2)]
    const first: Point = [start[0] + (end[0] - before[0]) / 6, start[1] + (end[1] - before[1]) / 6]
    const second: Point = [end[0] - (after[0] - start[0]) / 6, end[1] - (after[1] - start[1]) / 6]
    return `C${at(first)} ${at(second)} ${at(end)}`
  })
  return `M${at(points[0]!)}${pieces.join('')}Z`
}

/** Control points of a quarter circle of radius 1 (4/3 · (√2 − 1)). */
const QUARTER = 0.5523

export const oval = (x: number, y: number, rx: number, ry: number): string => {
  const [kx, ky] = [rx * QUARTER, ry * QUARTER]
  return [
    `M${at([x - rx, y])}`,
    `C${at([x - rx, y - ky])} ${at([x - kx, y - ry])} ${at([x, y - ry])}`,
    `C${at([x + kx, y - ry])} ${at([x + rx, y - ky])} ${at([x + rx, y])}`,
    `C${at([x + rx, y + ky])} ${at([x + kx, y + ry])} ${at([x, y + ry])}`,
    `C${at([x - kx, y + ry])} ${at([x - rx, y + ky])} ${at([x - rx, y])}Z`,
  ].join('')
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180

/** A point so far away in a direction: 0 is right, 90 is up. */
export const away = ([x, y]: Point, degrees: number, distance: number): Point => [
  x + Math.cos(radians(degrees)) * distance,
  y - Math.sin(radians(degrees)) * distance,
]

export const shifted = (points: readonly Point[], dx: number, dy: number): Point[] =>
  points.map(([x, y]) => [x + dx, y + dy])

/** A line beside another, so far to its left as one walks along it. */
export function beside(points: readonly Point[], distanceAt: (index: number) => number): Point[] {
  return points.map((point, index) => {
    const before = points[Math.max(0, index - 1)]!
    const after = points[Math.min(points.length - 1, index + 1)]!
    const [dx, dy] = [after[0] - before[0], after[1] - before[1]]
    const length = Math.hypot(dx, dy)
    return [point[0] + (dy / length) * distanceAt(index), point[1] - (dx / length) * distanceAt(index)]
  })
}
