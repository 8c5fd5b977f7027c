import { weekNumber } from '../../science/index.ts'
import { listed, type Phrase, phrase, type Skill } from '../../trade/index.ts'
import { weekSaid, weeksSaid } from '../answer/planned.ts'
import type { Plan } from '../plan.ts'
import { poolSaid } from '../reading/pools.ts'
import { courseOf } from '../rules/season-draft.ts'
import type { MotherPool, Season, SeasonStart } from '../season.ts'

/** What the plan leaves free: of a start beside it, the first thing that is lacking, in words; null where it fits. */
export type LackOf = (start: SeasonStart) => Phrase | null

const inWeek = (season: Season, week: number): Phrase =>
  phrase(' in {weeks}', { weeks: weeksSaid(season, week, week) })

/** Rounding of the plan's loads. */
const SLACK = 0.05

/**
 * Bench space, hands, wood, rootstocks and licences that a plan leaves free, as expected. Overtime and lent area are not
 * counted on, nor wood in store.
 * @param rootstocks by kind, how many are there in each week beside all that the plan needs, as surely as wished
 */
export function leftFree(
  season: Season,
  plan: Pick<Plan, 'loads' | 'firstWeek'>,
  starts: readonly SeasonStart[],
  rootstocks: ReadonlyMap<number, ArrayLike<number>>,
): LackOf {
  const shift = season.firstWeek - weekNumber(plan.firstWeek)
  const lacks = [
    spaceLeft(season, plan, shift),
    handsLeft(season, plan, shift),
    woodLeft(season, starts),
    rootstocksLeft(season, rootstocks),
    licenceLeft(season, starts),
  ]
  return start => {
    for (const lackOf of lacks) {
      const lack = lackOf(start)
      if (lack !== null) return lack
    }
    return null
  }
}

function spaceLeft(season: Season, { loads }: Pick<Plan, 'loads'>, shift: number): LackOf {
  const free = season.places.map(({ place, squareMetres }) => {
    const load = loads.find(({ what, id }) => what === 'place' && id === place)
    return squareMetres.map((area, week) => area - (load?.expected[week + shift] ?? 0))
  })
  return ({ way, week, number }) => {
    const course = courseOf(season, way, week)
    for (const { place, squareMetres } of course.area)
      for (let k = 0; k < squareMetres.length; k++) {
        const at = week + course.firstOffset + k
        if (at >= 0 && at < season.weeks && number * squareMetres[k]! > free[place]![at]! + SLACK)
          return phrase('the {place} is full{week}', {
            place: phrase(season.places[place]!.place),
            week: inWeek(season, at),
          })
      }
    return null
  }
}

/** One person's hour is spent once: for every set of skills, those who have any of them cover what is asked of them all. */
function handsLeft(season: Season, { loads }: Pick<Plan, 'loads'>, shift: number): LackOf {
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
    freeBySet.set(week, free)
    return free
  }
  return ({ way, week, number }) => {
    const { labour, firstOffset } = courseOf(season, way, week)
    const length = Math.max(0, ...labour.map(({ perPlant }) => perPlant.length))
    for (let k = 0; k < length; k++) {
      const at = week + firstOffset + k
      if (at < 0 || at >= season.weeks) continue
      const more = skills.map(skill =>
        labour
          .filter(work => work.skill === skill)
          .reduce((sum, work) => sum + number * (work.perPlant[k] ?? 0) + (work.perBatch[k] ?? 0), 0),
      )
      const needed = more.reduce((bits, minutes, s) => (minutes > SLACK ? bits | (1 << s) : bits), 0)
      if (needed === 0) continue
      const free = freeIn(at)
      for (let set = 1; set < free.length; set++) {
        if (!(set & needed)) continue
        let minutes = 0
        for (let s = 0; s < skills.length; s++) if (set & (1 << s)) minutes += more[s]!
        if (minutes > Math.max(0, free[set]!) + 60 * SLACK)
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

/** Wood is cut as late as it can be: in the week in which it is used or, where the mothers give none, before. */
function woodLeft(season: Season, starts: readonly SeasonStart[]): LackOf {
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

function licenceLeft(season: Season, starts: readonly SeasonStart[]): LackOf {
  return ({ way, week, number }) => {
    for (const { name, kinds, perYear } of season.licences) {
      if (!kinds.includes(season.ways[way]!.kind)) continue
      const year = perYear.find(({ fromWeek, toWeek }) => week >= fromWeek && week <= toWeek)
      if (!year) continue
      const planned = starts
        .filter(start => start.week >= year.fromWeek && start.week <= year.toWeek)
        .filter(start => kinds.includes(season.ways[start.way]!.kind))
        .reduce((sum, start) => sum + start.number, 0)
      if (planned + number > year.most) return phrase('the licence of {kind} is used up', { kind: name })
    }
    return null
  }
}
