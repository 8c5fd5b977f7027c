import type { Taken } from '../rules/capacity.ts'
import type { Season, SeasonStart } from '../season.ts'
import type { SimulatedLoads } from '../simulate/outcome.ts'

/** The season of some kinds alone: their orders and batches, and the starts of theirs that were set, accepted or shown. */
export function partOfSeason(season: Season, isOwn: (kind: number) => boolean): Season {
  const own = (starts: readonly SeasonStart[]) => starts.filter(({ way }) => isOwn(season.ways[way]!.kind))
  return {
    ...season,
    orders: season.orders.filter(({ kinds }) => isOwn(kinds[0]!.kind)),
    batches: season.batches.filter(({ kind }) => isOwn(kind)),
    accepted: own(season.accepted),
    ...(season.shown && { shown: own(season.shown) }),
    ...(season.set && { set: own(season.set) }),
  }
}

/** A part of a season in the room that the rest leaves: its area and hours, and its starts under a licence. */
export const besideTheRest = (part: Season, rest: Taken, starts: readonly SeasonStart[]): Season => ({
  ...part,
  taken: {
    area: [...(part.taken?.area ?? []), ...rest.area],
    labour: [...(part.taken?.labour ?? []), ...rest.labour],
  },
  licences: part.licences.map(licence => ({
    ...licence,
    perYear: licence.perYear.map(year => ({
      ...year,
      most: Math.max(
        0,
        starts
          .filter(({ week }) => week >= year.fromWeek && week <= year.toWeek)
          .filter(({ way }) => licence.kinds.includes(part.ways[way]!.kind))
          .reduce((most, { number }) => most - number, year.most),
      ),
    })),
  })),
})

/** What is expected to be taken over the simulated seasons. */
export const expectedToTake = ({ squareMetres, minutes }: SimulatedLoads): Taken => ({
  area: squareMetres.map(({ expected }, place) => ({ place, squareMetres: expected })),
  labour: minutes.map(({ skill, expected }) => ({ skill, minutes: expected })),
})
