import {
  bud,
  ground,
  knife,
  label,
  leaf,
  limb,
  measure,
  move,
  roots,
  stem,
  stick,
  stroke,
  thermometer,
  tie,
  warmth,
  waxCap,
} from '../parts.ts'
import { flowing, lines, oval, type Point, shape } from '../path.ts'
import { section } from '../section.ts'
import type { Cut, Stroke } from '../stroke.ts'

/** Whip and tongue on a stem of this width; the slant is more than twice as long as the stem is wide. */
export const WHIP = { width: 48, slant: 100 } as const

export const half = WHIP.width / 2

export const sides = (x = 100, width: number = WHIP.width, bark = 6) => ({
  left: { outside: x - width / 2, bark },
  right: { outside: x + width / 2, bark },
})

const slantLine = (top: number): Point[] => [
  [100 - half, top],
  [100 + half, top + WHIP.slant],
]

/** Down the slant to the scion's tongue, back to the stock's, and down the slant again. */
const tongueLine = (top: number): Point[] => [
  [100 - half, top],
  [100 + half * 0.16, top + WHIP.slant * 0.7],
  [100 - half * 0.16, top + WHIP.slant * 0.3],
  [100 + half, top + WHIP.slant],
]

const scionOver = (joint: readonly Point[], from: number): Stroke[] =>
  section([[100 + half, from], ...[...joint].reverse(), [100 - half, from]], sides())

const stockUnder = (joint: readonly Point[], to: number): Stroke[] =>
  section([[100 - half, to], ...joint, [100 + half, to]], sides())

export const budOn = (y: number): Stroke => bud([100 + half, y], 1, 9)

const lying = (y: number): Stroke[] => [
  ...[-16, -8, 0, 9, 16].map(dy =>
    stroke(
      'root',
      flowing([
        [36, y],
        [24, y + dy * 0.5],
        [12, y + dy],
      ]),
    ),
  ),
  ...limb(
    [
      [34, y],
      [66, y],
      [102, y],
    ],
    11,
  ),
  ...limb(
    [
      [98, y],
      [140, y],
      [180, y],
    ],
    10,
    { cutTip: true },
  ),
  ...[140, 164].map((x, index) => {
    const side = index === 0 ? -1 : 1
    return stroke(
      'bud',
      flowing([
        [x, y + side * 5],
        [x + 6, y + side * 11],
        [x + 13, y + side * 8],
        [x + 9, y + side * 5],
      ]),
    )
  }),
  stroke('tie', shape([82, y - 8], [118, y - 8], [118, y + 8], [82, y + 8])),
  stroke(
    'fine',
    `${lines([90, y + 8], [94, y - 8])}${lines([100, y + 8], [104, y - 8])}${lines([109, y + 8], [113, y - 8])}`,
  ),
]

export const whipCuts = {
  whipSlant: {
    strokes: [
      ...scionOver(slantLine(34), 4),
      ...stockUnder(slantLine(66), 196),
      budOn(24),
      ...knife([66, 30], [100, 100], [134, 170]),
      measure(164, 66, 66 + WHIP.slant),
      stroke(
        'measure',
        `${lines([76, 184], [76, 192])}${lines([76, 188], [124, 188])}${lines([124, 184], [124, 192])}`,
      ),
    ],
    polarity: { base: [100, 196], tip: [100, 4] },
  },
  whipTongue: {
    strokes: [
      ...scionOver(tongueLine(28), 4),
      ...stockUnder(tongueLine(72), 196),
      ...move([154, 40], [154, 96]),
      ...move([46, 170], [46, 116]),
    ],
    polarity: { base: [100, 196], tip: [100, 4] },
  },
  whipShut: {
    strokes: [...scionOver(tongueLine(50), 4), ...stockUnder(tongueLine(50), 196), budOn(28)],
    polarity: { base: [100, 196], tip: [100, 4] },
    meets: [
      [100 - half + 6, 65],
      [100 + half - 6, 135],
    ],
  },
  whipOneSide: {
    strokes: [
      ...section(
        [
          [60, 196],
          [60, 60],
          [140, 160],
          [140, 196],
        ],
        { left: { outside: 60, bark: 9 }, right: { outside: 140, bark: 9 } },
      ),
      ...section(
        [
          [60, 4],
          [60, 60],
          [112, 125],
          [112, 4],
        ],
        { left: { outside: 60, bark: 9 }, right: { outside: 112, bark: 9 } },
      ),
      bud([60, 30], -1, 9),
      ...move([24, 92], [52, 92]),
    ],
    polarity: { base: [100, 196], tip: [86, 4] },
    meets: [[69, 71]],
  },
  whipTied: {
    strokes: [
      ...stem(100, 196, 110, 24),
      ...stick(100, 112, 14, 24, [34, 62, 88]),
      ...tie(100, 96, 168, 24),
      waxCap(100, 14, 24),
      ...label([112, 154]),
      ...move([148, 166], [154, 130], [148, 96]),
    ],
    polarity: { base: [100, 196], tip: [100, 14] },
  },
  hotPipe: {
    strokes: [
      stroke('medium', shape([6, 58], [60, 58], [60, 150], [6, 150])),
      stroke('edge', lines([6, 58], [60, 58], [60, 150], [6, 150])),
      stroke('tool', shape([76, 56], [124, 56], [124, 150], [76, 150])),
      ...[78, 104, 130].flatMap(y => lying(y)),
      ...thermometer([112, 60], 40),
      ...warmth(178, 88, 100, 112),
    ],
  },
  hotCallus: {
    strokes: [
      ...scionOver(tongueLine(50), 4),
      ...stockUnder(tongueLine(50), 196),
      ...[46, 60].map(y => stroke('callus', oval(75, y, 6, 8))),
      ...[148, 162].map(y => stroke('callus', oval(125, y - 6, 6, 8))),
      ...tongueLine(50)
        .slice(1, 3)
        .map(([x, y]) => stroke('callus', oval(x, y, 4, 5))),
      budOn(24),
    ],
    polarity: { base: [100, 196], tip: [100, 4] },
  },
  hotPlanted: {
    strokes: [
      ...ground(140),
      ...roots([100, 172], { count: 5, length: 24, spread: 130 }),
      ...stem(100, 174, 92, 14, { cutBase: true }),
      ...stick(100, 94, 34, 13, []),
      ...tie(100, 86, 122, 14),
      ...leaf([106, 50], 50, 30),
      ...leaf([94, 68], 135, 28),
      ...leaf([100, 34], 90, 24),
      waxCap(100, 36, 13),
      measure(150, 140, 122),
    ],
    polarity: { base: [100, 174], tip: [100, 34] },
  },
} satisfies Record<string, Cut>
