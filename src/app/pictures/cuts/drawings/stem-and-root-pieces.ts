import {
  grains,
  ground,
  knife,
  leaf,
  limb,
  measure,
  move,
  pot,
  roots,
  shadeCloth,
  stem,
  stroke,
} from '../parts.ts'
import { flowing, lines, oval, type Point, shape } from '../path.ts'
import type { Cut, Stroke } from '../stroke.ts'

/** A ribbed succulent stem with spines on its edge; at its joint it is narrow. */
const ribbed = (x: number, base: number, tip: number, width: number): Stroke[] => {
  const steps = Math.round((base - tip) / 24)
  const side = (sign: number): Point[] =>
    Array.from({ length: steps * 2 + 1 }, (_, index) => [
      x + sign * (width / 2 - (index % 2 === 0 ? 6 : 0) - (index === 0 || index === steps * 2 ? 5 : 0)),
      base - ((base - tip) * index) / (steps * 2),
    ])
  const spines = [-1, 1].flatMap(sign =>
    Array.from({ length: steps }, (_, index): Stroke => {
      const y = base - ((base - tip) * (2 * index + 1.6)) / (steps * 2)
      const foot = x + sign * (width / 2 - 3)
      return stroke(
        'fine',
        `${lines([foot, y], [foot + sign * 6, y - 4])}${lines([foot, y], [foot + sign * 6, y + 1])}`,
      )
    }),
  )
  const outline = blobOpen(side(-1), side(1))
  return [
    stroke('leaf', outline),
    stroke(
      'fine',
      flowing([
        [x - 3, base],
        [x + 2, (base + tip) / 2],
        [x - 2, tip + 4],
      ]),
    ),
    ...spines,
  ]
}

const blobOpen = (left: readonly Point[], right: readonly Point[]): string =>
  `${flowing(left)}${flowing([...right].reverse()).replace('M', 'L')}Z`

