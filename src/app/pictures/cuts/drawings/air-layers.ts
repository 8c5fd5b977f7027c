import {
  bud,
  goneLeaf,
  knife,
  label,
  leaf,
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

export const airLayerCuts = {
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
} satisfies Record<string, Cut>
