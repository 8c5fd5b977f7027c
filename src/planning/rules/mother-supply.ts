import { grouped } from '../grouped.ts'
import type { MotherPool, PoolMother } from '../season.ts'
import { courseOf, type SeasonDraft, type SeasonRule } from './season-draft.ts'

/** A year of a young tree, and how often planting is thought of. */
const WEEKS_OF_YEAR = 52
const WEEKS_BETWEEN_PLANTINGS = 4

interface Taker {
  readonly column: number
  readonly perPlant: number
  readonly week: number
}

/**
 * Sticks, cuttings, branches and seed taken from the mothers of a cultivar stay within what they may give.
 *   Σ taken in week w ≤ Σ drawn(w, c)          c: weeks of cutting from which wood is still fresh in w, or a stored lot
 *   Σ drawn(·, c) ≤ per week(c);   Σ drawn from a lot ≤ its number
 *   Σ drawn over a season ≤ per season + Σ per season(age) · planted(m, w)         age: years since week w
 * Where the mothers have no bound by the week, only the seasons are told apart. Mothers are pooled here, and what is
 * taken is shared out among them afterwards.
 * Young mothers stand to the end, and the mother block has ground for so many:
 *   Σ planted(m, w) ≤ ground for mothers
 * Said as: "{pool}, {season}: one more … is worth {worth}."
 */
export const motherSupply: SeasonRule = draft => {
  const takers: Taker[][] = draft.season.pools.map(() => [])
  for (const { way, week, column } of draft.starts)
    for (const { pool, offset, perPlant } of courseOf(draft.season, way, week).material)
      if (week + offset < draft.season.weeks)
        takers[pool]!.push({ column, perPlant, week: Math.max(0, week + offset) })
  draft.season.pools.forEach((pool, p) => {
    if (takers[p]!.length > 0) supplyOfPool(draft, pool, p, takers[p]!)
  })
  groundForMothers(draft)
}

function groundForMothers({ season, model, planted }: SeasonDraft): void {
  const upper = season.groundForMothers
  if (upper === undefined || planted.length === 0) return
  const row = model.row({ rule: 'motherGround', subject: 0, about: 'mother block', week: -1, upper })
  for (const { column } of planted) model.put(row, column, 1)
}

/** Where wood for a week may come from: a stretch of cutting weeks or a stored lot, and the rows that it counts in. */
interface Source {
  readonly name: string
  readonly fresh: (week: number) => boolean
  readonly rows: readonly number[]
}

function supplyOfPool(draft: SeasonDraft, pool: MotherPool, p: number, takers: readonly Taker[]): void {
  const { model } = draft
  plantYoung(draft, pool, p)
  const sources = [...cutSources(draft, pool, p), ...storedSources(draft, pool, p)]
  for (const [week, ofWeek] of grouped(takers, taker => taker.week)) {
    const fresh = sources.filter(source => source.fresh(week))
    if (fresh.length === 1) {
      for (const { column, perPlant } of ofWeek)
        for (const row of fresh[0]!.rows) model.put(row, column, perPlant)
      continue
    }
    const row = model.row({ rule: 'motherSupply', subject: p, about: pool.name, week, upper: 0 })
    for (const { column, perPlant } of ofWeek) model.put(row, column, perPlant)
    for (const { name, rows } of fresh) {
      const drawn = model.column({ name: `draw/${pool.name}/${week}/${name}`, part: 'material', cost: 0 })
      model.put(row, drawn, -1)
      for (const limit of rows) model.put(limit, drawn, 1)
    }
  }
}

/** Columns: young mothers planted, once in a month; they stand to the end. */
function plantYoung({ model, season, planted }: SeasonDraft, pool: MotherPool, p: number): void {
  if (!pool.young) return
  for (let week = 0; week < season.weeks; week += WEEKS_BETWEEN_PLANTINGS) {
    const name = `plant/${pool.name}/${week}`
    const column = model.column({ name, part: 'mother trees', cost: pool.young.costEach, isWhole: true })
    planted.push({ pool: p, week, column })
  }
}

/**
 * What one planted in a week may give in a season: nothing before it stands a year, then more each year.
 * @example perSeasonByAge [0, 10, 40]: planted 60 weeks before the season 10, 200 weeks before 40
 */
