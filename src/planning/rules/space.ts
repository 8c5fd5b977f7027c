import { type Capacity, rowEntries } from './capacity.ts'
import { courseOf, type SeasonDraft, type SeasonRule } from './season-draft.ts'
import { nextTake } from './take-weeks.ts'

/**
 * Area in use at a place in a week is no more than its benches have.
 *   Σ m²(r, w − t) · start(r, t) + Σ m²(p) · held(p, w) − extra(place, w) ≤ m²(place, w) − m² under living batches
 * What stands there already comes first: where it alone takes more than there is, nothing more may be set there.
 * Said as: "{place}, weeks {from} to {to}: 1 m² more is worth {worth} a week."
 */
export const space: SeasonRule = draft => {
  const { season, model } = draft
  for (const { way, week, column } of draft.starts) {
    const course = courseOf(season, way, week)
    let cost = 0
    for (const { place, squareMetres } of course.area) {
      const price = season.places[place]!.pricePerSquareMetreWeek
      for (const area of squareMetres) cost += price * area
    }
    model.addCost(column, cost)
  }
  const extra = season.places.map(({ place, extraPricePerSquareMetreWeek: cost }, p) =>
    cost === null
      ? null
      : Array.from({ length: season.weeks }, (_, week) => {
          const column = model.column({ name: `extra/${place}/${week}`, part: 'extra area', cost })
          draft.extraArea.push({ place: p, week, column })
          return column
        }),
  )
  draft.capacities.push(spaceCapacity(draft, extra))
}

function spaceCapacity(draft: SeasonDraft, extra: readonly (readonly number[] | null)[]): Capacity {
  const { season, starts, holds, takesOf } = draft
  const { weeks, places } = season
  const free = freeArea(draft)
  const nextOf = takesOf.map(takes => (takes.length > 0 ? nextTake(weeks, takes) : null))
  const footprints = starts.map(start => footprintOf(draft, start, nextOf))

  const row = (place: number, week: number) => {
    const entries = rowEntries()
    starts.forEach(({ week: begun, column }, s) => {
      for (const { place: at, from, squareMetres } of footprints[s]!)
        if (at === place) entries.add(column, squareMetres[week - begun - from] ?? 0)
    })
    for (const { kind, week: from, until, column } of holds) {
      const { standsAt } = season.kinds[kind]!
      if (standsAt?.place === place && week >= from && week < until)
        entries.add(column, standsAt.squareMetres)
    }
    const more = extra[place]?.[week]
    if (more !== undefined) entries.add(more, -1)
    const upper = free[place]![week]!
    return { rule: 'space', subject: place, about: places[place]!.place, week, upper, ...entries.done() }
  }

  const loadOf = (columnValue: Float64Array) => {
    const load = places.map(() => new Float64Array(weeks))
    starts.forEach(({ week: begun, column }, s) => {
      const number = columnValue[column]!
      if (number <= 0) return
      for (const { place, from, squareMetres } of footprints[s]!)
        for (let k = 0; k < squareMetres.length; k++) {
          const week = begun + from + k
          if (week >= 0 && week < weeks) load[place]![week]! += number * squareMetres[k]!
        }
    })
    for (const { kind, week: from, until, column } of holds) {
      const { standsAt } = season.kinds[kind]!
      const number = columnValue[column]!
      if (!standsAt || number <= 0) continue
      for (let week = from; week < until; week++)
        load[standsAt.place]![week]! += number * standsAt.squareMetres
    }
    return load
  }

  return {
    rule: 'space',
    row,
    all: () => places.flatMap((_, place) => Array.from({ length: weeks }, (_, week) => row(place, week))),
    taken: columnValue => ({
      area: loadOf(columnValue).map((squareMetres, place) => ({ place, squareMetres })),
      labour: [],
    }),
    broken(columnValue, tolerance) {
      const load = loadOf(columnValue)
      return places.flatMap((_, place) =>
        Array.from({ length: weeks }, (_, week) => week)
          .filter(week => {
            const lent = extra[place] ? columnValue[extra[place][week]!]! : 0
            return load[place]![week]! - lent > free[place]![week]! + tolerance
          })
          .map(week => row(place, week)),
      )
    },
  }
}

/** What the benches have beside what stands on them now and until it is finished. */
function freeArea({ season }: SeasonDraft): Float64Array[] {
  const free = season.places.map(place => place.squareMetres.slice())
  for (const batch of [...season.batches, ...(season.taken ? [season.taken] : [])])
    for (const { place, squareMetres } of batch.area)
      for (let week = 0; week < Math.min(season.weeks, squareMetres.length); week++)
        free[place]![week]! -= squareMetres[week]!
  return free.map(area => area.map(squareMetres => Math.max(0, squareMetres)))
}

interface Footprint {
  readonly place: number
  /** Weeks from the start to index 0. */
  readonly from: number
  readonly squareMetres: Float64Array
}

/**
 * The area of one plant begun, until it is finished and, where it waits for the next week in which any is taken, on.
 * @param nextOf by kind, the next take week of each week; null where none is ever taken
 */
function footprintOf(
  { season, takesOf }: SeasonDraft,
  { way, week }: { readonly way: number; readonly week: number },
  nextOf: readonly (Int32Array | null)[],
): Footprint[] {
  const course = courseOf(season, way, week)
  const footprints: Footprint[] = course.area.map(({ place, squareMetres }) => ({
    place,
    from: course.firstOffset,
    squareMetres,
  }))
  const kind = season.ways[way]!.kind
  const { standsAt, usableWeeks } = season.kinds[kind]!
  const next = nextOf[kind]
  if (!standsAt || !next) return footprints
  const takes = takesOf[kind]!
  const waiting = new Float64Array(season.weeks - week)
  let [first, end] = [waiting.length, 0]
  for (let k = 0; k < course.ready.length && week + k < season.weeks; k++) {
    const take = next[week + k]!
    if (take < 0 || course.ready[k] === 0 || takes[take]! > week + k + usableWeeks) continue
    for (let w = week + k; w < takes[take]!; w++) {
      waiting[w - week]! += course.ready[k]! * standsAt.squareMetres
      first = Math.min(first, w - week)
      end = Math.max(end, w - week + 1)
    }
  }
  if (end === 0) return footprints
  return [...footprints, { place: standsAt.place, from: first, squareMetres: waiting.slice(first, end) }]
}
