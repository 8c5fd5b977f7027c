import { followFacts } from '../../trade/facts/index.ts'
import type { BenchId, Cultivar, Kind, KindId, PersonId, Protocol, StepId } from '../../trade/index.ts'
import type { Entry } from '../entry.ts'
import { fruitsOf } from '../fruits-of.ts'
import { type Bench, type Mother, type Order, type Person, Prices, Settings, type Site } from '../register.ts'
import type { AcceptedPlan, FactSet, Nursery, RateSet, SpeciesSet, StartSet } from '../state.ts'
import { stepsOf } from './batch-draft.ts'
import { InPlace } from './in-place.ts'
import type { Registers } from './register-questions.ts'
import { SaidAnew } from './said-anew.ts'
import { startKey } from './subjects.ts'

type Maps =
  | 'benches'
  | 'people'
  | 'cultivars'
  | 'kinds'
  | 'protocols'
  | 'rateSets'
  | 'startSets'
  | 'tasksDone'
  | 'formerBenches'
  | 'formerPeople'
  | 'formerKinds'
type Task = NonNullable<ReturnType<Nursery['tasksDone']['get']>>

/** What is said anew rather than added to: of each thing the last word counts, by the order of entries. */
export interface RegisterState {
  site: Site | null
  prices: Prices
  settings: Settings
  acceptedPlan: AcceptedPlan | null
  benches: Map<BenchId, Bench>
  people: Map<PersonId, Person>
  cultivars: Map<Cultivar['id'], Cultivar>
  kinds: Map<KindId, Kind>
  /** All versions of each protocol and the days they were said, in the order of their entries. */
  protocols: Map<string, readonly { readonly protocol: Protocol; readonly on: string }[]>
  /** The steps of each protocol, in any of its versions. */
  steps: Map<string, readonly StepId[]>
  rateSets: Map<string, RateSet>
  startSets: Map<string, StartSet>
  speciesSets: Map<string, SpeciesSet>
  factSets: Map<string, FactSet>
  /** The two before in the order in which they are shown, until one of them changes. */
  stated: Pick<Nursery, 'speciesSets' | 'factSets'> | null
  tasksDone: Map<string, Task>
  formerBenches: Map<BenchId, { readonly bench: Bench; readonly removedBy: Entry['id'] }>
  formerPeople: Map<PersonId, Person>
  formerKinds: Map<KindId, Kind>
  mothers: Map<string, Mother>
  orders: Map<string, Order>
  lots: Map<string, NonNullable<ReturnType<Registers['lot']>>>
  benchCounts: Map<BenchId, { readonly entry: Entry['id']; readonly on: string }>
  readonly inPlace: InPlace
  readonly saidAnew: SaidAnew
}

export const newRegisters = (): RegisterState => ({
  site: null,
  prices: Prices.parse({}),
  settings: Settings.parse({}),
  acceptedPlan: null,
  benches: new Map(),
  people: new Map(),
  cultivars: new Map(),
  kinds: new Map(),
  protocols: new Map(),
  steps: new Map(),
  rateSets: new Map(),
  startSets: new Map(),
  speciesSets: new Map(),
  factSets: new Map(),
  stated: null,
  tasksDone: new Map(),
  formerBenches: new Map(),
  formerPeople: new Map(),
  formerKinds: new Map(),
  mothers: new Map(),
  orders: new Map(),
  lots: new Map(),
  benchCounts: new Map(),
  inPlace: new InPlace(['bench', 'person', 'cultivar', 'kind', 'protocol']),
  saidAnew: new SaidAnew(),
})

/** Folds one register key anew from its entries, struck ones left out, in the order in which they count. */
export function foldRegister(state: RegisterState, key: string, entries: readonly Entry[]): void {
  forget(state, key)
  for (const entry of entries) hear(state, entry)
  state.inPlace.note(key, entries)
  state.saidAnew.note(key, entries)
}

function forget(state: RegisterState, key: string): void {
  const space = key.indexOf(' ')
  const what = space < 0 ? key : key.slice(0, space)
  const id = key.slice(space + 1)
  switch (what) {
    case 'site':
      state.site = null
      return
    case 'prices':
      state.prices = Prices.parse({})
      return
    case 'settings':
      state.settings = Settings.parse({})
      return
    case 'plan':
      state.acceptedPlan = null
      return
    case 'bench':
      state.benches.delete(id as BenchId)
      state.formerBenches.delete(id as BenchId)
      return
    case 'person':
      state.people.delete(id as PersonId)
      state.formerPeople.delete(id as PersonId)
      return
    case 'kind':
      state.kinds.delete(id as KindId)
      state.formerKinds.delete(id as KindId)
      return
    case 'cultivar':
      state.cultivars.delete(id as Cultivar['id'])
      return
    case 'protocol':
      state.protocols.delete(id)
      state.steps.delete(id)
      return
    case 'rate':
      state.rateSets.delete(id)
      return
    case 'start':
      state.startSets.delete(id)
      return
    case 'species':
      state.speciesSets.delete(id)
      state.stated = null
      return
    case 'fact':
      state.factSets.delete(id)
      state.stated = null
      return
    case 'task':
      state.tasksDone.delete(id)
      return
    case 'mother':
      state.mothers.delete(id)
      return
    case 'order':
      state.orders.delete(id)
      return
    case 'lot':
      state.lots.delete(id)
      return
    case 'bench-count':
      state.benchCounts.delete(id as BenchId)
  }
}

