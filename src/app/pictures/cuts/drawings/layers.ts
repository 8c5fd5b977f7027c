import {
  bud,
  goneLeaf,
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
  tie,
} from '../parts.ts'
import { blob, flowing, lines, type Point, shape } from '../path.ts'
import type { Cut, Stroke } from '../stroke.ts'

/** The ring against the branch: so wide that callus does not bridge it before roots come. */
export const RING = { branchWidth: 36, top: 74, bottom: 128 } as const
const { branchWidth, top, bottom } = RING
const half = branchWidth / 2

/** Bare wood between two lips; what is left of the cambium lies on it as slime. */
const bareRing = (slimeFrom: number): Stroke[] => [
  stroke(
    'wood',
    shape([100 - half + 4, top], [100 + half - 4, top], [100 + half - 4, bottom], [100 - half + 4, bottom]),
  ),
  ...[0, 1, 2, 3, 4, 5, 6, 7]
    .map(index => top + 6 + index * 6)
    .filter(y => y > slimeFrom && y < bottom - 3)
    .map(y =>
      stroke(
        'cambium',
        flowing([
          [88, y],
          [96, y + 2],
          [104, y],
          [112, y + 2],
        ]),
      ),
    ),
  stroke(
    'edge',
    flowing([
      [100 - half, top],
      [100, top + 4],
      [100 + half, top],
    ]),
  ),
  stroke(
    'edge',
    flowing([
      [100 - half, bottom],
      [100, bottom - 4],
      [100 + half, bottom],
    ]),
  ),
]

const branchTop = (): Stroke[] => [...leaf([100 - half, 34], 168, 50), ...leaf([100 + half, 52], 14, 50)]

const branch = (): Stroke[] => [
  ...stem(100, 196, 4, branchWidth),
  bud([100 - half, 160], -1, 9),
  bud([100 - half, 30], -1, 9),
]

const ball = (grow = 0): Point[] => [
  [100, 56 - grow],
  [138 + grow, 76],
  [146 + grow, 104],
  [134 + grow, 132],
  [100, 150 + grow],
  [66 - grow, 132],
  [54 - grow, 104],
  [62 - grow, 76],
]

const mossFlecks = (): Stroke[] =>
  (
    [
      [72, 86],
      [86, 70],
      [112, 68],
      [128, 86],
      [76, 112],
      [92, 98],
      [110, 104],
      [128, 114],
      [84, 132],
      [104, 128],
      [118, 134],
      [100, 82],
    ] as const
  ).map(([x, y]) =>
    stroke(
      'fine',
      flowing([
        [x - 5, y],
        [x, y - 3],
        [x + 5, y + 1],
      ]),
    ),
  )

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

export const layerCuts = {
  ringCut: {
    strokes: [
      ...branch(),
      ...branchTop(),
      ...bareRing(top),
      stroke(
        'bark',
        blob([
          [118, 78],
          [140, 84],
          [158, 104],
          [152, 126],
          [138, 112],
          [118, 100],
        ]),
      ),
      stroke(
        'fine',
        flowing([
          [118, 92],
          [138, 98],
          [150, 120],
        ]),
      ),
      stroke(
        'edge',
        blob([
          [118, 78],
          [140, 84],
          [158, 104],
          [152, 126],
          [138, 112],
          [118, 100],
        ]),
      ),
      ...knife([70, 70], [100, 80], [132, 68]),
      ...knife([70, 124], [100, 134], [132, 122]),
      measure(52, top, bottom),
      stroke(
        'measure',
        `${lines([82, 178], [82, 186])}${lines([82, 182], [118, 182])}${lines([118, 178], [118, 186])}`,
      ),
    ],
    polarity: { base: [100, 196], tip: [100, 4] },
  },
  ringScraped: {
    strokes: [
      ...branch(),
      ...branchTop(),
      ...bareRing(102),
      ...knife([142, 66], [128, 82], [126, 112]),
      stroke(
        'cambium',
        flowing([
          [100 - half + 1, top - 2],
          [100, top + 2],
          [100 + half - 1, top - 2],
        ]),
      ),
      ...[86, 93, 100, 107, 114].map(x => stroke('move', lines([x, 58], [x, 66]))),
    ],
    polarity: { base: [100, 196], tip: [100, 4] },
  },
  ringPacked: {
    strokes: [
      ...branch(),
      ...branchTop(),
      stroke('medium', blob(ball())),
      ...mossFlecks(),
      stroke('edge', blob(ball())),
      stroke('gone', lines([82, top], [118, top])),
      stroke('gone', lines([82, bottom], [118, bottom])),
      ...move([20, 104], [50, 104]),
      ...move([180, 104], [150, 104]),
      stroke(
        'spray',
        blob([
          [172, 150],
          [178, 160],
          [172, 167],
          [166, 160],
        ]),
      ),
      stroke(
        'spray',
        blob([
          [154, 160],
          [160, 170],
          [154, 177],
          [148, 170],
        ]),
      ),
    ],
    polarity: { base: [100, 196], tip: [100, 4] },
  },
  ringWrapped: {
    strokes: [
      ...branch(),
      ...branchTop(),
      stroke('medium', blob(ball())),
      ...mossFlecks(),
      stroke('film', blob(ball(5))),
      ...tie(100, 40, 58, branchWidth, 2),
      ...tie(100, 150, 168, branchWidth, 2),
      ...label([120, 154]),
    ],
    polarity: { base: [100, 196], tip: [100, 4] },
  },
  ringRooted: {
    strokes: [
      ...branch(),
      ...branchTop(),
      stroke('medium', blob(ball())),
      ...roots([88, top + 4], { count: 3, length: 56, spread: 70, turn: -28 }),
      ...roots([112, top + 4], { count: 3, length: 56, spread: 70, turn: 28 }),
      ...roots([100, top + 8], { count: 3, length: 52, spread: 40 }),
      stroke('film', blob(ball(5))),
      ...tie(100, 40, 58, branchWidth, 2),
      ...tie(100, 150, 168, branchWidth, 2),
      ...knife([52, 184], [150, 178]),
    ],
    polarity: { base: [100, 196], tip: [100, 4] },
  },
  layerPotted: {
    strokes: [
      ...shadeCloth(8),
      ...pot(100, 116, 110, 194, 84),
      stroke(
        'fine',
        blob([
          [100, 130],
          [126, 138],
          [132, 156],
          [118, 176],
          [84, 176],
          [68, 156],
          [74, 138],
        ]),
      ),
      ...stem(100, 172, 48, 12, { tipWidth: 8, cutBase: true }),
      ...roots([100, 150], { count: 7, length: 34, spread: 170 }),
      ...leaf([95, 92], 155, 44, true),
      ...leaf([105, 76], 25, 44, true),
      ...leaf([97, 58], 135, 40, true),
      ...goneLeaf([104, 52], 50, 42),
      stroke('tool', shape([124, 36], [128, 36], [128, 176], [124, 176])),
      stroke('tie', shape([92, 84], [129, 81], [129, 86], [92, 89])),
    ],
    polarity: { base: [100, 172], tip: [100, 48] },
  },
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
