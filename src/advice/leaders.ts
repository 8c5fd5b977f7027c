import type { Against, Answer, Beaten, WayAnswer, WishId } from './answer.ts'
import { WISHES } from './answer.ts'

/** Differences smaller than this share are no lead. */
const SAME = 1e-9

/** Which way has given most of the wanted fruit by each year, expected; only the years in which that changes. */
export function leadersOf(ways: readonly WayAnswer[], years: number): Answer['leaders'] {
  const out: { fromYear: number; way: string }[] = []
  for (let year = 1; year <= years; year++) {
    let best: WayAnswer | undefined
    for (const way of ways) {
      const amount = way.cropSoFar.mean[year]!
      if (amount > 0 && amount > (best?.cropSoFar.mean[year] ?? 0) * (1 + SAME)) best = way
    }
    if (best !== undefined && out.at(-1)?.way !== best.way.id) out.push({ fromYear: year, way: best.way.id })
  }
  return out
}

/** What each wish is measured by: higher is better. Ties go to what comes next in the list. */
const measures: Readonly<Record<WishId, (way: WayAnswer) => readonly number[]>> = {
  soonest: way => [
    -way.firstFruit.middle,
    way.fruitBy.reduce((sum, share) => sum + share, 0),
    way.trueShare,
    -way.spend,
  ],
  'most fruit': way => [way.cropSoFar.mean.at(-1)!, -way.spend],
  money: way => [way.presentValue.mean, -way.spend],
  'sure to live': way => [way.survives * way.trueShare, -way.spend],
  cheapest: way => [-way.spend, way.cropSoFar.mean.at(-1)!],
}

const beats = (a: readonly number[], b: readonly number[]): boolean => {
  for (let i = 0; i < a.length; i++) {
    if (a[i]! === b[i]!) continue
    return a[i]! > b[i]!
  }
  return false
}

/** A way serves a wish only where it gives the wanted fruit: at least this share of what the best gives. */
const SOME_FRUIT = 0.02

/** Reasons that shut a way out, as long as another is left. */
const shutsOut: ReadonlySet<Against> = new Set<Against>(['not offered', 'too dear', 'too late', 'too big'])

export function bestOf(ways: readonly WayAnswer[]): Answer['best'] {
  const fruit = (way: WayAnswer) => way.cropSoFar.mean.at(-1)!
  const most = Math.max(0, ...ways.map(fruit))
  const able = ways.filter(way => fruit(way) > 0 && fruit(way) >= SOME_FRUIT * most)
  const allowed = able.filter(way => !way.against.some(reason => shutsOut.has(reason)))
  const field = allowed.length > 0 ? allowed : able
  return Object.fromEntries(
    WISHES.map(wish => {
      const measure = measures[wish]
      let best: WayAnswer | undefined
      for (const way of field) if (best === undefined || beats(measure(way), measure(best))) best = way
      const none =
        best === undefined ||
        (wish === 'soonest' && !Number.isFinite(best.firstFruit.middle)) ||
        (wish === 'money' && best.presentValue.mean <= 0)
      return [wish, none ? null : best!.way.id]
    }),
  ) as Record<WishId, string | null>
}

/** Everything that the table compares, so that higher is better. */
const columns = (way: WayAnswer): readonly number[] => [
  -way.firstFruit.middle,
  way.fruitBy.at(-1)!,
  way.trueShare,
  way.survives,
  -way.spend,
  way.cropSoFar.mean.at(-1)!,
  way.presentValue.mean,
]

/** Ways for which another is at least as good in every column and better in one; the best of those others is named. */
export function beatenWays(ways: readonly WayAnswer[]): readonly Beaten[] {
  return ways.flatMap(way => {
    const own = columns(way)
    const by = ways
      .filter(other => {
        if (other === way) return false
        const theirs = columns(other)
        return own.every((value, i) => theirs[i]! >= value) && own.some((value, i) => theirs[i]! > value)
      })
      .sort((a, b) => b.presentValue.mean - a.presentValue.mean)[0]
    return by === undefined ? [] : [{ way: way.way.id, by: by.way.id }]
  })
}
