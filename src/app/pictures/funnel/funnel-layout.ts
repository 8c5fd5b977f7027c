import { funnelLimits } from '../../../science/index.ts'
import { linear, type Scale, ticks } from '../scale.ts'

/** One that is compared: its share, how many single plants its counts are worth, where it stands against the limits. */
export interface FunnelPoint {
  readonly key: string
  readonly name: string
  readonly share: number
  readonly worth: number
  readonly standing: 'far-below' | 'below' | 'within' | 'above' | 'far-above'
}

export interface FunnelName {
  readonly key: string
  readonly x: number
  readonly y: number
  readonly toLeft: boolean
}

export interface FunnelLayout {
  readonly x: Scale
  readonly y: Scale
  readonly worths: readonly number[]
  readonly shares: readonly number[]
  /** Areas between the limits: 95 in 100 within the wider one of 998 in 1000. */
  readonly near: string
  readonly far: string
  /** Places for the names of those outside, none upon another. */
  readonly names: readonly FunnelName[]
}

export const FUNNEL_HEIGHT = 300
const TOP = 12
const BOTTOM = 46
const CURVE_PIECES = 48
const LINE = 15

/** Limits, points and names of a funnel, from `left` to `right`. */
export function layOutFunnel(
  overall: number,
  points: readonly FunnelPoint[],
  left: number,
  right: number,
): FunnelLayout {
  const most = Math.max(...points.map(({ worth }) => worth))
  const least = Math.min(...points.map(({ worth }) => worth))
  const x = linear(0, 1.06 * most, left, right)
  // Where hardly any are counted limits lie from 0 to 100: what is shown begins a little before the first point.
  const begins = Math.max(0.6 * least, 0.02 * most)
  const limits = Array.from({ length: CURVE_PIECES + 1 }, (_, at) => {
    // Closer together where the funnel bends most.
    const worth = begins + (1.06 * most - begins) * (at / CURVE_PIECES) ** 2
    return { worth, ...funnelLimits(overall, worth) }
  })
  const { low: lowAtFirst, high: highAtFirst } = funnelLimits(overall, least)
  const shares = points.map(({ share }) => share)
  const from = Math.floor(10 * Math.min(lowAtFirst, ...shares)) / 10
  const to = Math.ceil(10 * Math.max(highAtFirst, ...shares)) / 10
  const y = linear(from, to, FUNNEL_HEIGHT - BOTTOM, TOP)
  const inside = (share: number) => y(Math.min(to, Math.max(from, share)))
  const area = (low: 'low' | 'farLow', high: 'high' | 'farHigh') => {
    const place = (one: (typeof limits)[number], edge: typeof low | typeof high) =>
      `${x(one.worth).toFixed(1)} ${inside(one[edge]).toFixed(1)}`
    const back = limits.toReversed().map(one => place(one, low))
    return `M${[...limits.map(one => place(one, high)), ...back].join('L')}Z`
  }
  const tenths = Math.round(10 * (to - from))
  const step = tenths > 5 ? 2 : 1
  return {
    x,
    y,
    worths: ticks(most, right - left < 420 ? 3 : 6).filter(worth => worth <= 1.06 * most),
    shares: Array.from({ length: Math.floor(tenths / step) + 1 }, (_, at) => from + (at * step) / 10),
    near: area('low', 'high'),
    far: area('farLow', 'farHigh'),
    names: placeNames(points, x, y),
  }
}

/** Names stand beside their points, towards the middle; those that would touch are moved down, line by line. */
function placeNames(points: readonly FunnelPoint[], x: Scale, y: Scale): readonly FunnelName[] {
  const placed: FunnelName[] = []
  const outside = points
    .filter(({ standing }) => standing !== 'within')
    .toSorted((a, b) => b.share - a.share || a.worth - b.worth)
  for (const { key, share, worth } of outside) {
    const toLeft = worth > x.to / 2
    const above = placed.filter(name => name.toLeft === toLeft).at(-1)
    const wanted = y(share) + 4
    const at = above === undefined ? wanted : Math.max(wanted, above.y + LINE)
    placed.push({ key, x: x(worth) + (toLeft ? -10 : 10), y: at, toLeft })
  }
  return placed
}
