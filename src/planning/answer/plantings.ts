import { phrase } from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import type { Solution } from '../model/season-model.ts'
import type { Planting } from '../plan.ts'
import type { MotherPool, Planted } from '../season.ts'
import { type Planned, weekName, weekSaid } from './planned.ts'

/** Fewer than this is a rounding of the relaxation, not a tree. */
const LEAST = 0.05

/** Young mother trees that a solution plants, in whole trees. */
export const plantedTrees = ({ planted }: Pick<Solution, 'planted'>): Planted[] =>
  planted
    .filter(({ number }) => number > LEAST)
    .map(({ pool, week, number }) => ({ pool, week, number: Math.ceil(number - 1e-6) }))

/** What young mother trees of a pool are called: by the cultivar. */
export const nameOfPlanted = ({ name }: Pick<MotherPool, 'name'>): string => name.split(', ')[0]!

/** Young mother trees that the plan plants, in whole trees, each with what it is for. */
export function plantingsOf({ season, solution }: Planned): Planting[] {
  return [...grouped(plantedTrees(solution), ({ pool }) => pool)].flatMap(([p, of]) => {
    const { material } = season.pools[p]!
    return of.map(({ week, number: trees }) => {
      const cultivar = nameOfPlanted(season.pools[p]!)
      return {
        name: cultivar,
        material,
        week: weekName(season, week),
        number: trees,
        sentence: phrase(
          trees === 1
            ? 'Plant {trees} mother tree of {cultivar} by week {week} of {year}: those that stand do not give the {material} that the orders need.'
            : 'Plant {trees} mother trees of {cultivar} by week {week} of {year}: those that stand do not give the {material} that the orders need.',
          {
            trees,
            cultivar,
            week: weekSaid(season, week),
            year: weekName(season, week).slice(0, 4),
            material: phrase(material),
          },
        ),
      }
    })
  })
}
