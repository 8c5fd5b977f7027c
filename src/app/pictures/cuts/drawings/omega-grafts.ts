import {
  bud,
  ground,
  leaf,
  limb,
  move,
  pot,
  roots,
  stem,
  stick,
  stroke,
  thermometer,
  warmth,
  waxCap,
} from '../parts.ts'
import { blob, flowing, lines, oval, type Point, shape } from '../path.ts'
import { section } from '../section.ts'
import type { Cut, Stroke } from '../stroke.ts'
import { half, sides } from './whips.ts'

/** The keyhole of an omega cutter, from the left side of the stem to the right. */
const omega = (y: number): Point[] => {
  const ring = Array.from({ length: 13 }, (_, index): Point => {
    const radians = ((125 + (290 * index) / 12) * Math.PI) / 180
    return [100 + Math.cos(radians) * 12, y + 22 - Math.sin(radians) * 12]
  })
  return [[100 - half, y], [93, y + 2], ...ring, [107, y + 2], [100 + half, y]]
}

function wrongMark(x: number, y: number): Stroke {
  return stroke(
    'knife',
    flowing([
      [x, y - 14],
      [x + 10, y],
      [x + 6, y + 16],
    ]),
  )
}

export const omegaCuts = {
  omegaCut: {
    strokes: [
      ...section([[100 + half, 8], ...[...omega(62)].reverse(), [100 - half, 8]], sides()),
      ...section([[100 - half, 196], ...omega(104), [100 + half, 196]], sides()),
      bud([100 + half, 34], 1, 11),
      stroke('gone', oval(74, 168, 8, 11)),
      wrongMark(60, 168),
      ...move([156, 56], [156, 100]),
    ],
    polarity: { base: [100, 196], tip: [100, 8] },
  },
  omegaShut: {
    strokes: [
      ...section([[100 - half, 196], ...omega(84), [100 + half, 196]], sides()),
      ...section([[100 + half, 8], ...[...omega(84)].reverse(), [100 - half, 8]], sides()),
      bud([100 + half, 44], 1, 11),
    ],
    polarity: { base: [100, 196], tip: [100, 8] },
    meets: [
      [100 - half + 6, 84],
      [100 + half - 6, 84],
    ],
  },
  waxDipped: {
    strokes: [
      stroke('wax', shape([44, 108], [156, 108], [150, 172], [50, 172])),
      stroke('edge', lines([38, 90], [48, 176], [152, 176], [162, 90])),
      // Upside down: the scion goes into the wax, the base stays out.
      ...stem(100, 4, 130, 12),
      ...stem(100, 124, 160, 12, { cutTip: true }),
      stroke(
        'bud',
        flowing([
          [106, 140],
          [113, 147],
          [111, 156],
          [106, 152],
        ]),
      ),
      stroke(
        'fine',
        flowing([
          [94, 126],
          [100, 132],
          [106, 126],
        ]),
      ),
      ...warmth(198, 70, 100, 130),
      ...move([148, 60], [160, 40], [150, 14]),
      ...thermometer([136, 140], 52),
    ],
  },
  callusBox: {
    strokes: [
      ...ground(98, 168, 26, 174),
      ...[48, 68, 88, 112, 132, 152].flatMap(x => [
        ...stem(x, 160, 80, 8, { cutBase: true }),
        ...stick(x, 82, 52, 8, [64], 5),
        stroke('wax', oval(x, 78, 6, 8)),
        waxCap(x, 52, 8),
      ]),
      stroke('film', shape([22, 100], [26, 34], [174, 34], [178, 100])),
      stroke('edge', lines([24, 86], [24, 170], [176, 170], [176, 86])),
      ...thermometer([100, 88], 40),
      ...warmth(194, 48, 82, 116, 150),
    ],
    polarity: { base: [48, 160], tip: [48, 52] },
  },
  onCuttingRooted: {
    strokes: [
      ...pot(100, 112, 84, 194, 64),
      ...stem(100, 160, 76, 12, { cutBase: true }),
      ...stick(100, 78, 48, 12, []),
      stroke('callus', oval(94, 78, 4, 6)),
      stroke('callus', oval(106, 78, 4, 6)),
      ...limb(
        [
          [106, 60],
          [116, 40],
          [118, 22],
        ],
        5,
      ),
      ...leaf([117, 36], 20, 36),
      ...leaf([116, 44], 160, 34),
      ...leaf([118, 24], 80, 18),
      stroke(
        'callus',
        blob([
          [94, 156],
          [106, 156],
          [108, 164],
          [100, 167],
          [92, 164],
        ]),
      ),
      ...roots([100, 162], { count: 5, length: 30, spread: 140 }),
    ],
    polarity: { base: [100, 164], tip: [118, 22] },
  },
} satisfies Record<string, Cut>
