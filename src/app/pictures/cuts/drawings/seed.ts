import { ground, leaf, limb, measure, move, pot, roots, stem, stroke, wrong } from '../parts.ts'
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
