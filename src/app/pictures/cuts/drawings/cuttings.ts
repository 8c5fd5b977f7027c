import {
  bud,
  goneLeaf,
  grains,
  ground,
  knife,
  label,
  leaf,
  limb,
  measure,
  move,
  pot,
  roots,
  shadeCloth,
  stem,
  stroke,
  thermometer,
  warmth,
} from '../parts.ts'
import { blob, flowing, lines, oval, type Point, shape } from '../path.ts'
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

/** A leafless cutting with its sloping top above a bud and its square base below one. */
export const rod = (
  x: number,
  base: number,
  tip: number,
  width: number,
  buds: readonly number[],
): Stroke[] => [
  stroke(
    'bark',
    shape([x - width / 2, base], [x - width / 2, tip + 8], [x + width / 2, tip], [x + width / 2, base]),
  ),
  stroke(
    'edge',
    shape([x - width / 2, base], [x - width / 2, tip + 8], [x + width / 2, tip], [x + width / 2, base]),
  ),
  ...buds.map((y, index) =>
    bud([x + (index % 2 === 0 ? 1 : -1) * (width / 2), y], index % 2 === 0 ? 1 : -1, 7),
  ),
]

const bracket = (x: number, y: number): Stroke[] => [...leaf([x, y], 60, 34), ...leaf([x, y], 115, 30)]

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

const propBed = (level: number): Stroke[] => [
  ...ground(level, 166, 16, 184),
  stroke('edge', lines([14, level - 12], [14, 168], [186, 168], [186, level - 12])),
  ...[34, 67, 100, 133, 166].map(x => stroke('tool', oval(x, 158, 3.5, 3.5))),
]

export const cuttingCuts = {
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
  hardCut: {
    strokes: [
      stroke('gone', shape([95, 40], [96, 8], [104, 8], [105, 36])),
      ...rod(100, 106, 46, 18, [56, 76, 98]),
      ...rod(100, 184, 126, 18, [136, 158, 176]),
      ...knife([62, 52], [136, 38]),
      ...knife([62, 112], [138, 112]),
      ...knife([62, 130], [136, 118]),
      ...move([164, 176], [164, 120], [164, 52]),
    ],
    polarity: { base: [100, 106], tip: [100, 46] },
  },
  hardBundled: {
    strokes: [
      ...ground(124, 166, 30, 170),
      ...[58, 72, 86, 114, 128, 142].flatMap(x => rod(x, 156, 42 + ((x * 7) % 11), 9, [60, 92])),
      stroke('tie', shape([50, 84], [94, 84], [94, 92], [50, 92])),
      stroke('tie', shape([106, 84], [150, 84], [150, 92], [106, 92])),
      stroke('edge', lines([28, 66], [28, 168], [172, 168], [172, 66])),
      ...thermometer([100, 150], 42),
      ...warmth(192, 48, 76, 124, 152),
      ...label([150, 88]),
    ],
    polarity: { base: [58, 156], tip: [58, 42] },
  },
  hardStuck: {
    strokes: [
      ...ground(82),
      ...rod(100, 176, 40, 16, [50, 70, 104, 132, 160]),
      ...move([48, 50], [64, 76]),
      ...move([152, 50], [136, 76]),
      measure(168, 82, 176),
      measure(168, 42, 80),
    ],
    polarity: { base: [100, 176], tip: [100, 40] },
  },
  hardRooted: {
    strokes: [
      ...ground(92),
      ...rod(100, 162, 54, 14, [116, 140]),
      ...bracket(107, 64),
      ...leaf([93, 82], 140, 36),
      ...leaf([93, 82], 178, 34),
      ...leaf([107, 62], 88, 42),
      stroke(
        'callus',
        blob([
          [92, 158],
          [108, 158],
          [110, 167],
          [100, 170],
          [90, 167],
        ]),
      ),
      ...roots([100, 166], { count: 5, length: 34, spread: 140 }),
      ...roots([107, 142], { count: 1, length: 34, turn: 50 }),
      ...roots([93, 120], { count: 1, length: 34, turn: -50 }),
    ],
    polarity: { base: [100, 166], tip: [100, 54] },
  },
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
