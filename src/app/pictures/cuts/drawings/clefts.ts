import {
  archFace,
  goneLeaf,
  ground,
  knife,
  label,
  leaf,
  measure,
  move,
  pot,
  roots,
  stem,
  stick,
  stroke,
  stump,
  tie,
  waxCap,
} from '../parts.ts'
import { blob, flowing, lines, oval, shape } from '../path.ts'
import type { Cut, Stroke } from '../stroke.ts'
import { seedAt } from './seed.ts'

/** A wedge seen so that its bark is before one: two cut edges run to the tip, the cambium along each. */
export const wedgeProfile = (x: number, shoulder: number, tip: number, width: number): Stroke[] => {
  const half = width / 2
  return [
    stroke('bark', shape([x - half, shoulder], [x + half, shoulder], [x + 1.5, tip], [x - 1.5, tip])),
    stroke('cambium', lines([x - half + 2, shoulder + 1], [x - 1, tip - 3])),
    stroke('cambium', lines([x + half - 2, shoulder + 1], [x + 1, tip - 3])),
    stroke('edge', lines([x - half, shoulder], [x - 1.5, tip], [x + 1.5, tip], [x + half, shoulder])),
  ]
}

/** A scion with its wedge let down into the cleft of a stock as thick as itself: one line of cambium down each side. */
export const wedgeFitted = (
  x: number,
  tip: number,
  joint: number,
  point: number,
  base: number,
  width: number,
  buds: readonly number[],
): Stroke[] => [
  ...stem(x, base, joint, width),
  ...stick(x, joint, tip, width, buds),
  ...wedgeProfile(x, joint, point, width),
  stroke('edge', `${lines([x - width / 2, joint], [x - width / 2 + 2, joint])}`),
]

const limbTop = (x: number, y: number, width: number): Stroke[] => [
  ...stem(x, 196, y, width),
  ...stump(x, y, width),
]

/** The wedge-shaped cross-section of a scion in the cleft of a limb: bark outside, cambium on the limb's own ring. */
const scionInCleft = (side: -1 | 1): Stroke[] => {
  const x = (from: number) => 100 + side * from
  return [
    stroke('wood', shape([x(77), 86], [x(50), 92], [x(34), 100], [x(50), 108], [x(77), 114])),
    stroke('bark', shape([x(77), 85], [x(65), 88], [x(65), 112], [x(77), 115])),
    stroke('edge', shape([x(77), 85], [x(34), 100], [x(77), 115])),
    stroke('cambium', lines([x(65), 88], [x(65), 112])),
  ]
}

const topScions = (): Stroke[] => [
  ...stick(62, 84, 14, 17, [32, 56], 7),
  ...stick(138, 84, 14, 17, [32, 56], 7),
]
const sealed = (x: number, y: number, width: number): Stroke =>
  stroke(
    'wax',
    blob([
      [x - width / 2 - 4, y + 12],
      [x - width / 2 - 2, y - 8],
      [x, y - width * 0.2],
      [x + width / 2 + 2, y - 8],
      [x + width / 2 + 4, y + 12],
      [x + width * 0.25, y + 24],
      [x, y + 40],
      [x - width * 0.25, y + 24],
    ]),
  )

const stoneSeedling = (top: number): Stroke[] => [
  ...roots([100, 166], { count: 5, length: 30, spread: 110 }),
  ...stem(100, 164, top, 10, { cutTip: true }),
  ...seedAt([92, 160], 22, 14),
]

