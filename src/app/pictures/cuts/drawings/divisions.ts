import { bud, facingBud, ground, knife, leaf, limb, move, pot, roots, stem, stroke } from '../parts.ts'
import { blob, flowing, lines, oval, shape } from '../path.ts'
import type { Cut, Stroke } from '../stroke.ts'

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
} satisfies Record<string, Cut>
