import { facingBud, goneLeaf, knife, label, leaf, limb, measure, move, stem, stroke, tie } from '../parts.ts'
import { blob, flowing, lines, type Point, shape } from '../path.ts'
import { section } from '../section.ts'
import type { Cut, Stroke } from '../stroke.ts'

/** The T in the bark: its bar and its foot. The bud must lie wholly below the bar. */
export const T_CUT = { bar: 66, foot: 152, bud: 104 } as const
const { bar, foot } = T_CUT

const shieldLine = (top: number): Point[] => [
  [86, top],
  [114, top],
  [117, top + 30],
  [112, top + 56],
  [100, top + 82],
  [88, top + 56],
  [83, top + 30],
]
const shield = (top: number): Stroke[] => [
  stroke('bark', shape(...shieldLine(top))),
  stroke('edge', shape(...shieldLine(top))),
  ...facingBud([100, top + 36], 9),
]

/** Stock with its T opened: wood and cambium between the flaps. */
const openT = (): Stroke[] => [
  ...stem(100, 196, 4, 64),
  stroke('wood', shape([80, bar], [120, bar], [116, 110], [100, foot], [84, 110])),
  stroke(
    'cambium',
    `${flowing([
      [84, bar + 4],
      [87, 108],
      [99, foot - 6],
    ])}${flowing([
      [116, bar + 4],
      [113, 108],
      [101, foot - 6],
    ])}`,
  ),
]
const flaps = (lift: number): Stroke[] =>
  ([-1, 1] as const).flatMap(side => {
    const points: Point[] = [
      [100 + side * (8 + lift), bar],
      [100 + side * (24 + lift * 0.4), bar],
      [100 + side * 22, 112],
      [100, foot],
      [100 + side * (8 + lift * 0.8), 104],
    ]
    return [stroke('bark', shape(...points)), stroke('edge', shape(...points))]
  })

/** The chip's notch from the side: the lip at the bottom slopes down and in, so that the chip's foot is held. */
export const CHIP = { top: 52, lipOut: 132, lipIn: 146, depth: 15 } as const
const notch = (x: number): Point[] => [
  [x, CHIP.top],
  [x + CHIP.depth * 0.75, 100],
  [x + CHIP.depth, CHIP.lipIn],
  [x, CHIP.lipOut],
]
const stockWithNotch = (x: number): Stroke[] =>
  section([[x, 4], ...notch(x), [x, 196], [x + 50, 196], [x + 50, 4]], {
    left: { outside: x, bark: 6 },
    right: { outside: x + 50, bark: 6 },
  })
const chip = (x: number): Stroke[] => [
  ...section(notch(x), { left: { outside: x, bark: 6 }, isClosed: true }),
  stroke(
    'bud',
    flowing([
      [x, 104],
      [x - 10, 94],
      [x - 7, 78],
      [x, 84],
    ]),
  ),
  stroke('fine', shape([x, 104], [x - 12, 118], [x - 8, 120], [x, 110])),
]
const frontNotch = (x: number, width: number, withBud: boolean): Stroke[] => {
  const line = (half: number, inset: number): Point[] => [
    [x - half, 128 - inset],
    [x - half, 92],
    [x - half * 0.7, 66 + inset],
    [x, CHIP.top + inset],
    [x + half * 0.7, 66 + inset],
    [x + half, 92],
    [x + half, 128 - inset],
  ]
  const outer = `${flowing(line(width / 2, 0))}L${x} 140Z`
  return [
    stroke(withBud ? 'bark' : 'wood', outer),
    stroke('cambium', `${flowing(line(width / 2 - 3, 3))}`),
    stroke('edge', outer),
    ...(withBud ? facingBud([x, 94], 9) : [stroke('fine', lines([x, 72], [x, 120]))]),
  ]
}

/** The patch: so high and so wide on stock and budstick alike. */
export const PATCH = { left: 74, right: 126, top: 66, bottom: 134 } as const
const window = (role: 'bark' | 'wood'): Stroke =>
  stroke(
    role,
    shape(
      [PATCH.left, PATCH.top],
      [PATCH.right, PATCH.top],
      [PATCH.right, PATCH.bottom],
      [PATCH.left, PATCH.bottom],
    ),
  )
const windowEdge = (role: 'edge' | 'cambium', inset = 0): Stroke =>
  stroke(
    role,
    shape(
      [PATCH.left + inset, PATCH.top + inset],
      [PATCH.right - inset, PATCH.top + inset],
      [PATCH.right - inset, PATCH.bottom - inset],
      [PATCH.left + inset, PATCH.bottom - inset],
    ),
  )