export const cleftCuts = {
  wedgeScion: {
    strokes: [
      ...stick(60, 96, 20, 30, [44, 76]),
      ...wedgeProfile(60, 96, 166, 30),
      ...stick(142, 98, 20, 30, [44]),
      ...archFace(142, 96, 166, 30),
      stroke('edge', lines([127, 98], [127, 166], [157, 166], [157, 98])),
      ...knife([34, 92], [54, 176]),
      ...knife([86, 92], [66, 176]),
      measure(102, 96, 166),
    ],
    polarity: { base: [60, 166], tip: [60, 20] },
  },
  wedgeStock: {
    strokes: [
      ...goneLeaf([100, 40], 120, 40),
      stroke('gone', `${lines([86, 68], [88, 20])}${lines([114, 68], [112, 20])}`),
      ...leaf([86, 172], 160, 56),
      ...leaf([114, 156], 20, 56),
      ...stem(100, 196, 76, 30),
      ...stump(100, 76, 30),
      stroke('edge', lines([100, 80], [100, 140])),
      ...knife([100, 40], [100, 132]),
      measure(146, 78, 140),
    ],
    polarity: { base: [100, 196], tip: [100, 76] },
  },
  wedgeFit: {
    strokes: [
      ...leaf([80, 184], 165, 52),
      ...wedgeFitted(100, 14, 88, 156, 196, 40, [34, 62]),
      ...move([160, 30], [160, 78]),
    ],
    polarity: { base: [100, 196], tip: [100, 14] },
    meets: [
      [81, 89],
      [119, 89],
    ],
  },
  wedgeTied: {
    strokes: [
      ...leaf([86, 188], 165, 46),
      ...wedgeFitted(100, 18, 86, 142, 196, 28, [36, 60]),
      ...tie(100, 76, 158, 28),
      waxCap(100, 18, 28),
      ...move([150, 156], [156, 118], [150, 82]),
      ...label([114, 154]),
    ],
    polarity: { base: [100, 196], tip: [100, 18] },
  },
  wedgeBagged: {
    strokes: [
      ...pot(100, 150, 84, 196, 64),
      ...leaf([96, 140], 165, 40),
      ...leaf([104, 132], 15, 40),
      ...stem(100, 160, 96, 11),
      ...stick(100, 98, 44, 10, [60, 78], 6),
      ...tie(100, 90, 118, 11),
      stroke(
        'film',
        blob([
          [94, 122],
          [70, 104],
          [68, 50],
          [84, 26],
          [116, 26],
          [132, 50],
          [130, 104],
          [106, 122],
        ]),
      ),
      ...tie(100, 118, 126, 14, 1),
      ...label([106, 124]),
    ],
    polarity: { base: [100, 160], tip: [100, 44] },
  },
  wedgePushed: {
    strokes: [
      ...leaf([86, 186], 165, 46),
      ...stem(100, 196, 96, 24),
      ...stick(100, 98, 40, 24, []),
      ...leaf([112, 56], 40, 50),
      ...leaf([108, 44], 96, 36),
      ...leaf([88, 76], 140, 46),
      ...tie(100, 92, 158, 24),
      ...knife([112, 84], [112, 168]),
      ...goneLeaf([114, 178], 10, 40),
    ],
    polarity: { base: [100, 196], tip: [100, 40] },
  },
  limbCleft: {
    strokes: [
      ...limbTop(100, 88, 104),
      stroke('edge', lines([50, 88], [150, 88])),
      stroke(
        'edge',
        flowing([
          [100, 104],
          [101, 130],
          [99, 158],
        ]),
      ),
      stroke('tool', shape([90, 44], [110, 44], [106, 92], [94, 92])),
      stroke('tool', shape([84, 30], [116, 30], [116, 44], [84, 44])),
      ...move([134, 14], [134, 56]),
    ],
    polarity: { base: [100, 196], tip: [100, 88] },
  },
  cleftScion: {
    strokes: [
      ...stick(58, 88, 14, 28, [36, 66]),
      ...wedgeProfile(58, 88, 176, 28),
      stroke('wood', shape([124, 96], [172, 82], [172, 118], [124, 104])),
      stroke('bark', shape([164, 84], [176, 81], [176, 119], [164, 116])),
      stroke('edge', shape([124, 96], [176, 81], [176, 119], [124, 104])),
      stroke('cambium', lines([164, 85], [164, 115])),
      stroke('gone', lines([76, 122], [118, 106])),
      measure(26, 88, 176),
    ],
    polarity: { base: [58, 176], tip: [58, 14] },
  },
  cleftSet: {
    strokes: [
      ...limbTop(100, 96, 104),
      stroke('edge', lines([50, 96], [150, 96])),
      ...stick(60, 96, 14, 17, [36, 64], 7),
      ...stick(140, 96, 14, 17, [36, 64], 7),
      stroke('gone', lines([52, 100], [60, 152], [68, 100])),
      stroke('gone', lines([132, 100], [140, 152], [148, 100])),
      ...move([100, 30], [100, 84]),
    ],
    polarity: { base: [100, 196], tip: [60, 14] },
  },
  cleftSection: {
    strokes: [
      stroke('bark', oval(100, 100, 78, 78)),
      stroke('wood', oval(100, 100, 65, 65)),
      stroke('fine', `${oval(100, 100, 44, 44)}${oval(100, 100, 22, 22)}`),
      stroke('cambium', oval(100, 100, 65, 65)),
      stroke('edge', oval(100, 100, 78, 78)),
      stroke('edge', `${lines([66, 99], [134, 99])}${lines([66, 101], [134, 101])}`),
      ...scionInCleft(-1),
      ...scionInCleft(1),
      ...move([8, 66], [30, 92]),
      ...move([192, 66], [170, 92]),
    ],
    meets: [
      [35, 100],
      [165, 100],
    ],
  },
  cleftSealed: {
    strokes: [
      ...stem(100, 196, 88, 104),
      ...topScions(),
      sealed(100, 90, 104),
      waxCap(62, 14, 17),
      waxCap(138, 14, 17),
      ...label([148, 128]),
    ],
    polarity: { base: [100, 196], tip: [62, 14] },
  },
  stoneSeedling: {
    strokes: [
      ...ground(158),
      ...stoneSeedling(92),
      stroke('gone', `${lines([95, 90], [96, 52])}${lines([105, 90], [104, 52])}`),
      ...goneLeaf([96, 56], 150, 40),
      ...goneLeaf([104, 56], 30, 40),
      ...goneLeaf([100, 52], 90, 36),
      ...knife([66, 94], [138, 90]),
      measure(150, 148, 92),
    ],
    polarity: { base: [100, 164], tip: [100, 92] },
  },
  stoneSplit: {
    strokes: [
      ...roots([100, 178], { count: 5, length: 18, spread: 120 }),
      ...stem(100, 176, 72, 24),
      ...seedAt([88, 168], 32, 17),
      ...stump(100, 72, 24),
      stroke('edge', lines([100, 75], [100, 124])),
      ...knife([100, 34], [100, 116]),
      measure(140, 74, 124),
    ],
    polarity: { base: [100, 176], tip: [100, 72] },
  },
  stoneFit: {
    strokes: [
      ...roots([100, 182], { count: 5, length: 14, spread: 120 }),
      ...wedgeFitted(100, 12, 80, 130, 180, 26, [32, 58]),
      ...seedAt([88, 172], 32, 16),
      ...move([150, 28], [150, 72]),
    ],
    polarity: { base: [100, 180], tip: [100, 12] },
    meets: [
      [88, 81],
      [112, 81],
    ],
  },
  stonePotted: {
    strokes: [
      ...pot(100, 128, 92, 196, 70),
      ...roots([100, 158], { count: 5, length: 30, spread: 120 }),
      ...stem(100, 154, 96, 9),
      ...seedAt([94, 150], 17, 10),
      ...stick(100, 98, 46, 8, [62, 80], 5),
      ...tie(100, 88, 112, 9, 3),
      stroke(
        'film',
        flowing([
          [40, 132],
          [44, 50],
          [100, 14],
          [156, 50],
          [160, 132],
        ]),
      ),
      ...label([104, 116]),
    ],
    polarity: { base: [100, 156], tip: [100, 46] },
  },
} satisfies Record<string, Cut>
