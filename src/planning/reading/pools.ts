import {
  countOnSupplies,
  type HeldThings,
  type MotherState,
  type Nursery,
  seasonYear,
} from '../../record/index.ts'
import { dayText } from '../../science/index.ts'
import {
  type CultivarId,
  type Kind,
  type KindId,
  type Material,
  type Phrase,
  type Protocol,
  phrase,
} from '../../trade/index.ts'
import type { MotherPool, PoolMother } from '../season.ts'
import { type GivingSeason, givesInMonth, givingSeasons } from './giving-seasons.ts'
import type { Weeks } from './weeks.ts'

interface Wanted {
  readonly cultivar: CultivarId | null
  readonly rootstockKind: KindId | null
  readonly material: Material
  readonly name: string
  keepsWeeks: number
}

export interface Pools {
  readonly pools: readonly MotherPool[]
  readonly poolsFor: (kind: Kind, protocol: Protocol) => readonly { pool: number; perPlant: number }[]
}

/**
 * Mothers of one cultivar that give one material, taken together. A material for which no mother is registered at all
 * is taken as bought, and that is said; where mothers are registered but none may give, there is none.
 */
export function readPools(nursery: Nursery, weeks: Weeks, held: HeldThings, assumed: Phrase[]): Pools {
  const wanted = new Map<string, Wanted>()
  const takings = (kind: Kind, protocol: Protocol) =>
    protocol.takes.flatMap(taking => {
      if (taking.what !== 'material') return []
      const cultivars =
        taking.part === 'interstem'
          ? kind.interstem
            ? [kind.interstem]
            : []
          : taking.part === 'whole plant'
            ? kind.cultivars.slice(0, 1)
            : kind.cultivars
      const sources: { cultivar: CultivarId | null; rootstockKind: KindId | null; name: string }[] =
        cultivars.length > 0
          ? cultivars.map(id => ({
              cultivar: id,
              rootstockKind: null,
              name: nursery.cultivars.get(id)?.name ?? id,
            }))
          : [{ cultivar: null, rootstockKind: kind.id, name: kind.name }]
      return sources.map(source => ({
        ...source,
        taking,
        key: `${source.cultivar ?? source.rootstockKind}\n${taking.material}`,
      }))
    })

  for (const kind of nursery.kinds.values())
    for (const way of kind.ways) {
      const protocol = nursery.protocols.get(way.protocol)
      if (!protocol) continue
      for (const { taking, key, name, cultivar, rootstockKind } of takings(kind, protocol)) {
        const keepsWeeks = Math.floor(taking.keepsDays.typical / 7)
        const known = wanted.get(key)
        if (known) known.keepsWeeks = Math.min(known.keepsWeeks, keepsWeeks)
        else
          wanted.set(key, {
            cultivar,
            rootstockKind,
            material: taking.material,
            name: `${name}, ${taking.material}`,
            keepsWeeks,
          })
      }
    }

  const seasonsOf = givingSeasons(weeks)
  const pools: MotherPool[] = []
  const index = new Map<string, number>()
  for (const [key, want] of wanted) {
    const registered = [...nursery.mothers.values()].filter(state => isMotherOf(state, want))
    if (registered.length === 0) {
      assumed.push(
        phrase('No mother tree is registered for {wood}: it is taken as bought in, as much as is needed.', {
          wood: poolSaid(want),
        }),
      )
      continue
    }
    index.set(key, pools.length)
    pools.push(readPool(nursery, weeks, held, want, registered, seasonsOf(registered, want.material)))
  }
  return {
    pools,
    poolsFor: (kind, protocol) =>
      takings(kind, protocol).flatMap(({ key, taking }) => {
        const pool = index.get(key)
        return pool === undefined ? [] : [{ pool, perPlant: taking.perPlant }]
      }),
  }
}

const isMotherOf = ({ mother }: MotherState, { cultivar, rootstockKind, material }: Wanted): boolean =>
  (cultivar
    ? mother.cultivar === cultivar && mother.rootstockKind === null
    : mother.rootstockKind === rootstockKind) && mother.gives.some(supply => supply.material === material)

function readPool(
  nursery: Nursery,
  weeks: Weeks,
  held: HeldThings,
  { cultivar, rootstockKind, material, name, keepsWeeks }: Wanted,
  registered: readonly MotherState[],
  seasons: readonly GivingSeason[],
): MotherPool {
  const giving = registered.filter(state => mayGive(state, held))
  const mothers: PoolMother[] = giving.flatMap(state => readMother(weeks, state, material, seasons))
  const stored = [...nursery.lots.values()].flatMap(lot => {
    const left = lot.number - lot.used - lot.discarded
    const from = giving.find(({ mother }) => mother.id === lot.mother)
    if (!from || held.lots.has(lot.id) || lot.material !== material || left <= 0) return []
    const untilWeek = lot.goodUntil ? weeks.endingBy(lot.goodUntil) : weeks.of(lot.on) + keepsWeeks
    return untilWeek < 0 ? [] : [{ number: left, untilWeek }]
  })
  return {
    cultivar,
    rootstockKind,
    material,
    name,
    mothers,
    perWeek: Float64Array.from({ length: weeks.count }, (_, week) =>
      mothers.reduce((sum, mother) => sum + mother.perWeek[week]!, 0),
    ),
    perYear: seasons.map(({ fromWeek, toWeek }, s) => ({
      fromWeek,
      toWeek,
      most: mothers.reduce((sum, mother) => sum + mother.perYear[s]!, 0),
    })),
    stored,
    keepsWeeks,
    young: null,
  }
}

/** Standing, not on hold, and not found diseased in its last test. */
const mayGive = ({ mother, retired, tests }: MotherState, held: HeldThings): boolean =>
  retired === null && !held.mothers.has(mother.id) && tests.at(-1)?.result !== 'positive'

/** Each supply of a mother gives by itself: in its own months, and no more of it than its own number. */
function readMother(
  weeks: Weeks,
  { mother, given }: MotherState,
  material: Material,
  seasons: readonly GivingSeason[],
): PoolMother[] {
  const thursday = (week: number) => dayText(weeks.monday(week) + 3)
  const counted = [...countOnSupplies(mother.gives, given)]
  return mother.gives
    .filter(supply => supply.material === material)
    .map(supply => {
      const { months, perYear } = supply
      const perWeek = Float64Array.from({ length: weeks.count }, (_, week) =>
        givesInMonth(months, weeks.month(week)) ? (supply.perWeek ?? perYear) : 0,
      )
      return {
        id: mother.id,
        perWeek,
        perYear: seasons.map(({ months: ofSeason, fromWeek, toWeek }) => {
          if (!months.every(month => givesInMonth(ofSeason, month))) return 0
          let first = fromWeek
          while (first < toWeek && perWeek[first] === 0) first++
          const season = seasonYear(months, thursday(perWeek[first] === 0 ? fromWeek : first))
          const gone = counted.reduce(
            (sum, one) => sum + (one.supply === supply && one.season === season ? one.number : 0),
            0,
          )
          return Math.max(0, perYear - gone)
        }),
      }
    })
}

/** "fig, cuttings": what a mother tree gives. */
export const poolSaid = ({ name, material }: Pick<MotherPool, 'name' | 'material'>): Phrase =>
  phrase('{of}, {material}', { of: name.slice(0, -`, ${material}`.length), material: phrase(material) })