export const budCuts = {
  budStick: {
    strokes: [
      ...stem(52, 190, 10, 18, { cutBase: true, cutTip: true }),
      ...(
        [
          [34, 1],
          [72, -1],
          [110, 1],
          [148, -1],
        ] as const
      ).flatMap(([y, side]): Stroke[] => [
        stroke(
          'bud',
          flowing([
            [52 + side * 9, y + 5],
            [52 + side * 16, y],
            [52 + side * 14, y - 8],
            [52 + side * 9, y - 4],
          ]),
        ),
        stroke(
          'fine',
          shape(
            [52 + side * 9, y + 6],
            [52 + side * 20, y + 2],
            [52 + side * 21, y + 5],
            [52 + side * 9, y + 10],
          ),
        ),
        ...goneLeaf([52 + side * 20, y + 4], side === 1 ? 20 : 160, 24),
      ]),
      ...stem(148, 196, 4, 60),
      ...facingBud([148, 96], 12),
      stroke('gone', shape([134, 58], [162, 58], [166, 100], [160, 130], [148, 162], [136, 130], [130, 100])),
      ...knife([148, 182], [164, 140], [168, 92], [160, 56]),
    ],
    polarity: { base: [52, 190], tip: [52, 10] },
  },
  tCut: {
    strokes: [
      ...openT(),
      ...flaps(9),
      stroke('edge', lines([78, bar], [122, bar])),
      ...knife([74, 52], [100, 48], [128, 52]),
      ...knife([150, 150], [150, 110], [150, 74]),
      measure(46, bar, foot),
    ],
    polarity: { base: [100, 196], tip: [100, 4] },
  },
  tSlid: {
    strokes: [
      ...openT(),
      ...shield(32),
      ...flaps(12),
      stroke('edge', lines([78, bar], [84, bar])),
      stroke('edge', lines([116, bar], [122, bar])),
      ...move([156, 40], [156, 96]),
    ],
    polarity: { base: [100, 196], tip: [100, 4] },
  },
  tSeated: {
    strokes: [
      ...openT(),
      ...shield(bar),
      ...flaps(11),
      stroke('cambium', lines([86, bar], [114, bar])),
      stroke('edge', lines([76, bar - 2], [124, bar - 2])),
      stroke('gone', lines([86, bar - 16], [114, bar - 16])),
      ...knife([70, bar - 8], [134, bar - 8]),
    ],
    polarity: { base: [100, 196], tip: [100, 4] },
    meets: [[100, bar]],
  },
  tTied: {
    strokes: [
      ...stem(100, 196, 4, 44),
      ...facingBud([100, 98], 9),
      ...tie(100, 56, 84, 44, 3),
      ...tie(100, 122, 160, 44, 4),
      ...label([122, 154]),
      ...move([164, 160], [170, 112], [164, 62]),
    ],
    polarity: { base: [100, 196], tip: [100, 4] },
  },
  budForced: {
    strokes: [
      ...stem(100, 196, 66, 34),
      stroke('bark', shape([83, 70], [83, 58], [117, 44], [117, 70])),
      stroke('edge', lines([83, 70], [83, 58], [117, 44], [117, 70])),
      stroke('gone', `${lines([84, 50], [84, 8])}${lines([116, 38], [116, 8])}`),
      ...limb(
        [
          [114, 104],
          [132, 84],
          [138, 46],
        ],
        9,
        { tipWidth: 6 },
      ),
      ...leaf([137, 58], 20, 44),
      ...leaf([136, 66], 150, 30),
      ...leaf([138, 46], 80, 34),
      stroke(
        'gone',
        flowing([
          [83, 140],
          [66, 128],
          [58, 104],
        ]),
      ),
      stroke(
        'gone',
        flowing([
          [117, 168],
          [136, 160],
          [146, 144],
        ]),
      ),
      ...knife([60, 66], [136, 32]),
    ],
    polarity: { base: [100, 196], tip: [138, 46] },
  },
  chipStock: {
    strokes: [
      ...stockWithNotch(34),
      ...stem(146, 196, 4, 60),
      ...frontNotch(146, 40, false),
      ...knife([14, 116], [34, 132], [52, 148]),
      ...knife([22, 30], [36, 60], [44, 120]),
      measure(104, CHIP.top, 140),
    ],
    polarity: { base: [59, 196], tip: [59, 4] },
  },
  chipBud: {
    strokes: [
      ...section([[118, 4], ...notch(118), [118, 196], [160, 196], [160, 4]], {
        left: { outside: 118, bark: 6 },
        right: { outside: 160, bark: 6 },
      }),
      ...chip(60),
      ...move([104, 150], [84, 156], [70, 150]),
      ...move([104, 60], [90, 54], [76, 58]),
    ],
    polarity: { base: [139, 196], tip: [139, 4] },
  },
  chipFit: {
    strokes: [...stockWithNotch(38), ...chip(38), ...stem(146, 196, 4, 60), ...frontNotch(146, 40, true)],
    polarity: { base: [63, 196], tip: [63, 4] },
    meets: [
      [44, 78],
      [44, 138],
    ],
  },
  chipOneSide: {
    strokes: [
      ...stem(100, 196, 4, 84),
      ...frontNotch(100, 60, false),
      stroke(
        'bark',
        blob([
          [71, 128],
          [71, 92],
          [78, 68],
          [90, 56],
          [102, 68],
          [108, 92],
          [108, 128],
          [90, 138],
        ]),
      ),
      stroke(
        'cambium',
        flowing([
          [74, 126],
          [74, 92],
          [80, 71],
          [90, 60],
        ]),
      ),
      stroke(
        'edge',
        blob([
          [71, 128],
          [71, 92],
          [78, 68],
          [90, 56],
          [102, 68],
          [108, 92],
          [108, 128],
          [90, 138],
        ]),
      ),
      ...facingBud([90, 94], 9),
      ...move([24, 96], [60, 96]),
    ],
    polarity: { base: [100, 196], tip: [100, 4] },
    meets: [[73, 92]],
  },
  chipTied: {
    strokes: [
      ...stem(100, 196, 4, 44),
      ...frontNotch(100, 44, true),
      stroke('film', shape([74, 42], [126, 36], [126, 156], [74, 162])),
      stroke('fine', [52, 70, 88, 106, 124, 142].map(y => lines([74, y + 4], [126, y - 4])).join('')),
      stroke('edge', shape([74, 42], [126, 36], [126, 156], [74, 162])),
      ...label([122, 154]),
      ...move([164, 160], [170, 112], [164, 52]),
    ],
    polarity: { base: [100, 196], tip: [100, 4] },
  },
  patchTaken: {
    strokes: [
      ...stem(74, 196, 4, 64),
      stroke('wood', shape([56, 64], [102, 64], [102, 132], [56, 132])),
      stroke('edge', shape([56, 64], [102, 64], [102, 132], [56, 132])),
      stroke('bark', shape([126, 64], [172, 64], [172, 132], [126, 132])),
      stroke('edge', shape([126, 64], [172, 64], [172, 132], [126, 132])),
      ...facingBud([149, 94], 11),
      stroke('fine', shape([76, 92], [82, 98], [76, 104], [70, 98])),
      ...move([94, 150], [116, 158], [138, 150]),
      ...knife([36, 64], [112, 64]),
      ...knife([36, 132], [112, 132]),
    ],
    polarity: { base: [74, 196], tip: [74, 4] },
  },
  patchStock: {
    strokes: [
      ...stem(100, 196, 4, 72),
      window('wood'),
      windowEdge('cambium', 3.5),
      windowEdge('edge'),
      stroke('bark', shape([PATCH.left, PATCH.bottom], [PATCH.right, PATCH.bottom], [122, 184], [78, 184])),
      stroke('edge', shape([PATCH.left, PATCH.bottom], [PATCH.right, PATCH.bottom], [122, 184], [78, 184])),
      ...knife([56, PATCH.top], [146, PATCH.top]),
      ...move([152, 96], [158, 136], [138, 170]),
      measure(40, PATCH.top, PATCH.bottom),
    ],
    polarity: { base: [100, 196], tip: [100, 4] },
  },
  patchFit: {
    strokes: [
      ...stem(100, 196, 4, 72),
      window('bark'),
      windowEdge('cambium'),
      ...facingBud([100, 94], 11),
      stroke('bark', shape([PATCH.left, PATCH.bottom], [PATCH.right, PATCH.bottom], [124, 148], [76, 148])),
      stroke('edge', shape([PATCH.left, PATCH.bottom], [PATCH.right, PATCH.bottom], [124, 148], [76, 148])),
      ...move([100, 22], [100, 56]),
      ...move([100, 184], [100, 152]),
    ],
    polarity: { base: [100, 196], tip: [100, 4] },
    meets: [
      [PATCH.left, PATCH.top],
      [PATCH.right, PATCH.bottom],
    ],
  },
  patchTied: {
    strokes: [
      ...stem(100, 196, 4, 52),
      ...tie(100, 44, 88, 52, 4),
      ...tie(100, 114, 158, 52, 4),
      ...facingBud([100, 98], 9),
      ...label([126, 154]),
    ],
    polarity: { base: [100, 196], tip: [100, 4] },
  },
} satisfies Record<string, Cut>
