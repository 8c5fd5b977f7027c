import { weekNumber } from '../../science/index.ts'
import { listed, type Phrase, phrase, type Skill } from '../../trade/index.ts'
import { weekSaid, weeksSaid } from '../answer/planned.ts'
import type { Plan } from '../plan.ts'
import { poolSaid } from '../reading/pools.ts'
import { courseOf } from '../rules/season-draft.ts'
import type { MotherPool, Season, SeasonStart } from '../season.ts'

/** Of a start beside a plan, the first thing that is lacking, in words; null where it fits. */
export type LackOf = (start: SeasonStart) => Phrase | null

const inWeek = (season: Season, week: number): Phrase =>
  phrase(' in {weeks}', { weeks: weeksSaid(season, week, week) })

/** Rounding of the plan's loads. */
const SLACK = 0.05

type PlanLoads = Pick<Plan, 'loads' | 'firstWeek'>

/**
 * Bench space, hands, wood, rootstocks and licences that a plan leaves free, as expected. Overtime and lent area are not
 * counted on, nor wood in store.
 * @param rootstocks by kind, how many are there in each week beside all that the plan needs, as surely as wished
 */
export function leftFree(
  season: Season,
  plan: PlanLoads,
  starts: readonly SeasonStart[],
  rootstocks: ReadonlyMap<number, ArrayLike<number>>,
): LackOf {
  const lacks = [...besideAll(season, plan, starts, null), rootstocksLeft(season, rootstocks)]
  return start => {
    for (const lackOf of lacks) {
      const lack = lackOf(start)
      if (lack !== null) return lack
    }
    return null
  }
}

/**
 * Of bench space, hands, wood and licences, all that a start of the plan would lack if it were begun otherwise; what the
 * plan gave it, by overtime or lent area too, it may take.
 * @param others all starts of the plan but the one that is begun otherwise
 */
export function freeInstead(
  season: Season,
  plan: PlanLoads,
  others: readonly SeasonStart[],
  instead: SeasonStart,
): (start: SeasonStart) => readonly Phrase[] {
  const lacks = besideAll(season, plan, others, instead)
  return start => lacks.flatMap(lackOf => lackOf(start) ?? [])
}

/** @param instead a start that is in the plan's loads and not among the starts: what it takes is free for another */
function besideAll(
  season: Season,
  plan: PlanLoads,
  starts: readonly SeasonStart[],
  instead: SeasonStart | null,
): readonly LackOf[] {
  const shift = season.firstWeek - weekNumber(plan.firstWeek)
  return [
    spaceLeft(season, plan, shift, instead),
    handsLeft(season, plan, shift, instead),
    woodLeft(season, starts, instead),
    licenceLeft(season, starts, instead),
  ]
}

function spaceLeft(season: Season, { loads }: PlanLoads, shift: number, instead: SeasonStart | null): LackOf {
  const free = season.places.map(({ place, squareMetres }) => {
    const load = loads.find(({ what, id }) => what === 'place' && id === place)
    return squareMetres.map((area, week) => area - (load?.expected[week + shift] ?? 0))
  })
  if (instead)
    for (const { place, week, squareMetres } of areaOf(season, instead))
      free[place]![week] = squareMetres + Math.max(0, free[place]![week]!)
  return start => {
    for (const { place, week, squareMetres } of areaOf(season, start))
      if (squareMetres > free[place]![week]! + SLACK)
        return phrase('the {place} is full{week}', {
          place: phrase(season.places[place]!.place),
          week: inWeek(season, week),
        })
    return null
  }
}

/** What a start takes of places as expected, week by week. */
function* areaOf(season: Season, { way, week, number }: SeasonStart) {
  const { area, firstOffset } = courseOf(season, way, week)
  for (const { place, squareMetres } of area)
    for (let k = 0; k < squareMetres.length; k++) {
      const at = week + firstOffset + k
      if (at >= 0 && at < season.weeks) yield { place, week: at, squareMetres: number * squareMetres[k]! }
    }
}

/** One person's hour is spent once: for every set of skills, those who have any of them cover what is asked of them all. */
function handsLeft(season: Season, { loads }: PlanLoads, shift: number, instead: SeasonStart | null): LackOf {
  const skills = [...new Set(season.people.flatMap(person => person.skills))].sort()
  const bitsOf = (of: readonly Skill[]) => of.reduce((bits, skill) => bits | (1 << skills.indexOf(skill)), 0)
  const people = season.people.map(person => ({ bits: bitsOf(person.skills), minutes: person.minutes }))
  const asked = skills.map(skill => loads.find(({ what, id }) => what === 'skill' && id === skill)?.expected)
  const freeBySet = new Map<number, Float64Array>()
  const freeIn = (week: number): Float64Array => {
    const known = freeBySet.get(week)
    if (known) return known
    const free = new Float64Array(1 << skills.length)
    for (let set = 1; set < free.length; set++) {
      for (const { bits, minutes } of people) if (bits & set) free[set]! += minutes[week]!
      skills.forEach((_, s) => {
        if (set & (1 << s)) free[set]! -= 60 * (asked[s]?.[week + shift] ?? 0)
      })
    }
    if (instead) {
      const own = minutesOf(season, instead, week, skills)
      for (let set = 1; set < free.length; set++) free[set] = ofSet(own, set) + Math.max(0, free[set]!)
    }
    freeBySet.set(week, free)
    return free
  }
  return start => {
    const { labour, firstOffset } = courseOf(season, start.way, start.week)
    const length = Math.max(0, ...labour.map(({ perPlant }) => perPlant.length))
    for (let k = 0; k < length; k++) {
      const at = start.week + firstOffset + k
      if (at < 0 || at >= season.weeks) continue
      const more = minutesOf(season, start, at, skills)
      const needed = more.reduce((bits, minutes, s) => (minutes > SLACK ? bits | (1 << s) : bits), 0)
      if (needed === 0) continue
      const free = freeIn(at)
      for (let set = 1; set < free.length; set++) {
        if (!(set & needed)) continue
        if (ofSet(more, set) > Math.max(0, free[set]!) + 60 * SLACK)
          return phrase('hands for {skills} are all taken{week}', {
            skills: listed(skills.filter((_, s) => needed & set & (1 << s)).map(skill => phrase(skill))),
            week: inWeek(season, at),
          })
      }
    }
    const none = labour.find(({ skill }) => !skills.includes(skill))
    return none ? phrase('no one has the skill: {skill}', { skill: phrase(none.skill) }) : null
  }
}