export const pieceCuts = {
  cladodeCut: {
    strokes: [
      ...ribbed(92, 194, 108, 40),
      ...ribbed(92, 104, 10, 40),
      ...knife([48, 106], [138, 106]),
      ...move([164, 150], [164, 90], [164, 40]),
    ],
    polarity: { base: [92, 104], tip: [92, 10] },
  },
  cladodeDried: {
    strokes: [
      ...shadeCloth(12),
      stroke('wood', shape([95, 150], [94, 176], [106, 176], [105, 150])),
      stroke('wood', shape([84, 148], [94, 164], [106, 164], [116, 148])),
      ...ribbed(100, 150, 38, 40),
      ...[26, 60, 94, 128, 162].map(x =>
        stroke('tool', shape([x, 180], [x + 24, 180], [x + 24, 187], [x, 187])),
      ),
      measure(142, 150, 177),
      ...move([30, 120], [48, 112], [66, 120]),
      ...move([30, 92], [48, 84], [66, 92]),
    ],
    polarity: { base: [100, 176], tip: [100, 38] },
  },
  cladodeStuck: {
    strokes: [
      ...pot(100, 122, 104, 194, 80),
      stroke('tool', shape([124, 14], [130, 14], [130, 176], [124, 176])),
      stroke('wood', shape([88, 142], [96, 156], [104, 156], [112, 142])),
      ...ribbed(100, 144, 22, 40),
      stroke('tie', shape([80, 60], [131, 56], [131, 62], [80, 66])),
      stroke('tie', shape([80, 100], [131, 96], [131, 102], [80, 106])),
      measure(40, 130, 156),
    ],
    polarity: { base: [100, 156], tip: [100, 22] },
  },
  cladodeRooted: {
    strokes: [
      ...pot(100, 122, 104, 194, 80),
      stroke('tool', shape([124, 14], [130, 14], [130, 176], [124, 176])),
      ...roots([100, 150], { count: 7, length: 38, spread: 150 }),
      ...ribbed(100, 150, 46, 38),
      ...ribbed(84, 50, 10, 18),
      stroke('tie', shape([82, 84], [131, 80], [131, 86], [82, 90])),
    ],
    polarity: { base: [100, 152], tip: [84, 10] },
  },
  rootDug: {
    strokes: [
      ...ground(56),
      ...stem(64, 62, 6, 16),
      ...limb(
        [
          [66, 60],
          [84, 92],
          [124, 112],
          [178, 120],
        ],
        15,
        { tipWidth: 9 },
      ),
      ...limb(
        [
          [62, 60],
          [50, 110],
          [56, 180],
        ],
        13,
        { tipWidth: 7 },
      ),
      ...roots([140, 116], { count: 2, length: 26, spread: 50 }),
      ...roots([54, 140], { count: 2, length: 22, spread: 80 }),
      ...knife([84, 116], [104, 82]),
      ...knife([140, 98], [166, 142]),
    ],
  },
  rootPieces: {
    strokes: [
      ...[46, 100, 154].flatMap((x, index) => {
        const base = 164 - index * 4
        return [
          stroke('bark', shape([x - 8, 48], [x + 8, 48], [x + 7, base - 16], [x - 7, base])),
          stroke('edge', shape([x - 8, 48], [x + 8, 48], [x + 7, base - 16], [x - 7, base])),
          stroke('wood', oval(x, 48, 8, 3)),
          stroke(
            'root',
            flowing([
              [x + 7, 92],
              [x + 15, 96],
              [x + 18, 106],
            ]),
          ),
          stroke(
            'root',
            flowing([
              [x - 7, 120],
              [x - 15, 126],
              [x - 16, 134],
            ]),
          ),
        ]
      }),
      ...move([176, 150], [176, 100], [176, 52]),
      measure(22, 48, 164),
    ],
    polarity: { base: [46, 164], tip: [46, 48] },
  },
  rootLaid: {
    strokes: [
      ...pot(54, 70, 84, 190, 66),
      ...[38, 70].flatMap(x => [
        stroke('bark', shape([x - 5, 84], [x + 5, 84], [x + 4, 142], [x - 4, 152])),
        stroke('edge', shape([x - 5, 84], [x + 5, 84], [x + 4, 142], [x - 4, 152])),
      ]),
      stroke('medium', shape([108, 124], [192, 124], [192, 178], [108, 178])),
      grains(108, 192, 124, 178),
      stroke('fine', lines([107, 124], [193, 124])),
      stroke('edge', lines([106, 116], [106, 180], [194, 180], [194, 116])),
      ...limb(
        [
          [118, 150],
          [150, 148],
          [182, 152],
        ],
        6,
        { cutBase: true, cutTip: true },
      ),
      measure(186, 124, 147),
    ],
    polarity: { base: [38, 152], tip: [38, 84] },
  },
  rootShot: {
    strokes: [
      ...pot(100, 84, 110, 194, 84),
      stroke('bark', shape([93, 100], [107, 100], [106, 152], [94, 164])),
      stroke('edge', shape([93, 100], [107, 100], [106, 152], [94, 164])),
      ...limb(
        [
          [98, 100],
          [94, 70],
          [90, 44],
        ],
        6,
        { tipWidth: 4 },
      ),
      ...limb(
        [
          [103, 100],
          [108, 78],
          [114, 60],
        ],
        5,
        { tipWidth: 3 },
      ),
      ...leaf([92, 56], 150, 36),
      ...leaf([91, 48], 100, 36),
      ...leaf([113, 64], 60, 34),
      ...leaf([111, 70], 10, 30),
      ...roots([96, 162], { count: 4, length: 28, spread: 110 }),
      ...roots([107, 130], { count: 1, length: 26, turn: 55 }),
    ],
    polarity: { base: [94, 164], tip: [90, 12] },
  },
} satisfies Record<string, Cut>
