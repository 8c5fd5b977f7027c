import { type Phrase, phrase } from '../../trade/index.ts'
import { NEGLIGIBLE } from '../model/solve.ts'
import type { OrderForecast } from '../plan.ts'
import { poolSaid } from '../reading/pools.ts'
import { skillsOf } from '../reading/skills.ts'
import { courseOf } from '../rules/season-draft.ts'
import type { News } from './news.ts'
import type { Planned } from './planned.ts'

/** How near a piece of news is to what changed, the nearest last. */
const LEARNT_FROM = 1
const SAME_PLACE_OR_HANDS = 2
const SAME_FAMILY = 3
const SAME_KIND = 4
const ITSELF = 5

/** Where a start or an order draws on what is scarce: `space 3 12` is place 3 in week 12. */
type Scarce = string

/** What lies behind a change, the likeliest first. */
export interface Reasons {
  /** News that bears on a way by itself: its kind, its rootstocks or what is worked on it, its mothers, bench, hands, rate. */
  forWay(way: number): News | null
  forOrder(order: OrderForecast): News | null
  /** Scarce places, hands and mothers that a start or an order draws on, with a name to say. */
  scarceOfStart(way: number, week: number): ReadonlyMap<Scarce, Phrase>
  scarceOfOrder(order: OrderForecast): ReadonlyMap<Scarce, Phrase>
}

export function reasonsOf(planned: Planned, news: readonly News[]): Reasons {
  const { season, nursery } = planned
  const families = familiesOf(planned)
  const startsById = new Map(planned.starts.map(start => [start.id, start]))
  const indexOf = new Map(season.kinds.map(({ id }, kind) => [id, kind]))
  const kindsOf = new Map(news.map(each => [each, each.kinds.flatMap(id => indexOf.get(id) ?? [])]))
  const scarce = scarceNames(planned)

  const nearnessToWay = (each: News, w: number): number => {
    const way = season.ways[w]!
    const kinds = kindsOf.get(each)!
    if (kinds.includes(way.kind)) return SAME_KIND
    if (kinds.some(kind => families[kind] === families[way.kind])) return SAME_FAMILY
    const { cultivar } = each
    if (cultivar !== null) {
      const takes = way.courses.some(({ material }) =>
        material.some(({ pool }) => season.pools[pool]!.cultivar === cultivar),
      )
      if (takes || nursery.kinds.get(season.kinds[way.kind]!.id)?.cultivars.includes(cultivar))
        return SAME_FAMILY
    }
    const place = each.bench
      ? (nursery.benches.get(each.bench) ?? nursery.former.benches.get(each.bench))?.place
      : null
    const { area, labour } = way.courses[0]!
    if (place && area.some(({ place: at }) => season.places[at]!.place === place)) return SAME_PLACE_OR_HANDS
    if (labour.some(({ skill }) => each.skills.includes(skill))) return SAME_PLACE_OR_HANDS
    return each.protocol === way.protocol.id ? LEARNT_FROM : 0
  }

  const nearest = (nearness: (each: News) => number): News | null => {
    let best: News | null = null
    let bestOf = 0
    for (const each of news) {
      const near = nearness(each)
      if (near > bestOf || (near === bestOf && best && near > 0 && each.weight > best.weight)) {
        best = each
        bestOf = near
      }
    }
    return best
  }

  const waysOfOrder = new Map<string, number[]>(
    season.orders.map(({ id, kinds }) => [
      id,
      season.ways.flatMap(({ kind }, w) => (kinds.some(accepted => accepted.kind === kind) ? [w] : [])),
    ]),
  )
  const scarceOfStart = (w: number, week: number): Map<Scarce, Phrase> => {
    const course = courseOf(season, w, Math.max(0, week))
    const found = new Map<Scarce, Phrase>()
    const draws = (key: Scarce) => {
      const name = scarce.get(key)
      if (name !== undefined) found.set(key, name)
    }
    const first = week + course.firstOffset
    for (const { place, squareMetres } of course.area)
      for (const [k, area] of squareMetres.entries()) if (area > 0) draws(`space ${place} ${first + k}`)
    for (const { skill, perPlant } of course.labour)
      for (const [k, minutes] of perPlant.entries()) if (minutes > 0) draws(`hands ${skill} ${first + k}`)
    for (const { pool } of course.material) draws(`wood ${pool}`)
    return found
  }

  return {
    forWay: w => nearest(each => nearnessToWay(each, w)),
    forOrder: ({ order, ladders }) =>
      nearest(each => {
        if (each.order === order) return ITSELF
        if (each.batch !== null && ladders.some(({ batch }) => batch === each.batch)) return ITSELF
        return Math.max(0, ...(waysOfOrder.get(order) ?? []).map(w => nearnessToWay(each, w)))
      }),
    scarceOfStart,
    scarceOfOrder: ({ ladders }) =>
      new Map(
        ladders.flatMap(({ start }) => {
          const chosen = start === null ? undefined : startsById.get(start)
          return chosen ? [...scarceOfStart(chosen.way, chosen.week)] : []
        }),
      ),
  }
}

/** Kinds that are worked on each other, over any number of storeys, belong to one family, named by its first kind. */
function familiesOf({ season }: Planned): number[] {
  const families = season.kinds.map((_, kind) => kind)
  const first = (kind: number): number => (families[kind] === kind ? kind : first(families[kind]!))
  for (const { kind, courses } of season.ways)
    for (const stock of courses[0]?.rootstock?.kinds ?? []) families[first(kind)] = first(stock)
  return families.map((_, kind) => first(kind))
}

/** What is scarce by the duals of the relaxation, with the words for it. */
function scarceNames({ season, relaxed }: Planned): Map<Scarce, Phrase> {
  const names = new Map<Scarce, Phrase>()
  const skills = skillsOf(season)
  for (const { rule, subject, about, week, dual } of relaxed.duals) {
    if (dual >= -NEGLIGIBLE) continue
    if (rule === 'space')
      names.set(`space ${subject} ${week}`, phrase('the {place}', { place: phrase(about) }))
    if (rule === 'labour')
      skills.forEach((skill, s) => {
        if (subject & (1 << s))
          names.set(`hands ${skill} ${week}`, phrase('the hands for {skill}', { skill: phrase(skill) }))
      })
    if (rule === 'motherWeek' || rule === 'motherYear')
      names.set(`wood ${subject}`, poolSaid(season.pools[subject]!))
  }
  return names
}