/** The minutes of each skill that a start takes in a week as expected. */
function minutesOf(
  season: Season,
  { way, week, number }: SeasonStart,
  at: number,
  skills: readonly Skill[],
): number[] {
  const { labour, firstOffset } = courseOf(season, way, week)
  const k = at - week - firstOffset
  return skills.map(skill =>
    labour
      .filter(work => work.skill === skill)
      .reduce((sum, work) => sum + number * (work.perPlant[k] ?? 0) + (work.perBatch[k] ?? 0), 0),
  )
}

const ofSet = (minutes: readonly number[], set: number): number =>
  minutes.reduce((sum, each, s) => (set & (1 << s) ? sum + each : sum), 0)

/** Wood is cut as late as it can be: in the week in which it is used or, where the mothers give none, before. */
function woodLeft(season: Season, starts: readonly SeasonStart[], instead: SeasonStart | null): LackOf {
  const left = season.pools.map(({ perWeek, perYear }) => ({
    perWeek: perWeek.slice(),
    perYear: perYear.map(({ most }) => most),
  }))
  const cuts = ({ way, week, number }: SeasonStart) =>
    courseOf(season, way, week).material.map(({ pool, offset, perPlant }) => {
      const cut = cutWeek(season.pools[pool]!, Math.max(0, Math.min(season.weeks - 1, week + offset)))
      const year = season.pools[pool]!.perYear.findIndex(
        ({ fromWeek, toWeek }) => cut >= fromWeek && cut <= toWeek,
      )
      return { pool, cut, year, number: number * perPlant }
    })
  for (const start of starts)
    for (const { pool, cut, year, number } of cuts(start)) {
      if (cut < 0) continue
      left[pool]!.perWeek[cut]! -= number
      left[pool]!.perYear[year]! -= number
    }
  if (instead)
    for (const { pool, cut, year, number } of cuts(instead)) {
      if (cut < 0) continue
      left[pool]!.perWeek[cut] = Math.max(number, left[pool]!.perWeek[cut]!)
      left[pool]!.perYear[year] = Math.max(number, left[pool]!.perYear[year]!)
    }
  return start => {
    for (const { pool, cut, year, number } of cuts(start)) {
      const wood = poolSaid(season.pools[pool]!)
      if (cut < 0) return phrase('the mother trees give none then ({wood})', { wood })
      if (number > left[pool]!.perWeek[cut]! + SLACK || number > left[pool]!.perYear[year]! + SLACK)
        return phrase('the mother trees give no more ({wood})', { wood })
    }
    return null
  }
}

function cutWeek({ perWeek, keepsWeeks }: MotherPool, use: number): number {
  for (let cut = use; cut >= Math.max(0, use - keepsWeeks); cut--) if (perWeek[cut]! > 0) return cut
  return -1
}

function rootstocksLeft(season: Season, free: ReadonlyMap<number, ArrayLike<number>>): LackOf {
  return ({ way, week, number }) => {
    const { rootstock } = courseOf(season, way, week)
    if (!rootstock) return null
    const use = week + rootstock.offset
    const wanted = number * rootstock.perPlant
    const isThere = rootstock.kinds.some(kind => {
      const { buyIn } = season.kinds[kind]!
      const isBought = buyIn !== null && use >= buyIn.weeksNotice && wanted <= buyIn.mostPerWeek
      return isBought || (free.get(kind)?.[use] ?? 0) >= wanted
    })
    if (isThere) return null
    return phrase('no rootstocks are free in week {week} ({kinds})', {
      week: weekSaid(season, use),
      kinds: rootstock.kinds.map(kind => season.kinds[kind]!.name).join(', '),
    })
  }
}

function licenceLeft(season: Season, starts: readonly SeasonStart[], instead: SeasonStart | null): LackOf {
  return ({ way, week, number }) => {
    for (const { name, kinds, perYear } of season.licences) {
      if (!kinds.includes(season.ways[way]!.kind)) continue
      const year = perYear.find(({ fromWeek, toWeek }) => week >= fromWeek && week <= toWeek)
      if (!year) continue
      const begunOf = (all: readonly SeasonStart[]) =>
        all
          .filter(start => start.week >= year.fromWeek && start.week <= year.toWeek)
          .filter(start => kinds.includes(season.ways[start.way]!.kind))
          .reduce((sum, start) => sum + start.number, 0)
      const left = Math.max(year.most - begunOf(starts), instead ? begunOf([instead]) : 0)
      if (number > left) return phrase('the licence of {kind} is used up', { kind: name })
    }
    return null
  }
}
