import {
  bud,
  facingBud,
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
  wrong,
} from '../parts.ts'
import { blob, flowing, lines, oval, type Point, shape } from '../path.ts'
import type { Cut, Stroke } from '../stroke.ts'

/** A stone or large seed lying on its side, with its seam. */
export const seedAt = ([x, y]: Point, rx = 14, ry = 10): Stroke[] => [
  stroke('seed', oval(x, y, rx, ry)),
  stroke(
    'fine',
    flowing([
      [x - rx * 0.8, y - 1],
      [x, y - ry * 0.35],
      [x + rx * 0.8, y - 1],
    ]),
  ),
]

/** A seedling with its first leaves. */
const seedling = (x: number, foot: number, tip: number, width = 6): Stroke[] => [
  ...stem(x, foot, tip, width, { tipWidth: width * 0.6 }),
  ...leaf([x, tip + 4], 150, 34),
  ...leaf([x, tip + 4], 30, 34),
  ...leaf([x, tip], 90, 22),
]

export const seedCuts = {
  seedFloat: {
    strokes: [
      stroke('water', shape([44, 74], [156, 74], [150, 176], [50, 176])),
      ...seedAt([74, 162]),
      ...seedAt([104, 165]),
      ...seedAt([130, 161]),
      ...seedAt([96, 146]),
      ...seedAt([120, 72]),
      stroke('edge', lines([40, 34], [49, 180], [151, 180], [160, 34])),
      stroke('fine', lines([43, 74], [157, 74])),
      ...move([122, 54], [136, 26], [176, 22]),
      wrong([184, 48], 8),
    ],
  },
  seedSown: {
    strokes: [
      ...pot(100, 62, 132),
      ...seedAt([92, 122], 24, 16),
      measure(138, 70, 104),
      measure(152, 106, 138),
      stroke('fine', lines([118, 106], [158, 106])),
      stroke('fine', lines([112, 138], [158, 138])),
    ],
  },
  seedUp: {
    strokes: [
      ...ground(84),
      ...limb(
        [
          [102, 118],
          [101, 92],
          [100, 62],
        ],
        9,
        { tipWidth: 6 },
      ),
      ...leaf([100, 66], 155, 40),
      ...leaf([100, 66], 25, 40),
      ...leaf([100, 62], 90, 30),
      stroke(
        'seed',
        blob([
          [70, 112],
          [92, 98],
          [112, 106],
          [108, 124],
          [86, 130],
        ]),
      ),
      stroke(
        'fine',
        flowing([
          [74, 114],
          [92, 112],
          [109, 114],
        ]),
      ),
      stroke(
        'edge',
        flowing([
          [104, 122],
          [108, 142],
          [104, 164],
          [108, 188],
        ]),
      ),
      ...roots([106, 144], { count: 2, length: 26, spread: 120 }),
      ...roots([105, 162], { count: 2, length: 22, spread: 120 }),
    ],
    polarity: { base: [108, 188], tip: [100, 32] },
  },
  seedPricked: {
    strokes: [
      ...pot(52, 84, 62, 192, 48),
      ...pot(148, 84, 62, 192, 48),
      ...seedling(52, 94, 46),
      ...seedling(148, 94, 46),
      stroke('edge', lines([52, 92], [52, 176])),
      ...roots([52, 112], { count: 2, length: 18, spread: 100 }),
      ...roots([52, 138], { count: 2, length: 18, spread: 100 }),
      stroke(
        'edge',
        flowing([
          [148, 92],
          [150, 132],
          [142, 150],
          [132, 136],
          [134, 112],
        ]),
      ),
      wrong([186, 120], 9),
    ],
    polarity: { base: [52, 176], tip: [52, 26] },
  },
  seedlingWorkable: {
    strokes: [
      ...pot(100, 138, 92, 194),
      ...stem(100, 148, 30, 12, { tipWidth: 7 }),
      ...leaf([100, 74], 160, 46),
      ...leaf([100, 62], 22, 46),
      ...leaf([100, 42], 150, 40),
      ...leaf([100, 36], 40, 40),
      stroke('tool', shape([70, 98], [94, 98], [94, 112], [86, 112], [86, 106], [70, 106])),
      stroke('tool', shape([106, 98], [172, 98], [172, 106], [114, 106], [114, 112], [106, 112])),
      stroke(
        'fine',
        `${lines([126, 98], [126, 102])}${lines([136, 98], [136, 102])}${lines([146, 98], [146, 102])}${lines([156, 98], [156, 102])}`,
      ),
      measure(52, 146, 105),
    ],
    polarity: { base: [100, 148], tip: [100, 30] },
  },
} satisfies Record<string, Cut>

