import {
  archFace,
  bud,
  goneLeaf,
  knife,
  label,
  leaf,
  measure,
  move,
  pot,
  stem,
  stick,
  stroke,
  tie,
} from '../parts.ts'
import { blob, flowing, lines } from '../path.ts'
import { section } from '../section.ts'
import type { Cut, Stroke } from '../stroke.ts'

const veneerStock = (): Stroke[] => [
  ...stem(100, 196, 4, 46),
  stroke(
    'wood',
    `${flowing([
      [88, 146],
      [86, 96],
      [92, 62],
      [100, 46],
      [108, 62],
      [114, 96],
      [112, 146],
    ])}Z`,
  ),
  stroke(
    'cambium',
    flowing([
      [91, 143],
      [89.5, 98],
      [95, 66],
      [100, 54],
      [105, 66],
      [110.5, 98],
      [109, 143],
    ]),
  ),
  stroke('edge', lines([86, 146], [114, 146])),
]

/** Stock and scion of a veneer graft from the side: the scion's foot stands in the notch. */
const veneerSide = (): Stroke[] => [
  ...section(
    [
      [44, 196],
      [44, 156],
      [56, 146],
      [52, 100],
      [44, 48],
      [44, 4],
      [88, 4],
      [88, 196],
    ],
    {
      left: { outside: 44, bark: 6 },
      right: { outside: 88, bark: 6 },
    },
  ),
  ...section(
    [
      [30, 10],
      [30, 118],
      [44, 156],
      [56, 146],
      [52, 100],
      [44, 48],
      [44, 10],
    ],
    {
      left: { outside: 30, bark: 5 },
    },
  ),
]

/** The same from the front: where the scion's edges lie, cambium runs down on both sides and across the foot. */
const veneerFront = (): Stroke[] => [
  ...stem(150, 196, 4, 62),
  ...stem(150, 146, 14, 30, { cutTip: true }),
  stroke(
    'bud',
    blob([
      [150, 2],
      [157, 12],
      [150, 20],
      [143, 12],
    ]),
  ),
  stroke('cambium', lines([135, 54], [135, 146], [165, 146], [165, 54])),
]

export const veneerCuts = {
  veneerStock: {
    strokes: [
      ...veneerStock(),
      ...leaf([123, 24], 30, 44),
      ...knife([60, 44], [72, 90], [74, 140]),
      ...knife([58, 164], [92, 148]),
      measure(150, 46, 146),
    ],
    polarity: { base: [100, 196], tip: [100, 4] },
  },
  veneerScion: {
    strokes: [
      ...stick(60, 90, 26, 30, [54]),
      stroke(
        'bud',
        blob([
          [60, 8],
          [68, 22],
          [60, 30],
          [52, 22],
        ]),
      ),
      ...archFace(60, 84, 172, 30),
      stroke('edge', lines([45, 86], [45, 172], [75, 172], [75, 86])),
      ...section(
        [
          [126, 30],
          [126, 140],
          [140, 176],
          [152, 164],
          [154, 84],
          [154, 30],
        ],
        { left: { outside: 126, bark: 5 } },
      ),
      bud([126, 60], -1, 9),
      ...knife([170, 74], [166, 176]),
      ...knife([110, 130], [136, 186]),
    ],
    polarity: { base: [60, 172], tip: [60, 8] },
  },
  veneerFit: {
    strokes: [...veneerSide(), bud([30, 44], -1, 9), ...veneerFront(), ...move([4, 104], [24, 104])],
    polarity: { base: [66, 196], tip: [37, 10] },
    meets: [
      [135, 100],
      [165, 100],
      [150, 146],
    ],
  },
  veneerTied: {
    strokes: [
      ...stem(108, 196, 4, 30),
      ...leaf([123, 30], 30, 46),
      ...stick(84, 120, 22, 16, [60]),
      stroke(
        'bud',
        blob([
          [84, 6],
          [90, 16],
          [84, 24],
          [78, 16],
        ]),
      ),
      ...tie(100, 76, 160, 44),
      ...label([122, 152]),
      ...move([48, 158], [42, 118], [48, 80]),
    ],
    polarity: { base: [108, 196], tip: [84, 6] },
  },
  veneerTopped: {
    strokes: [
      ...pot(106, 158, 80, 196, 62),
      ...stem(108, 166, 78, 16, { cutTip: true }),
      stroke('gone', `${lines([101, 76], [102, 12])}${lines([115, 76], [114, 12])}`),
      ...goneLeaf([114, 34], 30, 42),
      ...stick(94, 122, 56, 10, []),
      ...leaf([92, 72], 150, 42),
      ...leaf([94, 60], 110, 44),
      ...leaf([96, 64], 70, 36),
      ...tie(104, 100, 140, 26),
      ...knife([138, 70], [120, 76], [96, 82]),
    ],
    polarity: { base: [108, 166], tip: [94, 56] },
  },
} satisfies Record<string, Cut>
