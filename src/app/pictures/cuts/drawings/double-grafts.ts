import { knife, label, leaf, measure, pot, roots, stem, stroke, tie, waxCap } from '../parts.ts'
import { blob, lines, oval, shape } from '../path.ts'
import type { Cut, Stroke } from '../stroke.ts'
import { wedgeFitted } from './clefts.ts'
import { seedAt } from './seed.ts'

const nurse = (x: number, level: number): Stroke[] => [
  ...roots([x, level + 34], { count: 4, length: 26, spread: 110 }),
  stroke('edge', lines([x, level + 28], [x, level + 50])),
  ...seedAt([x, level + 20], 20, 15),
]

export const doubleGraftCuts = {
  nurseGrafted: {
    strokes: [
      ...pot(100, 108, 90, 196, 68),
      ...nurse(100, 116),
      ...wedgeFitted(100, 26, 66, 92, 126, 14, [40]),
      ...tie(100, 64, 96, 14, 4),
      waxCap(100, 26, 14),
      ...label([107, 62]),
    ],
    polarity: { base: [100, 160], tip: [100, 26] },
  },
  etiolated: {
    strokes: [
      stroke('dark', shape([24, 8], [176, 8], [176, 196], [24, 196])),
      ...pot(100, 142, 78, 192, 60),
      ...seedAt([100, 164], 14, 10),
      ...stem(100, 156, 126, 8),
      ...tie(100, 120, 136, 8, 2),
      stroke('wood', shape([97, 122], [98, 24], [102, 24], [103, 122])),
      ...(
        [
          [92, 1],
          [66, -1],
          [42, 1],
        ] as const
      ).map(([y, side]) =>
        stroke(
          'wood',
          blob([
            [100 + side * 2, y],
            [100 + side * 9, y - 4],
            [100 + side * 12, y - 10],
            [100 + side * 5, y - 8],
          ]),
        ),
      ),
      stroke(
        'wood',
        blob([
          [100, 28],
          [96, 20],
          [100, 12],
          [104, 20],
        ]),
      ),
      measure(142, 122, 18),
    ],
    polarity: { base: [100, 156], tip: [100, 12] },
  },
  etiolatedRinged: {
    strokes: [
      stroke('medium', shape([66, 70], [134, 70], [134, 150], [66, 150])),
      stroke('edge', lines([66, 62], [66, 150])),
      stroke('edge', lines([134, 62], [134, 150])),
      ...pot(100, 146, 90, 196, 70),
      ...seedAt([100, 174], 18, 12),
      ...stem(100, 164, 138, 10),
      stroke('wood', shape([96, 140], [97, 54], [103, 54], [104, 140])),
      stroke('tool', shape([92, 126], [108, 126], [108, 131], [92, 131])),
      ...[78, 88, 98, 108].map(y => stroke('cambium', lines([97, y + 4], [100, y]))),
      ...leaf([100, 60], 145, 40),
      ...leaf([100, 60], 35, 40),
      ...leaf([100, 54], 90, 40),
      ...knife([40, 118], [66, 92], [92, 84]),
    ],
    polarity: { base: [100, 164], tip: [100, 14] },
  },
  clonalRooted: {
    strokes: [
      stroke('medium', shape([66, 64], [134, 64], [134, 142], [66, 142])),
      stroke('edge', lines([66, 58], [66, 142], [134, 142], [134, 58])),
      ...stem(100, 130, 44, 9, { cutBase: true }),
      ...roots([100, 108], { count: 4, length: 36, spread: 150 }),
      ...roots([100, 92], { count: 4, length: 34, spread: 170 }),
      ...leaf([100, 52], 150, 42),
      ...leaf([100, 50], 30, 42),
      ...leaf([100, 44], 90, 34),
      stroke('gone', oval(100, 176, 18, 13)),
      stroke('gone', `${lines([96, 146], [96, 164])}${lines([104, 146], [104, 164])}`),
      ...knife([58, 154], [142, 148]),
    ],
    polarity: { base: [100, 130], tip: [100, 10] },
  },
  doubleScion: {
    strokes: [
      ...pot(100, 140, 92, 196, 70),
      ...roots([100, 160], { count: 6, length: 34, spread: 150 }),
      ...leaf([92, 126], 165, 42),
      ...wedgeFitted(100, 22, 70, 104, 162, 16, [36, 54]),
      ...tie(100, 66, 110, 16, 5),
      waxCap(100, 22, 16),
      ...label([108, 100]),
    ],
    polarity: { base: [100, 162], tip: [100, 22] },
  },
} satisfies Record<string, Cut>
