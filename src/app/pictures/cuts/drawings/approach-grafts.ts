import { ground, knife, leaf, limb, measure, move, pot, stem, stroke, tie } from '../parts.ts'
import { lines, oval, shape } from '../path.ts'
import { section } from '../section.ts'
import type { Cut, Stroke } from '../stroke.ts'

function faceOn(x: number): Stroke[] {
  return [
    stroke('wood', oval(x, 98, 14, 52)),
    stroke('cambium', oval(x, 98, 11, 47)),
    stroke('fine', lines([x, 76], [x, 122])),
  ]
}

export const approachCuts = {
  twoPlants: {
    strokes: [
      ...ground(176),
      ...stem(150, 178, 10, 22),
      ...leaf([139, 32], 150, 40),
      ...leaf([161, 46], 30, 34),
      ...limb(
        [
          [148, 92],
          [112, 62],
          [84, 14],
        ],
        14,
        { tipWidth: 10 },
      ),
      ...leaf([86, 20], 150, 36),
      ...pot(58, 128, 64, 176, 48),
      ...stem(58, 138, 40, 12, { tipWidth: 9 }),
      ...leaf([52, 70], 160, 36),
      ...leaf([58, 40], 90, 28),
      ...move([64, 100], [84, 86], [100, 66]),
    ],
  },
  twoFaces: {
    strokes: [
      ...stem(62, 196, 4, 44),
      ...stem(138, 196, 4, 44),
      ...faceOn(66),
      ...faceOn(134),
      ...move([64, 176], [97, 176]),
      ...move([136, 176], [103, 176]),
      measure(24, 46, 150),
      measure(176, 46, 150),
    ],
    polarity: { base: [62, 196], tip: [62, 4] },
  },
  twoJoined: {
    strokes: [
      ...section(
        [
          [60, 196],
          [60, 4],
          [100, 4],
          [100, 196],
        ],
        { left: { outside: 60, bark: 6 }, right: { outside: 100, bark: 6 } },
      ),
      ...section(
        [
          [100, 196],
          [100, 4],
          [140, 4],
          [140, 196],
        ],
        { left: { outside: 100, bark: 6 }, right: { outside: 140, bark: 6 } },
      ),
      stroke('heartwood', shape([91, 54], [100, 46], [109, 54], [109, 146], [100, 154], [91, 146])),
      stroke('fine', lines([100, 58], [100, 142])),
      ...[48, 152].flatMap((y, index) => {
        const inward = index === 0 ? 10 : -10
        return [
          stroke('cambium', lines([94, y - inward * 0.4], [99.5, y + inward])),
          stroke('cambium', lines([106, y - inward * 0.4], [100.5, y + inward])),
        ]
      }),
      ...tie(100, 60, 86, 80, 3),
      ...tie(100, 114, 140, 80, 3),
    ],
    polarity: { base: [80, 196], tip: [80, 4] },
    meets: [
      [99.5, 58],
      [99.5, 142],
    ],
  },
  twoSevered: {
    strokes: [
      ...pot(64, 150, 76, 196, 58),
      ...limb(
        [
          [64, 160],
          [74, 120],
          [84, 84],
          [78, 28],
        ],
        16,
      ),
      ...limb(
        [
          [178, 196],
          [140, 140],
          [102, 86],
          [108, 28],
        ],
        16,
      ),
      ...tie(93, 70, 104, 34, 4),
      ...leaf([110, 40], 30, 42),
      ...leaf([106, 30], 120, 26),
      ...leaf([74, 36], 150, 36),
      ...knife([52, 62], [104, 50]),
      ...knife([116, 138], [160, 122]),
    ],
    polarity: { base: [64, 160], tip: [108, 28] },
  },
} satisfies Record<string, Cut>
