import {
  bud,
  ground,
  knife,
  label,
  leaf,
  limb,
  measure,
  move,
  pot,
  roots,
  stem,
  stick,
  stroke,
  thermometer,
  tie,
  warmth,
  waxCap,
} from '../parts.ts'
import { blob, flowing, lines, oval, type Point, shape } from '../path.ts'
import { section } from '../section.ts'
import type { Cut, Stroke } from '../stroke.ts'
import { wedgeFitted } from './clefts.ts'
import { seedAt } from './seed.ts'

/** Whip and tongue on a stem of this width; the slant is more than twice as long as the stem is wide. */
export const WHIP = { width: 48, slant: 100 } as const
const half = WHIP.width / 2
const sides = (x = 100, width: number = WHIP.width, bark = 6) => ({
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

/** The keyhole of an omega cutter, from the left side of the stem to the right. */
const omega = (y: number): Point[] => {
  const ring = Array.from({ length: 13 }, (_, index): Point => {
    const radians = ((125 + (290 * index) / 12) * Math.PI) / 180
    return [100 + Math.cos(radians) * 12, y + 22 - Math.sin(radians) * 12]
  })
  return [[100 - half, y], [93, y + 2], ...ring, [107, y + 2], [100 + half, y]]
}

const budOn = (y: number): Stroke => bud([100 + half, y], 1, 9)

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

const nurse = (x: number, level: number): Stroke[] => [
  ...roots([x, level + 34], { count: 4, length: 26, spread: 110 }),
  stroke('edge', lines([x, level + 28], [x, level + 50])),
  ...seedAt([x, level + 20], 20, 15),
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
  omegaCut: {
    strokes: [
      ...section([[100 + half, 8], ...[...omega(62)].reverse(), [100 - half, 8]], sides()),
      ...section([[100 - half, 196], ...omega(104), [100 + half, 196]], sides()),
      bud([100 + half, 34], 1, 11),
      stroke('gone', oval(74, 168, 8, 11)),
      wrongMark(60, 168),
      ...move([156, 56], [156, 100]),
    ],
    polarity: { base: [100, 196], tip: [100, 8] },
  },
  omegaShut: {
    strokes: [
      ...section([[100 - half, 196], ...omega(84), [100 + half, 196]], sides()),
      ...section([[100 + half, 8], ...[...omega(84)].reverse(), [100 - half, 8]], sides()),
      bud([100 + half, 44], 1, 11),
    ],
    polarity: { base: [100, 196], tip: [100, 8] },
    meets: [
      [100 - half + 6, 84],
      [100 + half - 6, 84],
    ],
  },
  waxDipped: {
    strokes: [
      stroke('wax', shape([44, 108], [156, 108], [150, 172], [50, 172])),
      stroke('edge', lines([38, 90], [48, 176], [152, 176], [162, 90])),
      // Upside down: the scion goes into the wax, the base stays out.
      ...stem(100, 4, 130, 12),
      ...stem(100, 124, 160, 12, { cutTip: true }),
      stroke(
        'bud',
        flowing([
          [106, 140],
          [113, 147],
          [111, 156],
          [106, 152],
        ]),
      ),
      stroke(
        'fine',
        flowing([
          [94, 126],
          [100, 132],
          [106, 126],
        ]),
      ),
      ...warmth(198, 70, 100, 130),
      ...move([148, 60], [160, 40], [150, 14]),
      ...thermometer([136, 140], 52),
    ],
  },
  callusBox: {
    strokes: [
      ...ground(98, 168, 26, 174),
      ...[48, 68, 88, 112, 132, 152].flatMap(x => [
        ...stem(x, 160, 80, 8, { cutBase: true }),
        ...stick(x, 82, 52, 8, [64], 5),
        stroke('wax', oval(x, 78, 6, 8)),
        waxCap(x, 52, 8),
      ]),
      stroke('film', shape([22, 100], [26, 34], [174, 34], [178, 100])),
      stroke('edge', lines([24, 86], [24, 170], [176, 170], [176, 86])),
      ...thermometer([100, 88], 40),
      ...warmth(194, 48, 82, 116, 150),
    ],
    polarity: { base: [48, 160], tip: [48, 52] },
  },
  onCuttingRooted: {
    strokes: [
      ...pot(100, 112, 84, 194, 64),
      ...stem(100, 160, 76, 12, { cutBase: true }),
      ...stick(100, 78, 48, 12, []),
      stroke('callus', oval(94, 78, 4, 6)),
      stroke('callus', oval(106, 78, 4, 6)),
      ...limb(
        [
          [106, 60],
          [116, 40],
          [118, 22],
        ],
        5,
      ),
      ...leaf([117, 36], 20, 36),
      ...leaf([116, 44], 160, 34),
      ...leaf([118, 24], 80, 18),
      stroke(
        'callus',
        blob([
          [94, 156],
          [106, 156],
          [108, 164],
          [100, 167],
          [92, 164],
        ]),
      ),
      ...roots([100, 162], { count: 5, length: 30, spread: 140 }),
    ],
    polarity: { base: [100, 164], tip: [118, 22] },
  },
  nurseGrafted: {
    strokes: [
      ...pot(100, 108, 90, 196, 68),
      ...nurse(100, 116),
      ...wedgeFitted(100, 26, 66, 92, 126, 14, [40]),
      ...tie(100, 64, 96, 14, 4),
      waxCap(100, 26, 14),
      ...label([107, 62]),
    ],
    polarity: { base: [100, 160], tip: [100, 26] },
  },
  etiolated: {
    strokes: [
      stroke('dark', shape([24, 8], [176, 8], [176, 196], [24, 196])),
      ...pot(100, 142, 78, 192, 60),
      ...seedAt([100, 164], 14, 10),
      ...stem(100, 156, 126, 8),
      ...tie(100, 120, 136, 8, 2),
      stroke('wood', shape([97, 122], [98, 24], [102, 24], [103, 122])),
      ...(
        [
          [92, 1],
          [66, -1],
          [42, 1],
        ] as const
      ).map(([y, side]) =>
        stroke(
          'wood',
          blob([
            [100 + side * 2, y],
            [100 + side * 9, y - 4],
            [100 + side * 12, y - 10],
            [100 + side * 5, y - 8],
          ]),
        ),
      ),
      stroke(
        'wood',
        blob([
          [100, 28],
          [96, 20],
          [100, 12],
          [104, 20],
        ]),
      ),
      measure(142, 122, 18),
    ],
    polarity: { base: [100, 156], tip: [100, 12] },
  },
  etiolatedRinged: {
    strokes: [
      stroke('medium', shape([66, 70], [134, 70], [134, 150], [66, 150])),
      stroke('edge', lines([66, 62], [66, 150])),
      stroke('edge', lines([134, 62], [134, 150])),
      ...pot(100, 146, 90, 196, 70),
      ...seedAt([100, 174], 18, 12),
      ...stem(100, 164, 138, 10),
      stroke('wood', shape([96, 140], [97, 54], [103, 54], [104, 140])),
      stroke('tool', shape([92, 126], [108, 126], [108, 131], [92, 131])),
      ...[78, 88, 98, 108].map(y => stroke('cambium', lines([97, y + 4], [100, y]))),
      ...leaf([100, 60], 145, 40),
      ...leaf([100, 60], 35, 40),
      ...leaf([100, 54], 90, 40),
      ...knife([40, 118], [66, 92], [92, 84]),
    ],
    polarity: { base: [100, 164], tip: [100, 14] },
  },
  clonalRooted: {
    strokes: [
      stroke('medium', shape([66, 64], [134, 64], [134, 142], [66, 142])),
      stroke('edge', lines([66, 58], [66, 142], [134, 142], [134, 58])),
      ...stem(100, 130, 44, 9, { cutBase: true }),
      ...roots([100, 108], { count: 4, length: 36, spread: 150 }),
      ...roots([100, 92], { count: 4, length: 34, spread: 170 }),
      ...leaf([100, 52], 150, 42),
      ...leaf([100, 50], 30, 42),
      ...leaf([100, 44], 90, 34),
      stroke('gone', oval(100, 176, 18, 13)),
      stroke('gone', `${lines([96, 146], [96, 164])}${lines([104, 146], [104, 164])}`),
      ...knife([58, 154], [142, 148]),
    ],
    polarity: { base: [100, 130], tip: [100, 10] },
  },
  doubleScion: {
    strokes: [
      ...pot(100, 140, 92, 196, 70),
      ...roots([100, 160], { count: 6, length: 34, spread: 150 }),
      ...leaf([92, 126], 165, 42),
      ...wedgeFitted(100, 22, 70, 104, 162, 16, [36, 54]),
      ...tie(100, 66, 110, 16, 5),
      waxCap(100, 22, 16),
      ...label([108, 100]),
    ],
    polarity: { base: [100, 162], tip: [100, 22] },
  },
  twoPlants: {
    strokes: [
      ...ground(176),
      ...stem(150, 178, 10, 22),
      ...leaf([139, 32], 150, 40),
      ...leaf([161, 46], 30, 34),
      ...limb(
        [
          [148, 92],
          [112, 62],
          [84, 14],
        ],
        14,
        { tipWidth: 10 },
      ),
      ...leaf([86, 20], 150, 36),
      ...pot(58, 128, 64, 176, 48),
      ...stem(58, 138, 40, 12, { tipWidth: 9 }),
      ...leaf([52, 70], 160, 36),
      ...leaf([58, 40], 90, 28),
      ...move([64, 100], [84, 86], [100, 66]),
    ],
  },
  twoFaces: {
    strokes: [
      ...stem(62, 196, 4, 44),
      ...stem(138, 196, 4, 44),
      ...faceOn(66),
      ...faceOn(134),
      ...move([64, 176], [97, 176]),
      ...move([136, 176], [103, 176]),
      measure(24, 46, 150),
      measure(176, 46, 150),
    ],
    polarity: { base: [62, 196], tip: [62, 4] },
  },
  twoJoined: {
    strokes: [
      ...section(
        [
          [60, 196],
          [60, 4],
          [100, 4],
          [100, 196],
        ],
        { left: { outside: 60, bark: 6 }, right: { outside: 100, bark: 6 } },
      ),
      ...section(
        [
          [100, 196],
          [100, 4],
          [140, 4],
          [140, 196],
        ],
        { left: { outside: 100, bark: 6 }, right: { outside: 140, bark: 6 } },
      ),
      stroke('heartwood', shape([91, 54], [100, 46], [109, 54], [109, 146], [100, 154], [91, 146])),
      stroke('fine', lines([100, 58], [100, 142])),
      ...[48, 152].flatMap((y, index) => {
        const inward = index === 0 ? 10 : -10
        return [
          stroke('cambium', lines([94, y - inward * 0.4], [99.5, y + inward])),
          stroke('cambium', lines([106, y - inward * 0.4], [100.5, y + inward])),
        ]
      }),
      ...tie(100, 60, 86, 80, 3),
      ...tie(100, 114, 140, 80, 3),
    ],
    polarity: { base: [80, 196], tip: [80, 4] },
    meets: [
      [99.5, 58],
      [99.5, 142],
    ],
  },
  twoSevered: {
    strokes: [
      ...pot(64, 150, 76, 196, 58),
      ...limb(
        [
          [64, 160],
          [74, 120],
          [84, 84],
          [78, 28],
        ],
        16,
      ),
      ...limb(
        [
          [178, 196],
          [140, 140],
          [102, 86],
          [108, 28],
        ],
        16,
      ),
      ...tie(93, 70, 104, 34, 4),
      ...leaf([110, 40], 30, 42),
      ...leaf([106, 30], 120, 26),
      ...leaf([74, 36], 150, 36),
      ...knife([52, 62], [104, 50]),
      ...knife([116, 138], [160, 122]),
    ],
    polarity: { base: [64, 160], tip: [108, 28] },
  },
} satisfies Record<string, Cut>

function wrongMark(x: number, y: number): Stroke {
  return stroke(
    'knife',
    flowing([
      [x, y - 14],
      [x + 10, y],
      [x + 6, y + 16],
    ]),
  )
}

function faceOn(x: number): Stroke[] {
  return [
    stroke('wood', oval(x, 98, 14, 52)),
    stroke('cambium', oval(x, 98, 11, 47)),
    stroke('fine', lines([x, 76], [x, 122])),
  ]
}
