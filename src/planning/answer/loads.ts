import { capital, type Material } from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import type { Load } from '../plan.ts'
import { skillsOf } from '../reading/skills.ts'
import type { Planned } from './planned.ts'
import type { MotherShare } from './share-mothers.ts'

const MINUTES = 60
const rounded = (values: ArrayLike<number>, per = 1): number[] =>
  Array.from(values, value => Math.round((value / per) * 10) / 10)

/** What every place, skill and mother tree that is asked for anything carries by week, against what it can. */
export function loadsOf(planned: Planned, shares: readonly MotherShare[]): Load[] {
  return [...placeLoads(planned), ...skillLoads(planned), ...motherLoads(planned, shares)]
}

function placeLoads({ season, loads }: Planned): Load[] {
  return season.places.map((place, p) => ({
    what: 'place',
    id: place.place,
    name: capital(place.place),
    unit: 'm²',
    expected: rounded(loads.squareMetres[p]!.expected),
    badYear: rounded(loads.squareMetres[p]!.badYear),
    capacity: rounded(place.squareMetres),
  }))
}

/** People with several skills count in full for each: it is what could be given to that skill alone. */
function skillLoads({ season, loads }: Planned): Load[] {
  return skillsOf(season).map(skill => {
    const able = season.people.filter(person => person.skills.includes(skill))
    const load = loads.minutes.find(of => of.skill === skill)
    const none = new Float64Array(season.weeks)
    const capacity = none.map((_, week) => able.reduce((sum, person) => sum + person.minutes[week]!, 0))
    return {
      what: 'skill',
      id: skill,
      name: capital(skill),
      unit: 'hours',
      expected: rounded(load?.expected ?? none, MINUTES),
      badYear: rounded(load?.badYear ?? none, MINUTES),
      capacity: rounded(capacity, MINUTES),
    }
  })
}

function motherLoads({ season, nursery }: Planned, shares: readonly MotherShare[]): Load[] {
  const byMother = grouped(shares, share => `${share.pool}\n${share.mother}`)
  return [...byMother.values()].map(taken => {
    const { pool, mother } = taken[0]!
    const { mothers, material } = season.pools[pool]!
    const expected = new Float64Array(season.weeks)
    for (const { week, number } of taken) expected[week]! += number
    return {
      what: 'mother',
      id: mother,
      name: nursery.mothers.get(mother)?.mother.name ?? mother,
      unit: unitOf[material],
      expected: rounded(expected),
      badYear: rounded(expected),
      capacity: rounded(mothers.find(({ id }) => id === mother)!.perWeek),
    }
  })
}

const unitOf: Record<Material, Load['unit']> = {
  seed: 'seeds',
  cuttings: 'cuttings',
  'scion sticks': 'sticks',
  budwood: 'sticks',
  branches: 'branches',
  shoots: 'pieces',
  offsets: 'pieces',
  'standing trees': 'pieces',
}
