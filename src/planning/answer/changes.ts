import { type Phrase, phrase } from '../../trade/index.ts'
import type { Change, OrderForecast } from '../plan.ts'
import { baselineOf, chanceDifferences, type StartDifference, startDifferences } from './differences.ts'
import { type News, newsOf } from './news.ts'
import { type Planned, startedNoun, weekSaid, weeksSaid } from './planned.ts'
import { type Reasons, reasonsOf } from './reasons.ts'

/** Numbers that differ by no more than this are the same start in another week. */
const SAME_START = 0.1
/** More changes than this to one way are said together. */
const TOLD_APART = 3

/** One change before its reason is looked for. */
interface Told {
  readonly says: Phrase
  readonly order: Change['order']
  readonly start: string | null
  readonly size: number
  /** An order that is surer than before owes it to what is planned anew, whatever came in. */
  readonly isSurer: boolean
  readonly direct: News | null
  readonly scarce: ReadonlyMap<string, Phrase>
}

/**
 * What differs from the plan accepted last or, where none is, from the one shown before: orders that are more or less
 * sure, then starts; each with the entry that lies behind it. An entry bears on its own kind, on what is worked on it or
 * it on, on its mothers, bench, hands or rate. Where none does, but a start draws on a scarce place, hand or mother on
 * which another changed start draws, that one's reason is its reason. What no entry explains is said at the end as such.
 */
export function changesOf(planned: Planned, orders: readonly OrderForecast[]): Change[] {
  const baseline = baselineOf(planned)
  if (!baseline) return []
  const news = newsOf(planned)
  const reasons = reasonsOf(planned, news)
  const told: Told[] = [
    ...chanceDifferences(orders, baseline).map(({ order, before, now }): Told => {
      const forecast = orders.find(one => one.order === order)!
      return {
        says: phrase('order {order} is now {now} in 100 instead of {before}', {
          order,
          now: inHundred(now),
          before: inHundred(before),
        }),
        order,
        start: null,
        size: Math.abs(now - before),
        isSurer: now > before,
        direct: reasons.forOrder(forecast),
        scarce: reasons.scarceOfOrder(forecast),
      }
    }),
    ...[...startDifferences(planned, baseline)].flatMap(([way, of]) => startsTold(planned, reasons, way, of)),
  ]
  const reached = new Map<string, News>()
  for (const { direct, scarce } of told)
    if (direct) for (const key of scarce.keys()) if (!reached.has(key)) reached.set(key, direct)

  const explained: (Told & { readonly because: Phrase; readonly news: News })[] = []
  const unexplained: Told[] = []
  for (const each of told) {
    const shared = each.direct ? undefined : [...each.scarce].find(([key]) => reached.has(key))
    const behind = each.direct ?? (shared && reached.get(shared[0]))
    if (!behind) unexplained.push(each)
    else {
      const because = shared
        ? phrase('{news}, and both draw on {scarce}', { news: behind.text, scarce: shared[1] })
        : behind.text
      explained.push({ ...each, because, news: behind })
    }
  }
  return [
    ...explained
      .sort(
        (a, b) =>
          Number(b.order !== null) - Number(a.order !== null) ||
          Number(b.direct !== null) - Number(a.direct !== null) ||
          b.size - a.size,
      )
      .map(({ says, isSurer, because, order, start, news: behind }) => ({
        sentence: isSurer
          ? phrase('{Says}: planned anew, since {because}.', { says, because })
          : phrase('{Says}, since {because}.', { says, because }),
        because,
        order: order ?? behind.order,
        start,
        batch: behind.batch,
      })),
    ...unexplainedSaid(unexplained),
  ]
}

const inHundred = (chance: number): number => Math.round(100 * chance)

function startsTold(
  { season }: Planned,
  reasons: Reasons,
  way: number,
  of: readonly StartDifference[],
): Told[] {
  const { method, kind: k } = season.ways[way]!
  const kind = season.kinds[k]!.name
  const noun = (number: number) => startedNoun(method, number)
  const direct = reasons.forWay(way)
  const tell = (says: Phrase, among: readonly StartDifference[]): Told => ({
    says,
    order: null,
    start: among.at(-1)!.id,
    size: among.reduce((sum, { before, now }) => sum + Math.abs(now - before), 0),
    isSurer: false,
    direct,
    scarce: new Map(among.flatMap(({ week }) => [...reasons.scarceOfStart(way, week)])),
  })
  const week = (one: StartDifference) => phrase('week {week}', { week: weekSaid(season, one.week) })
  const [less, more] = of.length === 2 && of[0]!.now > of[0]!.before ? [of[1]!, of[0]!] : [of[0]!, of[1]!]
  if (of.length === 2 && isMove(less, more)) {
    const number = more.now - more.before
    const move = { number, noun: noun(number), kind, from: week(less), to: week(more) }
    return [tell(phrase('{number} {noun} of {kind} move from {from} to {to}', move), [less, more])]
  }
  if (of.length > TOLD_APART) {
    const before = of.reduce((sum, one) => sum + one.before, 0)
    const now = of.reduce((sum, one) => sum + one.now, 0)
    const weeks = weeksSaid(season, of[0]!.week, of.at(-1)!.week)
    const says = phrase('{now} {noun} of {kind} in {weeks} instead of {before}, in other weeks than before', {
      now,
      noun: noun(now),
      kind,
      weeks,
      before,
    })
    return [tell(says, of)]
  }
  return of.map(one => {
    const by = one.now - one.before
    const number = one.now === 0 ? one.before : Math.abs(by)
    const parts = { number, noun: noun(number), kind, week: week(one) }
    if (one.before === 0)
      return tell(phrase('{number} {noun} of {kind} in {week}, not planned before', parts), [one])
    if (one.now === 0) return tell(phrase('none of the {number} {noun} of {kind} in {week}', parts), [one])
    if (by > 0) return tell(phrase('{number} more {noun} of {kind} in {week}', parts), [one])
    return tell(phrase('{number} fewer {noun} of {kind} in {week}', parts), [one])
  })
}

function isMove(less: StartDifference, more: StartDifference): boolean {
  const gone = less.before - less.now
  const come = more.now - more.before
  return gone > 0 && come > 0 && Math.abs(gone - come) <= SAME_START * Math.max(gone, come)
}

/** What nothing entered explains, in one sentence: with equally good ways to the same end a plan may take another. */
function unexplainedSaid(told: readonly Told[]): Change[] {
  if (told.length === 0) return []
  const orders = told.filter(({ order }) => order !== null).length
  const starts = told.length - orders
  const changed = phrase(starts === 1 ? '{starts} kind of start changes' : '{starts} kinds of start change', {
    starts,
  })
  const surer = phrase(
    orders === 1
      ? '{orders} order is a little more or less sure'
      : '{orders} orders are a little more or less sure',
    { orders },
  )
  const because = phrase(
    'nothing entered since then bears on it: the plan was worked out anew and took a way about as good',
  )
  const both = phrase('{changed} and {surer}', { changed, surer })
  const what = orders === 0 ? changed : starts === 0 ? surer : both
  return [
    {
      sentence: phrase('{What}; {because}.', { what, because }),
      because,
      order: null,
      start: null,
      batch: null,
    },
  ]
}
