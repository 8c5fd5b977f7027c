import { leaf, move, pot, roots, shadeCloth, stem, stroke } from '../parts.ts'
import { lines, oval, shape } from '../path.ts'
import type { Cut } from '../stroke.ts'

export const plantletCuts = {
  flaskOpened: {
    strokes: [
      stroke('medium', shape([58, 136], [142, 136], [142, 178], [58, 178])),
      ...[78, 100, 122].flatMap(x => [
        ...stem(x, 138, 104, 4),
        ...leaf([x, 108], 140, 24),
        ...leaf([x, 108], 40, 24),
        ...leaf([x, 104], 90, 18),
        ...roots([x, 138], { count: 3, length: 24, spread: 80 }),
      ]),
      stroke(
        'edge',
        lines([66, 44], [66, 58], [54, 74], [54, 182], [146, 182], [146, 74], [134, 58], [134, 44]),
      ),
      stroke('tool', shape([60, 22], [140, 22], [140, 38], [60, 38])),
      ...move([150, 38], [172, 30], [184, 46]),
    ],
  },
  flaskRinsed: {
    strokes: [
      stroke('water', shape([30, 128], [170, 128], [156, 178], [44, 178])),
      stroke('edge', lines([22, 108], [42, 182], [158, 182], [178, 108])),
      ...stem(100, 118, 70, 6, { tipWidth: 4 }),
      ...leaf([100, 76], 150, 44),
      ...leaf([100, 76], 30, 44),
      ...leaf([100, 70], 90, 36),
      ...roots([100, 116], { count: 5, length: 48, spread: 90 }),
      ...[
        [64, 160],
        [128, 164],
        [82, 170],
        [140, 152],
      ].map(([x, y]) => stroke('medium', oval(x!, y!, 6, 4))),
    ],
    polarity: { base: [100, 160], tip: [100, 34] },
  },
  plugDome: {
    strokes: [
      ...[46, 82, 118, 154].flatMap(x => [
        ...pot(x, 124, 32, 172, 24),
        ...stem(x, 132, 104, 4),
        ...leaf([x, 108], 145, 26),
        ...leaf([x, 108], 35, 26),
        ...leaf([x, 104], 90, 20),
      ]),
      stroke('film', shape([22, 128], [30, 60], [170, 60], [178, 128])),
      stroke('edge', lines([18, 128], [22, 180], [178, 180], [182, 128])),
      ...shadeCloth(26),
    ],
  },
  plugWeaned: {
    strokes: [
      ...[46, 82, 118, 154].flatMap(x => [
        ...pot(x, 130, 32, 178, 24),
        ...stem(x, 138, 92, 5),
        ...leaf([x, 100], 150, 32),
        ...leaf([x, 100], 30, 32),
        ...leaf([x, 92], 90, 28),
        ...roots([x, 142], { count: 3, length: 28, spread: 50 }),
      ]),
      stroke('edge', lines([18, 134], [22, 186], [178, 186], [182, 134])),
      stroke('film', shape([24, 122], [40, 36], [176, 18], [186, 84])),
      ...move([16, 82], [14, 52], [26, 30]),
    ],
  },
} satisfies Record<string, Cut>