export function givesInSeason(perSeasonByAge: readonly number[], planted: number, fromWeek: number): number {
  const age = Math.floor((fromWeek - planted) / WEEKS_OF_YEAR)
  return age < 0 ? 0 : perSeasonByAge[Math.min(age, perSeasonByAge.length - 1)]!
}

/**
 * Each season of giving, apart for mothers that give in other weeks; where a bound by the week can bind before that of
 * the season, each week of it by itself.
 */
function cutSources({ model, season, planted }: SeasonDraft, pool: MotherPool, p: number): Source[] {
  const growing = planted.filter(column => column.pool === p)
  const groups = groupsOf(pool)
  return groups.flatMap(({ perWeek, perYear }, g) =>
    pool.perYear.flatMap(({ fromWeek, toWeek }, s) => {
      const about = groups.length === 1 ? pool.name : `${pool.name} (${g + 1})`
      const most = perYear[s]!
      const weeks: number[] = []
      for (let week = fromWeek; week <= Math.min(toWeek, season.weeks - 1); week++)
        if (perWeek[week]! > 0) weeks.push(week)
      const isGrowing = growing.length > 0 && g === 0
      if (weeks.length === 0 || (most <= 0 && !isGrowing)) return []
      const seasonRow = model.row({ rule: 'motherYear', subject: p, about, week: fromWeek, upper: most })
      const givesMore = (row: number, share: number) => {
        if (!isGrowing) return
        for (const { week, column } of growing)
          model.put(row, column, -share * givesInSeason(pool.young!.perSeasonByAge, week, fromWeek))
      }
      givesMore(seasonRow, 1)
      const within = (week: number, cut: number) => cut <= week && week <= cut + pool.keepsWeeks
      if (weeks.every(week => perWeek[week]! >= most)) {
        const fresh = (week: number) => weeks.some(cut => within(week, cut))
        return [{ name: `${about} ${fromWeek}`, fresh, rows: [seasonRow] }]
      }
      return weeks.map(cut => {
        const weekRow = model.row({ rule: 'motherWeek', subject: p, about, week: cut, upper: perWeek[cut]! })
        givesMore(weekRow, most > 0 ? perWeek[cut]! / most : 1)
        return {
          name: `${about} week ${cut}`,
          fresh: (week: number) => within(week, cut),
          rows: [weekRow, seasonRow],
        }
      })
    }),
  )
}

/**
 * Mothers whose weeks and seasons bind alike stand for each other: those that give in the same weeks, and of which either
 * the season alone binds, or the weeks alone, or both in the same proportion. Others are told apart: one that is spent
 * after a week does not give her week's most in the next.
 */
function groupsOf(pool: MotherPool): { perWeek: Float64Array; perYear: readonly number[] }[] {
  if (pool.mothers.length === 0)
    return [{ perWeek: pool.perWeek, perYear: pool.perYear.map(({ most }) => most) }]
  return [
    ...grouped(
      pool.mothers,
      mother =>
        mother.perWeek.map(most => (most > 0 ? 1 : 0)).join('') +
        pool.perYear.map(({ fromWeek, toWeek }, s) => bindingIn(mother, fromWeek, toWeek, s)).join(';'),
    ).values(),
  ].map(mothers => ({
    perWeek: mothers[0]!.perWeek.map((_, week) => mothers.reduce((sum, m) => sum + m.perWeek[week]!, 0)),
    perYear: pool.perYear.map((_, s) => mothers.reduce((sum, m) => sum + m.perYear[s]!, 0)),
  }))
}

/** What binds a mother in a season: its weeks, the season, or both, in a proportion for each week. */
function bindingIn({ perWeek, perYear }: PoolMother, fromWeek: number, toWeek: number, s: number): string {
  const weeks = [...perWeek.subarray(fromWeek, toWeek + 1)].filter(most => most > 0)
  const season = perYear[s]!
  if (weeks.reduce((sum, most) => sum + most, 0) <= season) return 'weeks'
  if (weeks.every(most => most >= season)) return 'season'
  return weeks.map(most => (most / season).toPrecision(4)).join()
}

function storedSources({ model }: SeasonDraft, pool: MotherPool, p: number): Source[] {
  return pool.stored.map(({ number, untilWeek }, lot) => {
    const about = `${pool.name}, lot ${lot}`
    const row = model.row({ rule: 'storedWood', subject: p, about, week: -1, upper: number })
    return { name: `lot ${lot}`, fresh: (week: number) => week <= untilWeek, rows: [row] }
  })
}
