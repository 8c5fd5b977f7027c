import {
  bud,
  goneLeaf,
  ground,
  knife,
  leaf,
  limb,
  measure,
  move,
  pot,
  roots,
  stem,
  stroke,
  thermometer,
  warmth,
} from '../parts.ts'
import { blob, flowing, lines, oval, shape } from '../path.ts'
import type { Cut, Stroke } from '../stroke.ts'

/** A leafy shoot with nodes; below `bare` the leaves are off. */
const leafyShoot = (
  x: number,
  base: number,
  tip: number,
  width: number,
  nodes: readonly number[],
  half = false,
): Stroke[] => [
  ...stem(x, base, tip, width, { tipWidth: width * 0.6, cutBase: true }),
  ...nodes.flatMap((y, index) => {
    const side = index % 2 === 0 ? 1 : -1
    return [
      ...leaf([x + (side * width) / 2, y], side === 1 ? 30 : 150, 52, half),
      bud([x + (side * width) / 2, y - 3], side, 6),
    ]
  }),
]

const tipLeaves = (x: number, y: number): Stroke[] => [
  ...leaf([x, y + 2], 118, 26),
  ...leaf([x, y + 2], 62, 26),
]

/** One cutting as it stands in the bed. */
const stuck = (x: number, base: number, height: number): Stroke[] => [
  ...stem(x, base, base - height, 6, { tipWidth: 4, cutBase: true }),
  ...leaf([x, base - height + 14], 150, 32, true),
  ...leaf([x, base - height + 6], 30, 32, true),
  ...leaf([x, base - height], 90, 18),
]

const propBed = (level: number): Stroke[] => [
  ...ground(level, 166, 16, 184),
  stroke('edge', lines([14, level - 12], [14, 168], [186, 168], [186, level - 12])),
  ...[34, 67, 100, 133, 166].map(x => stroke('tool', oval(x, 158, 3.5, 3.5))),
]

export const leafyCuttingCuts = {
  softTaken: {
    strokes: [
      ...leafyShoot(74, 190, 34, 11, [150, 112, 84, 60]),
      ...tipLeaves(74, 34),
      ...knife([34, 138], [112, 132]),
      ...limb(
        [
          [150, 118],
          [150, 96],
          [152, 78],
        ],
        9,
        { cutBase: true },
      ),
      ...limb(
        [
          [157, 72],
          [170, 62],
          [184, 66],
        ],
        8,
        { tipWidth: 5 },
      ),
      stroke('edge', lines([147, 78], [151, 73], [154, 78], [157, 70], [161, 74])),
      ...leaf([184, 64], 30, 14),
      ...move([136, 52], [160, 40], [186, 46]),
    ],
    polarity: { base: [74, 190], tip: [74, 34] },
  },
  softMade: {
    strokes: [
      ...goneLeaf([94, 158], 165, 52),
      ...goneLeaf([106, 128], 15, 52),
      ...stem(100, 170, 46, 12, { tipWidth: 7, cutBase: true }),
      bud([94, 156], -1, 7),
      bud([106, 126], 1, 7),
      ...leaf([95, 92], 152, 60, true),
      ...leaf([104, 72], 28, 60, true),
      ...tipLeaves(100, 46),
      ...knife([66, 176], [138, 172]),
      measure(180, 170, 30),
    ],
    polarity: { base: [100, 170], tip: [100, 46] },
  },
  dipped: {
    strokes: [
      stroke('water', shape([52, 152], [148, 152], [144, 176], [56, 176])),
      ...stem(100, 166, 34, 12, { tipWidth: 7, cutBase: true }),
      bud([94, 138], -1, 7),
      bud([106, 112], 1, 7),
      ...leaf([95, 82], 152, 56, true),
      ...leaf([104, 62], 28, 56, true),
      ...tipLeaves(100, 36),
      stroke('edge', lines([46, 138], [52, 180], [148, 180], [154, 138])),
      stroke('fine', lines([51, 152], [149, 152])),
      measure(166, 152, 167),
    ],
    polarity: { base: [100, 166], tip: [100, 34] },
  },
  mistBed: {
    strokes: [
      ...propBed(122),
      ...[42, 82, 122].flatMap(x => stuck(x, 144, 66)),
      stroke('edge', lines([14, 16], [186, 16])),
      ...[66, 142].flatMap(x => [
        stroke('tool', shape([x - 5, 16], [x + 5, 16], [x + 3, 26], [x - 3, 26])),
        ...[-26, -13, 0, 13, 26].map(dx => stroke('spray', lines([x + dx * 0.25, 31], [x + dx, 52]))),
      ]),
      ...thermometer([162, 146], 44),
      ...warmth(192, 40, 72, 104, 136),
    ],
    polarity: { base: [82, 144], tip: [82, 78] },
  },
  cuttingRooted: {
    strokes: [
      ...pot(100, 104, 96, 192, 74),
      ...stem(100, 140, 46, 8, { tipWidth: 5, cutBase: true }),
      stroke(
        'callus',
        blob([
          [94, 138],
          [106, 138],
          [108, 145],
          [100, 148],
          [92, 145],
        ]),
      ),
      ...roots([100, 144], { count: 6, length: 44, spread: 120 }),
      ...leaf([97, 82], 155, 44, true),
      ...leaf([103, 68], 25, 44, true),
      ...leaf([99, 50], 130, 34),
      ...leaf([101, 48], 55, 38),
      stroke(
        'film',
        flowing([
          [26, 104],
          [30, 54],
          [62, 18],
          [112, 8],
          [156, 26],
          [178, 64],
        ]),
      ),
      ...move([184, 112], [190, 92], [184, 72]),
    ],
    polarity: { base: [100, 146], tip: [100, 46] },
  },
  semiTaken: {
    strokes: [
      ...stem(100, 194, 30, 14, { tipWidth: 5 }),
      stroke(
        'fine',
        `${lines([96, 188], [97, 168])}${lines([103, 184], [102, 160])}${lines([98, 156], [99, 136])}`,
      ),
      ...[
        [150, 1],
        [122, -1],
        [96, 1],
      ].flatMap(([y, side]) => [
        ...leaf([100 + side! * 6, y!], side === 1 ? 28 : 152, 60),
        bud([100 + side! * 6, y! - 3], side as 1 | -1, 6),
      ]),
      ...goneLeaf([102, 66], 40, 40),
      ...goneLeaf([98, 50], 140, 36),
      ...goneLeaf([100, 32], 90, 24),
      ...knife([62, 172], [140, 166]),
      ...knife([66, 78], [138, 74]),
    ],
    polarity: { base: [100, 194], tip: [100, 30] },
  },
  semiWounded: {
    strokes: [
      ...stem(100, 172, 8, 46, { cutBase: true }),
      stroke(
        'fine',
        `${lines([112, 30], [113, 70])}${lines([88, 18], [88, 44])}${lines([116, 96], [116, 130])}`,
      ),
      bud([77, 142], -1, 12),
      bud([123, 60], 1, 12),
      stroke(
        'wood',
        blob([
          [94, 168],
          [86, 132],
          [90, 104],
          [97, 92],
          [104, 104],
          [108, 132],
          [103, 168],
        ]),
      ),
      stroke(
        'cambium',
        flowing([
          [95, 169],
          [89, 132],
          [93, 107],
          [97, 98],
          [101, 107],
          [105, 132],
          [103, 169],
        ]),
      ),
      ...knife([58, 84], [64, 130], [60, 176]),
      measure(150, 172, 92),
    ],
    polarity: { base: [100, 172], tip: [100, 8] },
  },
} satisfies Record<string, Cut>
