import {
  archFace,
  bud,
  knife,
  label,
  measure,
  move,
  stem,
  stick,
  stroke,
  stump,
  tie,
  waxCap,
} from '../parts.ts'
import { blob, flowing, lines, type Point, shape } from '../path.ts'
import { section } from '../section.ts'
import type { Cut, Stroke } from '../stroke.ts'

/** One of the flaps of bark, hanging outward from its foot, its green side in. */
const flap = (side: -1 | 1): Stroke[] => {
  const x = (from: number) => 100 + side * from
  const outer: Point[] = [
    [x(21), 132],
    [x(40), 136],
    [x(58), 152],
    [x(62), 180],
  ]
  const inner: Point[] = [
    [x(20), 138],
    [x(38), 144],
    [x(50), 158],
    [x(52), 180],
  ]
  return [
    stroke('bark', `${flowing(outer)}${flowing([...inner].reverse()).replace('M', 'L')}Z`),
    stroke('edge', `${flowing(outer)}${flowing([...inner].reverse()).replace('M', 'L')}Z`),
    stroke('cambium', flowing(outer.map(([px, py]): Point => [px, py - 1]))),
  ]
}

export const barkGraftCuts = {
  barkSlit: {
    strokes: [
      ...stem(100, 196, 76, 112),
      ...stump(100, 76, 112),
      stroke('wood', shape([92, 94], [100, 92], [108, 94], [101, 150])),
      stroke('cambium', lines([94, 95], [100.5, 147])),
      stroke('cambium', lines([106, 95], [101.5, 147])),
      stroke('edge', lines([92, 93], [101, 152], [108, 93])),
      ...knife([100, 48], [100, 148]),
      measure(174, 92, 152),
    ],
    polarity: { base: [100, 196], tip: [100, 76] },
  },
  barkScion: {
    strokes: [
      ...section(
        [
          [40, 14],
          [40, 148],
          [50, 178],
          [56, 178],
          [60, 92],
          [76, 92],
          [76, 14],
        ],
        { left: { outside: 40, bark: 6 }, right: { outside: 76, bark: 6 } },
      ),
      bud([40, 46], -1, 9),
      bud([76, 70], 1, 9),
      ...stick(142, 96, 14, 36, [40]),
      ...archFace(142, 90, 178, 36),
      stroke('edge', lines([124, 92], [124, 178], [160, 178], [160, 92])),
      ...knife([96, 84], [80, 108], [70, 184]),
      measure(108, 92, 178),
    ],
    polarity: { base: [54, 178], tip: [58, 14] },
  },
  barkSet: {
    strokes: [
      stroke('heartwood', shape([96, 82], [194, 82], [194, 196], [96, 196])),
      stroke('edge', lines([96, 82], [194, 82])),
      stroke('cambium', lines([96, 82], [96, 196])),
      stroke('fine', `${lines([124, 90], [124, 194])}${lines([150, 90], [150, 194])}`),
      ...section(
        [
          [62, 8],
          [62, 82],
          [70, 128],
          [90, 172],
          [96, 176],
          [96, 82],
          [106, 82],
          [106, 8],
        ],
        { left: { outside: 62, bark: 6 }, right: { outside: 106, bark: 6 } },
      ),
      stroke(
        'bark',
        shape([60, 86], [74, 142], [96, 178], [96, 196], [88, 196], [88, 184], [62, 146], [50, 90]),
      ),
      stroke('edge', lines([88, 196], [88, 184], [62, 146], [50, 90], [60, 86], [74, 142], [96, 178])),
      stroke('cambium', lines([62, 90], [75, 140], [95, 176])),
      bud([62, 40], -1, 9),
      ...move([30, 24], [30, 74]),
    ],
    polarity: { base: [150, 196], tip: [84, 8] },
    meets: [[96, 82]],
  },
  barkSealed: {
    strokes: [
      ...stem(100, 196, 88, 112),
      ...stick(100, 96, 14, 20, [36, 66], 7),
      ...stick(60, 92, 24, 18, [46, 70], 7),
      ...stick(140, 92, 24, 18, [46, 70], 7),
      stroke(
        'wax',
        blob([
          [40, 104],
          [44, 82],
          [100, 70],
          [156, 82],
          [160, 104],
          [132, 116],
          [122, 148],
          [108, 118],
          [100, 156],
          [92, 118],
          [78, 148],
          [66, 116],
        ]),
      ),
      stroke('tie', shape([42, 164], [158, 158], [158, 168], [42, 174])),
      stroke('tie', shape([42, 178], [158, 172], [158, 182], [42, 188])),
      waxCap(100, 14, 20),
      waxCap(60, 24, 18),
      waxCap(140, 24, 18),
      ...label([152, 157]),
    ],
    polarity: { base: [100, 196], tip: [100, 14] },
  },
  flapStock: {
    strokes: [
      ...stem(100, 196, 138, 42),
      ...flap(-1),
      ...flap(1),
      stroke('bark', shape([88, 138], [112, 138], [114, 186], [86, 186])),
      stroke('cambium', `${lines([89, 140], [87, 184])}${lines([111, 140], [113, 184])}`),
      stroke('edge', shape([88, 138], [112, 138], [114, 186], [86, 186])),
      stroke('gone', shape([84, 136], [84, 62], [116, 62], [116, 136])),
      stroke('wood', shape([80, 130], [120, 130], [120, 138], [80, 138])),
      ...knife([58, 128], [146, 126]),
      ...move([132, 72], [158, 92], [170, 128]),
      ...move([68, 72], [42, 92], [30, 128]),
    ],
    polarity: { base: [100, 196], tip: [100, 130] },
  },
  flapScion: {
    strokes: [
      ...stick(100, 92, 12, 44, [40, 68]),
      stroke('bark', shape([78, 90], [122, 90], [118, 182], [82, 182])),
      stroke(
        'wood',
        `${flowing([
          [86, 182],
          [86, 130],
          [91, 106],
          [100, 96],
          [109, 106],
          [114, 130],
          [114, 182],
        ])}Z`,
      ),
      stroke(
        'cambium',
        flowing([
          [89, 181],
          [89, 132],
          [93, 110],
          [100, 102],
          [107, 110],
          [111, 132],
          [111, 181],
        ]),
      ),
      stroke('edge', lines([78, 90], [80, 120], [82, 182], [118, 182], [120, 120], [122, 90])),
      ...knife([144, 84], [136, 132], [132, 186]),
      measure(54, 92, 182),
    ],
    polarity: { base: [100, 182], tip: [100, 12] },
  },
  flapSet: {
    strokes: [
      ...stem(100, 196, 158, 44),
      ...stick(100, 92, 12, 40, [34, 60]),
      stroke('bark', shape([82, 88], [118, 88], [118, 160], [82, 160])),
      stroke('bark', shape([88, 92], [112, 92], [114, 164], [86, 164])),
      stroke('cambium', `${lines([87, 92], [85, 160])}${lines([113, 92], [115, 160])}`),
      stroke('edge', shape([88, 92], [112, 92], [114, 164], [86, 164])),
      stroke('bark', shape([76, 96], [83, 94], [83, 164], [78, 166])),
      stroke('bark', shape([124, 96], [117, 94], [117, 164], [122, 166])),
      stroke(
        'edge',
        `${shape([76, 96], [83, 94], [83, 164], [78, 166])}${shape([124, 96], [117, 94], [117, 164], [122, 166])}`,
      ),
      stroke('tie', shape([74, 112], [126, 106], [126, 112], [74, 118])),
      stroke('tie', shape([74, 128], [126, 122], [126, 128], [74, 134])),
      stroke('tie', shape([74, 144], [126, 138], [126, 144], [74, 150])),
      ...move([44, 168], [50, 128], [68, 104]),
      ...move([156, 168], [150, 128], [132, 104]),
    ],
    polarity: { base: [100, 196], tip: [100, 12] },
    meets: [
      [87, 94],
      [113, 94],
    ],
  },
  flapWrapped: {
    strokes: [
      ...stem(100, 196, 150, 44),
      ...stick(100, 86, 12, 30, [34, 58]),
      stroke('tool', shape([76, 84], [124, 84], [124, 166], [76, 166])),
      stroke(
        'fine',
        `${lines([84, 100], [116, 96])}${lines([84, 122], [116, 118])}${lines([84, 146], [116, 142])}`,
      ),
      stroke(
        'film',
        blob([
          [84, 72],
          [72, 84],
          [70, 168],
          [84, 180],
          [116, 180],
          [130, 168],
          [128, 84],
          [116, 72],
        ]),
      ),
      ...tie(100, 72, 82, 34, 1),
      ...tie(100, 172, 184, 46, 1),
      waxCap(100, 12, 30),
      ...label([122, 154]),
    ],
    polarity: { base: [100, 196], tip: [100, 12] },
  },
} satisfies Record<string, Cut>
