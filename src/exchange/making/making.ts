import type { Bench, Body, Day, Mother, Nursery, Order, Person, Site } from '../../record/index.ts'
import { canonicalJson, fruitsOf } from '../../record/index.ts'
import type { Fruits } from '../../trade/facts/index.ts'
import type {
  BatchId,
  BenchId,
  Cultivar,
  CultivarId,
  Kind,
  KindId,
  MotherId,
  OrderId,
  PersonId,
  Protocol,
  ProtocolId,
} from '../../trade/index.ts'

import { folded } from './folded.ts'

/** Something to be written down, on its day; `since the first` is the day of the earliest of all, or today. */
export interface Told {
  readonly on: Day | 'since the first'
  readonly body: Body
}

/**
 * The nursery as it will be with what was read so far: each sheet finds what the ones before it made. Nothing is told
 * that the record has already.
 */
export interface Making {
  readonly today: Day
  readonly nursery: Nursery
  /** As the nursery has them, its own among them. */
  readonly fruits: Fruits
  readonly kinds: Map<KindId, Kind>
  readonly cultivars: Map<CultivarId, Cultivar>
  readonly protocols: Map<ProtocolId, Protocol>
  readonly benches: Map<BenchId, Bench>
  readonly people: Map<PersonId, Person>
  readonly mothers: Map<MotherId, Mother>
  readonly batches: Set<BatchId>
  readonly orders: Map<OrderId, Order>
  readonly told: Told[]
  readonly assumptions: Map<string, string>
  latitudeDegrees: number
  setSite(site: Site): boolean
  setBench(bench: Bench): boolean
  setPerson(person: Person): boolean
  setCultivar(cultivar: Cultivar): boolean
  /** By its name or a synonym. */
  cultivarByName(species: string, name: string): Cultivar | undefined
  setProtocol(protocol: Protocol): boolean
  setKind(kind: Kind): boolean
  setMother(mother: Mother): boolean
  tell(on: Day, body: Body): void
  /** Said once for each thing that it is about. */
  assume(about: string, says: string): void
}

const isSame = (a: unknown, b: unknown): boolean => canonicalJson(a) === canonicalJson(b)

export function createMaking(nursery: Nursery, today: Day): Making {
  const told: Told[] = []
  const assumptions = new Map<string, string>()

  /**
   * True if it was new or changed, and so was told: what is new was so from the first day, a change is of today. What
   * this reading told already is told in its last form only.
   */
  const setter = <I, T extends { readonly id: I }>(map: Map<I, T>, body: (thing: T) => Body) => {
    const toldAt = new Map<I, number>()
    return (thing: T): boolean => {
      const before = map.get(thing.id)
      if (before !== undefined && isSame(before, thing)) return false
      map.set(thing.id, thing)
      const at = toldAt.get(thing.id)
      if (at !== undefined) told[at] = { on: told[at]!.on, body: body(thing) }
      else
        toldAt.set(
          thing.id,
          told.push({ on: before === undefined ? 'since the first' : today, body: body(thing) }) - 1,
        )
      return true
    }
  }

  const kinds = new Map(nursery.kinds)
  const cultivars = new Map(nursery.cultivars)
  const protocols = new Map(nursery.protocols)
  const benches = new Map(nursery.benches)
  const people = new Map(nursery.people)
  const mothers = new Map([...nursery.mothers].map(([id, { mother }]) => [id, mother] as const))
  const cultivarIds = new Map<string, CultivarId>()
  const index = ({ id, species, name, synonyms }: Cultivar): void => {
    for (const one of [name, ...synonyms]) {
      const key = `${species} ${folded(one)}`
      if (!cultivarIds.has(key)) cultivarIds.set(key, id)
    }
  }
  for (const cultivar of cultivars.values()) index(cultivar)
  const setCultivar = setter(cultivars, cultivar => ({ kind: 'cultivar-set/1', cultivar }))
  let site = nursery.site
  const making: Making = {
    today,
    nursery,
    fruits: fruitsOf(nursery),
    kinds,
    cultivars,
    protocols,
    benches,
    people,
    mothers,
    batches: new Set(nursery.batches.keys()),
    orders: new Map([...nursery.orders].map(([id, { order }]) => [id, order] as const)),
    told,
    assumptions,
    latitudeDegrees: site?.latitudeDegrees ?? 45,
    setSite(said) {
      making.latitudeDegrees = said.latitudeDegrees
      if (site !== null && isSame(site, said)) return false
      told.push({ on: site === null ? 'since the first' : today, body: { kind: 'site-set/1', site: said } })
      site = said
      return true
    },
    setBench: setter(benches, bench => ({ kind: 'bench-set/1', bench })),
    setPerson: setter(people, person => ({ kind: 'person-set/1', person })),
    setCultivar: cultivar => {
      index(cultivar)
      return setCultivar(cultivar)
    },
    cultivarByName: (species, name) => {
      const id = cultivarIds.get(`${species} ${folded(name)}`)
      return id === undefined ? undefined : cultivars.get(id)
    },
    setProtocol: setter(protocols, protocol => ({ kind: 'protocol-set/1', protocol })),
    setKind: setter(kinds, kindOfTree => ({ kind: 'kind-set/1', kindOfTree })),
    setMother: setter(mothers, mother => ({ kind: 'mother-set/1', mother })),
    tell: (on, body) => void told.push({ on, body }),
    assume: (about, says) => void (assumptions.has(about) || assumptions.set(about, says)),
  }
  return making
}

/** What was told, each with its day. */
export const toldWithDays = ({ told, today }: Making): { readonly on: Day; readonly body: Body }[] => {
  const days = told.flatMap(({ on }) => (on === 'since the first' ? [] : [on]))
  const first = [today, ...days].sort()[0]!
  return told.map(({ on, body }) => ({ on: on === 'since the first' ? first : on, body }))
}
