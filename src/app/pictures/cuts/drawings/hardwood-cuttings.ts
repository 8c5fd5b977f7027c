import {
  bud,
  ground,
  knife,
  label,
  leaf,
  measure,
  move,
  roots,
  stroke,
  thermometer,
  warmth,
} from '../parts.ts'
import { blob, lines, shape } from '../path.ts'
import type { Cut, Stroke } from '../stroke.ts'

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

export const hardwoodCuttingCuts = {
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
} satisfies Record<string, Cut>