function hear(state: RegisterState, entry: Entry): void {
  const { body, on } = entry
  switch (body.kind) {
    case 'site-set/1':
      state.site = body.site
      return
    case 'prices-set/1':
      state.prices = body.prices
      return
    case 'settings-set/1':
      state.settings = body.settings
      return
    case 'plan-accepted/1':
      state.acceptedPlan = {
        plan: body.plan,
        entry: entry.id,
        on,
        starts: body.starts,
        chances: body.chances,
      }
      return
    case 'bench-set/1':
      state.benches.set(body.bench.id, body.bench)
      state.formerBenches.delete(body.bench.id)
      return
    case 'bench-removed/1': {
      const bench = state.benches.get(body.bench)
      state.benches.delete(body.bench)
      if (bench) state.formerBenches.set(body.bench, { bench, removedBy: entry.id })
      return
    }
    case 'person-set/1':
      state.people.set(body.person.id, body.person)
      state.formerPeople.delete(body.person.id)
      return
    case 'person-left/1': {
      const person = state.people.get(body.person)
      state.people.delete(body.person)
      if (person) state.formerPeople.set(body.person, person)
      return
    }
    case 'kind-set/1':
      state.kinds.set(body.kindOfTree.id, body.kindOfTree)
      state.formerKinds.delete(body.kindOfTree.id)
      return
    case 'kind-dropped/1': {
      const kind = state.kinds.get(body.kindOfTree)
      state.kinds.delete(body.kindOfTree)
      if (kind) state.formerKinds.set(body.kindOfTree, kind)
      return
    }
    case 'cultivar-set/1':
      state.cultivars.set(body.cultivar.id, body.cultivar)
      return
    case 'protocol-set/1': {
      const versions = [...(state.protocols.get(body.protocol.id) ?? []), { protocol: body.protocol, on }]
      state.protocols.set(body.protocol.id, versions)
      state.steps.set(body.protocol.id, stepsOf(versions.map(({ protocol }) => protocol)))
      return
    }
    case 'rate-set/1': {
      const { protocol, step, kindOfTree, survival, why } = body
      const key = JSON.stringify([protocol, step, kindOfTree])
      const { low, typical, high } = survival
      state.rateSets.set(key, {
        entry: entry.id,
        protocol,
        step,
        kind: kindOfTree,
        survival: { low, typical, high },
        on,
        why,
      })
      return
    }
    case 'start-set/1': {
      const { kindOfTree: kind, protocol, week, number, insteadOf } = body
      state.startSets.set(startKey(body), { entry: entry.id, kind, protocol, week, number, insteadOf })
      return
    }
    case 'species-set/1':
      state.speciesSets.set(body.species.id, { entry: entry.id, species: body.species, on, why: body.why })
      return
    case 'fact-set/1': {
      const { species, set, why } = body
      state.factSets.set(JSON.stringify([species, set.fact]), { entry: entry.id, species, set, on, why })
      return
    }
    case 'task-done/1':
      state.tasksDone.set(body.task, { entry: entry.id, on, number: null, minutes: body.minutes })
      return
    case 'task-done/2':
      state.tasksDone.set(body.task, { entry: entry.id, on, number: body.number, minutes: body.minutes })
      return
    case 'mother-set/1':
      state.mothers.set(body.mother.id, body.mother)
      return
    case 'order-placed/1':
    case 'order-changed/1':
      state.orders.set(body.order.id, body.order)
      return
    case 'bench-counted/1':
      state.benchCounts.set(body.bench, { entry: entry.id, on })
      return
    case 'material-collected/1':
      if (!state.lots.has(body.lot))
        state.lots.set(body.lot, { mother: body.mother, material: body.material })
  }
}

const inOrder = <T>(sets: ReadonlyMap<string, T>): T[] =>
  [...sets.entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, set]) => set)

/** The registers as the nursery shows them. */
export function showRegisters(
  state: RegisterState,
): Pick<
  Nursery,
  | Exclude<Maps, `former${string}`>
  | 'speciesSets'
  | 'factSets'
  | 'benchCounts'
  | 'insteadOf'
  | 'protocolVersions'
  | 'site'
  | 'prices'
  | 'settings'
  | 'acceptedPlan'
  | 'former'
> {
  state.stated ??= { speciesSets: inOrder(state.speciesSets), factSets: inOrder(state.factSets) }
  const { speciesSets, factSets } = state.stated
  const fruits = fruitsOf(state.stated)
  return {
    site: state.site,
    prices: state.prices,
    settings: state.settings,
    acceptedPlan: state.acceptedPlan,
    benches: state.inPlace.list('bench', state.benches),
    people: state.inPlace.list('person', state.people),
    cultivars: state.inPlace.list('cultivar', state.cultivars),
    kinds: state.inPlace.list('kind', state.kinds),
    protocols: new Map(
      [...state.inPlace.list('protocol', state.protocols).values()].map(versions => {
        const { protocol } = versions.at(-1)!
        return [protocol.id, factSets.length === 0 ? protocol : followFacts(protocol, fruits)]
      }),
    ),
    protocolVersions: new Map(
      [...state.protocols.values()].map(versions => [
        versions[0]!.protocol.id,
        versions.map(({ protocol: { version }, on }) => ({ version, on })),
      ]),
    ),
    rateSets: inOrder(state.rateSets),
    startSets: inOrder(state.startSets),
    speciesSets,
    factSets,
    tasksDone: new Map(state.tasksDone),
    benchCounts: new Map(state.benchCounts),
    insteadOf: state.saidAnew.insteadOf(),
    former: {
      benches: new Map([...state.formerBenches].map(([id, { bench }]) => [id, bench])),
      people: new Map(state.formerPeople),
      kinds: new Map(state.formerKinds),
    },
  }
}
