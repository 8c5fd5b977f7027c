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

interface Limits {
  readonly area: string
  readonly edges: string
}

export interface FunnelLayout {
  readonly x: Scale
  readonly y: Scale
  readonly worths: readonly number[]
  readonly shares: readonly number[]
  /** Between the limits, and the limits themselves: of 95 in 100, within the wider ones of 998 in 1000. */
  readonly near: Limits
  readonly far: Limits
  /** Places for the names of those outside, none upon another. */
  readonly names: readonly FunnelName[]
}

export const FUNNEL_HEIGHT = 300
const TOP = 12
const BOTTOM = 46
const CURVE_PIECES = 32
const LINE = 15
const LETTER = 7
const GAP = 10

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
  const begins = Math.max(0.4 * least, 0.02 * most)
  const limits = Array.from({ length: CURVE_PIECES + 1 }, (_, at) => {
    // Closer together where the funnel bends most.
    const worth = begins + (1.06 * most - begins) * (at / CURVE_PIECES) ** 2
    return { worth, ...funnelLimits(overall, worth) }
  })
  const { farLow, farHigh } = funnelLimits(overall, least)
  const shares = points.map(({ share }) => share)
  const twentieths = (share: number, round: (share: number) => number) =>
    round(Number((20 * share).toFixed(6))) / 20
  const from = twentieths(Math.min(farLow, ...shares), Math.floor)
  const to = twentieths(Math.max(farHigh, ...shares), Math.ceil)
  const y = linear(from, to, FUNNEL_HEIGHT - BOTTOM, TOP)
  const inside = (share: number) => y(Math.min(to, Math.max(from, share)))
  const area = (low: 'low' | 'farLow', high: 'high' | 'farHigh') => {
    const place = (one: (typeof limits)[number], edge: typeof low | typeof high) =>
      `${x(one.worth).toFixed(1)} ${inside(one[edge]).toFixed(1)}`
    const above = limits.map(one => place(one, high))
    const below = limits.map(one => place(one, low))
    return {
      area: `M${[...above, ...below.toReversed()].join('L')}Z`,
      edges: `M${above.join('L')}M${below.join('L')}`,
    }
  }
  const spans = Math.round(20 * (to - from))
  const step = spans > 10 ? 4 : spans > 5 ? 2 : 1
  return {
    x,
    y,
    worths: ticks(most, right - left < 420 ? 3 : 6).filter(worth => worth <= 1.06 * most),
    shares: Array.from({ length: Math.floor(spans / step) + 1 }, (_, at) => from + (at * step) / 20),
    near: area('low', 'high'),
    far: area('farLow', 'farHigh'),
    names: placeNames(points, x, y),
  }
}

/** Names stand beside their points, on the side that is free; those that would touch are moved down, line by line. */
function placeNames(points: readonly FunnelPoint[], x: Scale, y: Scale): readonly FunnelName[] {
  const placed: FunnelName[] = []
  const outside = points
    .filter(({ standing }) => standing !== 'within')
    .toSorted((a, b) => b.share - a.share || a.worth - b.worth)
  for (const { key, name, share, worth } of outside) {
    const length = LETTER * name.length + GAP
    /** Other points that the name would cover on that side. */
    const covers = (toLeft: boolean) =>
      points.filter(other => {
        const right = (x(other.worth) - x(worth)) * (toLeft ? -1 : 1)
        return other.key !== key && right > 0 && right < length && Math.abs(y(other.share) - y(share)) < LINE
      }).length
    const inward = worth > x.to / 2
    const room = inward ? x(x.to) - x(worth) : x(worth) - x(0)
    const toLeft = room >= length && covers(!inward) < covers(inward) ? !inward : inward
    const above = placed.filter(one => one.toLeft === toLeft).at(-1)
    const wanted = y(share) + 4
    const at = above === undefined ? wanted : Math.max(wanted, above.y + LINE)
    placed.push({ key, x: x(worth) + (toLeft ? -GAP : GAP), y: at, toLeft })
  }
  return placed
}
