import { ground, knife, label, leaf, limb, measure, move, roots, stem, stroke } from '../parts.ts'
import { blob, flowing, lines, type Point, shape } from '../path.ts'
import type { Cut, Stroke } from '../stroke.ts'

/** The stool: an old base from which shoots rise each year. */
const stool = (y: number): Stroke[] => [
  stroke(
    'bark',
    blob([
      [62, y + 10],
      [80, y - 10],
      [100, y - 14],
      [120, y - 10],
      [138, y + 10],
      [124, y + 26],
      [76, y + 26],
    ]),
  ),
  stroke(
    'edge',
    blob([
      [62, y + 10],
      [80, y - 10],
      [100, y - 14],
      [120, y - 10],
      [138, y + 10],
      [124, y + 26],
      [76, y + 26],
    ]),
  ),
  ...roots([100, y + 20], { count: 6, length: 17, spread: 150 }),
]

const shootFeet = [72, 86, 100, 114, 128] as const

const shoots = (foot: number, height: number, rooted = false): Stroke[] =>
  shootFeet.flatMap((x, index) => {
    const tip = foot - height + Math.abs(index - 2) * 6
    const lean = (index - 2) * 7
    return [
      ...(rooted
        ? [
            ...roots([x + lean * 0.3, foot - 12], { count: 2, length: 20, spread: 150 }),
            ...roots([x + lean * 0.3, foot - 24], { count: 2, length: 16, spread: 170 }),
          ]
        : []),
      ...limb(
        [
          [x, foot],
          [x + lean * 0.5, (foot + tip) / 2],
          [x + lean, tip],
        ],
        6,
        { tipWidth: 4 },
      ),
      ...leaf([x + lean * 0.8, tip + 16], index < 2 ? 150 : 30, 24),
      ...leaf([x + lean, tip], 90 - lean * 2, 22),
    ]
  })

const mound = (peak: number, level: number): Stroke[] => {
  const points: Point[] = [
    [16, level],
    [44, peak + (level - peak) * 0.45],
    [80, peak],
    [120, peak],
    [156, peak + (level - peak) * 0.45],
    [184, level],
  ]
  return [stroke('medium', `${flowing(points)}Z`), stroke('edge', flowing(points))]
}

const bentShoot: readonly Point[] = [
  [30, 136],
  [38, 84],
  [66, 66],
  [92, 110],
  [116, 150],
  [144, 140],
  [152, 92],
  [152, 36],
]

const layerPlant = (): Stroke[] => [
  ...stem(30, 150, 40, 14),
  ...leaf([30, 52], 140, 28),
  ...leaf([30, 42], 90, 32),
  ...limb([[30, 120], ...bentShoot.slice(1)], 9, { tipWidth: 6 }),
  ...leaf([152, 62], 150, 32),
  ...leaf([152, 50], 30, 32),
  ...leaf([152, 36], 90, 28),
]

export const groundLayerCuts = {
  stoolCut: {
    strokes: [
      ...ground(138),
      ...stool(136),
      ...shootFeet.map((x, index) =>
        stroke(
          'gone',
          `${lines([x - 3, 118], [x - 3 + (index - 2) * 7, 24])}${lines([x + 3, 118], [x + 3 + (index - 2) * 7, 24])}`,
        ),
      ),
      ...shootFeet.flatMap(x => stem(x, 132, 120, 6, { cutTip: true })),
      ...knife([36, 116], [166, 114]),
    ],
  },
  moundFirst: {
    strokes: [...ground(158), ...stool(154), ...mound(112, 158), ...shoots(144, 92), measure(178, 158, 112)],
    polarity: { base: [100, 144], tip: [100, 52] },
  },
  moundFull: {
    strokes: [
      ...ground(166),
      ...stool(162),
      ...mound(86, 166),
      ...shoots(152, 120, true),
      measure(190, 164, 86),
    ],
    polarity: { base: [100, 152], tip: [100, 32] },
  },
  moundLifted: {
    strokes: [
      ...ground(166),
      ...stool(162),
      stroke(
        'gone',
        flowing([
          [16, 166],
          [44, 122],
          [80, 86],
          [120, 86],
          [156, 122],
          [184, 166],
        ]),
      ),
      ...shoots(150, 118, true),
      ...knife([34, 150], [168, 146]),
    ],
    polarity: { base: [100, 150], tip: [100, 32] },
  },
  layerBent: {
    strokes: [
      ...ground(134),
      ...layerPlant(),
      ...move([92, 28], [128, 44], [126, 110]),
      stroke('gone', lines([86, 134], [96, 166], [136, 166], [146, 134])),
    ],
  },
  layerNicked: {
    strokes: [
      ...limb(
        [
          [34, 10],
          [58, 92],
          [104, 138],
          [146, 92],
          [166, 10],
        ],
        42,
      ),
      stroke('wood', shape([72, 138], [126, 130], [92, 158])),
      stroke('cambium', lines([75, 140], [82, 139])),
      stroke('cambium', lines([93, 154], [100, 149])),
      stroke('edge', lines([72, 138], [126, 130], [92, 158])),
      stroke('tool', shape([84, 146], [90, 140], [98, 148], [92, 153])),
      ...knife([26, 166], [70, 152], [122, 134]),
    ],
    polarity: { base: [104, 138], tip: [166, 10] },
  },
  layerPegged: {
    strokes: [
      ...ground(134),
      ...layerPlant(),
      stroke(
        'edge',
        flowing([
          [106, 152],
          [108, 140],
          [116, 135],
          [124, 142],
          [125, 190],
        ]),
      ),
      stroke('tool', shape([162, 20], [167, 20], [167, 178], [162, 178])),
      stroke('tie', shape([148, 78], [168, 75], [168, 80], [148, 83])),
      ...label([162, 60]),
    ],
  },
  layerSevered: {
    strokes: [
      ...ground(134),
      ...layerPlant(),
      ...roots([114, 150], { count: 6, length: 40, spread: 140 }),
      ...roots([132, 148], { count: 3, length: 34, spread: 80 }),
      ...knife([58, 118], [112, 92]),
    ],
  },
} satisfies Record<string, Cut>