export const divisionCuts = {
  suckerDug: {
    strokes: [
      ...ground(112),
      stroke(
        'wood',
        blob([
          [40, 120],
          [74, 112],
          [104, 124],
          [102, 156],
          [70, 168],
          [38, 152],
        ]),
      ),
      ...limb(
        [
          [70, 122],
          [69, 70],
          [68, 6],
        ],
        46,
        { tipWidth: 38 },
      ),
      stroke(
        'fine',
        `${flowing([
          [60, 120],
          [62, 70],
          [60, 8],
        ])}${flowing([
          [80, 120],
          [76, 60],
          [78, 8],
        ])}`,
      ),
      stroke(
        'wood',
        blob([
          [116, 134],
          [138, 124],
          [156, 136],
          [152, 156],
          [128, 160],
        ]),
      ),
      ...limb(
        [
          [136, 132],
          [139, 96],
          [142, 66],
        ],
        20,
        { tipWidth: 9 },
      ),
      stroke('leaf', shape([138, 70], [140, 18], [146, 72])),
      stroke('leaf', shape([140, 84], [164, 34], [148, 88])),
      ...roots([60, 162], { count: 4, length: 26, spread: 120 }),
      ...roots([138, 158], { count: 4, length: 24, spread: 110 }),
      ...knife([114, 70], [110, 114], [108, 172]),
    ],
    polarity: { base: [138, 158], tip: [140, 18] },
  },
  suckerPared: {
    strokes: [
      stroke(
        'gone',
        blob([
          [58, 132],
          [80, 106],
          [122, 108],
          [146, 134],
          [136, 172],
          [98, 184],
          [64, 170],
        ]),
      ),
      ...roots([82, 176], { count: 3, length: 16, spread: 90 }).map(root => ({
        ...root,
        role: 'gone' as const,
      })),
      stroke(
        'wood',
        blob([
          [68, 134],
          [84, 116],
          [118, 116],
          [136, 138],
          [128, 164],
          [98, 172],
          [74, 162],
        ]),
      ),
      ...limb(
        [
          [101, 122],
          [101, 84],
          [102, 44],
        ],
        40,
        { tipWidth: 32, cutTip: true },
      ),
      stroke(
        'fine',
        `${flowing([
          [92, 118],
          [94, 80],
          [94, 46],
        ])}${flowing([
          [112, 118],
          [109, 80],
          [110, 46],
        ])}`,
      ),
      bud([132, 140], 1, 9),
      bud([72, 138], -1, 9),
      stroke('gone', shape([94, 40], [88, 8], [102, 30], [118, 8], [112, 40])),
      ...knife([160, 118], [154, 152], [128, 182]),
    ],
    polarity: { base: [98, 172], tip: [102, 44] },
  },
  suckerPlanted: {
    strokes: [
      ...pot(100, 78, 150, 194, 112),
      stroke(
        'wood',
        blob([
          [78, 122],
          [90, 108],
          [112, 108],
          [124, 124],
          [118, 146],
          [98, 152],
          [82, 144],
        ]),
      ),
      ...limb(
        [
          [101, 114],
          [101, 74],
          [102, 34],
        ],
        26,
        { tipWidth: 22, cutTip: true },
      ),
      ...roots([100, 148], { count: 5, length: 26, spread: 130 }),
      ...move([44, 56], [54, 84]),
      ...move([156, 56], [146, 84]),
    ],
    polarity: { base: [100, 150], tip: [102, 34] },
  },
  suckerGrown: {
    strokes: [
      ...pot(100, 112, 130, 194, 100),
      stroke(
        'wood',
        blob([
          [82, 140],
          [92, 128],
          [110, 128],
          [120, 142],
          [114, 158],
          [98, 162],
          [86, 156],
        ]),
      ),
      ...limb(
        [
          [101, 132],
          [101, 96],
          [101, 62],
        ],
        24,
        { tipWidth: 18 },
      ),
      ...leaf([100, 72], 140, 74),
      ...leaf([102, 72], 42, 74),
      ...leaf([101, 64], 92, 56),
      ...roots([100, 158], { count: 7, length: 34, spread: 150 }),
    ],
    polarity: { base: [100, 160], tip: [101, 8] },
  },
  cormPared: {
    strokes: [
      stroke(
        'gone',
        flowing([
          [66, 92],
          [72, 40],
          [76, 8],
        ]),
      ),
      stroke(
        'gone',
        flowing([
          [134, 92],
          [128, 40],
          [124, 8],
        ]),
      ),
      stroke(
        'gone',
        flowing([
          [84, 84],
          [88, 40],
          [90, 10],
        ]),
      ),
      stroke(
        'wood',
        blob([
          [40, 128],
          [58, 96],
          [84, 82],
          [100, 76],
          [116, 82],
          [142, 96],
          [160, 128],
          [140, 164],
          [100, 176],
          [60, 164],
        ]),
      ),
      ...[104, 124].flatMap((y, row) => [
        stroke(
          'fine',
          flowing([
            [50 - row * 6, y + 8],
            [100, y + 2],
            [150 + row * 6, y + 8],
          ]),
        ),
      ]),
      ...(
        [
          [70, 112],
          [100, 104],
          [130, 112],
          [56, 134],
          [86, 130],
          [116, 130],
          [144, 134],
        ] as const
      ).flatMap(place => facingBud(place, 5).slice(1, 2)),
      ...knife([30, 90], [20, 126], [40, 166]),
    ],
    polarity: { base: [100, 176], tip: [100, 76] },
  },
  cormCrossed: {
    strokes: [
      stroke('wood', oval(100, 100, 82, 82)),
      stroke('fine', oval(100, 100, 60, 60)),
      stroke('fine', oval(100, 100, 36, 36)),
      ...([0, 60, 120, 180, 240, 300] as const).map(turn => {
        const radians = (turn * Math.PI) / 180
        return stroke('bud', oval(100 + Math.cos(radians) * 60, 100 + Math.sin(radians) * 60, 6, 6))
      }),
      stroke('wood', oval(100, 100, 15, 15)),
      ...knife([100, 70], [100, 130]),
      ...knife([70, 100], [130, 100]),
    ],
  },
  cormBed: {
    strokes: [
      ...ground(112, 170, 20, 180),
      ...[58, 102, 146].flatMap(x => [
        stroke(
          'wood',
          blob([
            [x - 18, 136],
            [x - 10, 124],
            [x, 120],
            [x + 10, 124],
            [x + 18, 136],
            [x + 8, 150],
            [x - 8, 150],
          ]),
        ),
        stroke('fine', lines([x - 5, 122], [x + 5, 122])),
      ]),
      stroke('edge', lines([20, 96], [20, 172], [180, 172], [180, 96])),
      stroke(
        'film',
        flowing([
          [16, 112],
          [30, 56],
          [100, 30],
          [170, 56],
          [184, 112],
        ]),
      ),
      ...[62, 100, 138].flatMap((x): Stroke[] => [
        stroke(
          'heat',
          flowing([
            [x, 194],
            [x + 3, 189],
            [x - 2, 183],
            [x + 1, 177],
          ]),
        ),
      ]),
    ],
  },
  cormShoots: {
    strokes: [
      ...ground(128, 196, 4, 126),
      stroke(
        'wood',
        blob([
          [28, 150],
          [44, 134],
          [64, 128],
          [84, 134],
          [100, 150],
          [84, 172],
          [44, 172],
        ]),
      ),
      ...[36, 52, 68, 86].flatMap((x, index) => [
        ...stem(x, 142, 92 - (index % 2) * 12, 9, { tipWidth: 5 }),
        ...leaf([x, 96 - (index % 2) * 12], 108 - index * 12, 40),
      ]),
      ...knife([108, 116], [96, 136], [82, 150]),
      ...stem(158, 132, 80, 10, { tipWidth: 6 }),
      stroke(
        'wood',
        blob([
          [150, 132],
          [166, 132],
          [164, 142],
          [152, 142],
        ]),
      ),
      ...roots([158, 140], { count: 4, length: 36, spread: 90 }),
      ...leaf([158, 86], 118, 48),
      ...leaf([158, 86], 60, 48),
    ],
    polarity: { base: [158, 142], tip: [158, 80] },
  },
  flaskOpened: {
    strokes: [
      stroke('medium', shape([58, 136], [142, 136], [142, 178], [58, 178])),
      ...[78, 100, 122].flatMap(x => [
        ...stem(x, 138, 104, 4),
        ...leaf([x, 108], 140, 24),
        ...leaf([x, 108], 40, 24),
        ...leaf([x, 104], 90, 18),
        ...roots([x, 138], { count: 3, length: 24, spread: 80 }),
      ]),
      stroke(
        'edge',
        lines([66, 44], [66, 58], [54, 74], [54, 182], [146, 182], [146, 74], [134, 58], [134, 44]),
      ),
      stroke('tool', shape([60, 22], [140, 22], [140, 38], [60, 38])),
      ...move([150, 38], [172, 30], [184, 46]),
    ],
  },
  flaskRinsed: {
    strokes: [
      stroke('water', shape([30, 128], [170, 128], [156, 178], [44, 178])),
      stroke('edge', lines([22, 108], [42, 182], [158, 182], [178, 108])),
      ...stem(100, 118, 70, 6, { tipWidth: 4 }),
      ...leaf([100, 76], 150, 44),
      ...leaf([100, 76], 30, 44),
      ...leaf([100, 70], 90, 36),
      ...roots([100, 116], { count: 5, length: 48, spread: 90 }),
      ...[
        [64, 160],
        [128, 164],
        [82, 170],
        [140, 152],
      ].map(([x, y]) => stroke('medium', oval(x!, y!, 6, 4))),
    ],
    polarity: { base: [100, 160], tip: [100, 34] },
  },
  plugDome: {
    strokes: [
      ...[46, 82, 118, 154].flatMap(x => [
        ...pot(x, 124, 32, 172, 24),
        ...stem(x, 132, 104, 4),
        ...leaf([x, 108], 145, 26),
        ...leaf([x, 108], 35, 26),
        ...leaf([x, 104], 90, 20),
      ]),
      stroke('film', shape([22, 128], [30, 60], [170, 60], [178, 128])),
      stroke('edge', lines([18, 128], [22, 180], [178, 180], [182, 128])),
      ...shadeCloth(26),
    ],
  },
  plugWeaned: {
    strokes: [
      ...[46, 82, 118, 154].flatMap(x => [
        ...pot(x, 130, 32, 178, 24),
        ...stem(x, 138, 92, 5),
        ...leaf([x, 100], 150, 32),
        ...leaf([x, 100], 30, 32),
        ...leaf([x, 92], 90, 28),
        ...roots([x, 142], { count: 3, length: 28, spread: 50 }),
      ]),
      stroke('edge', lines([18, 134], [22, 186], [178, 186], [182, 134])),
      stroke('film', shape([24, 122], [40, 36], [176, 18], [186, 84])),
      ...move([16, 82], [14, 52], [26, 30]),
    ],
  },
} satisfies Record<string, Cut>
