import type {
  BatchId,
  BenchId,
  Cultivar,
  CultivarId,
  EntryId,
  Kind,
  KindId,
  Material,
  MaterialLotId,
  MotherId,
  OrderId,
  PersonId,
  Protocol,
  ProtocolId,
  Sign,
  StepId,
} from '../trade/index.ts'
import type { Held, Source } from './entry.ts'
import type { Bench, Day, Mother, Order, Person, Prices, Settings, Site } from './register.ts'

/** Plants of a batch that stand in one step on one bench. A batch partly weaned has two portions. */
export interface Portion {
  readonly step: StepId
  readonly bench: BenchId | null
  readonly since: Day
  readonly number: number
  /** Of `number`, those already seen to have taken at the last count. */
  readonly taken: number
  /** Day of the last count in this step, or null while none was made. */
  readonly countedOn: Day | null
}

/** What one step did to a batch so far: the raw material of rates. */
export interface StepOutcome {
  readonly step: StepId
  readonly entered: number
  readonly firstEntered: Day
  /** Left the step alive: advanced, finished, split away from its end. */
  readonly left: number
  readonly lastLeft: Day | null
  readonly lost: number
  /** Nothing stands in it any more. */
  readonly closed: boolean
  readonly looks: readonly Look[]
}

export interface Look {
  readonly entry: EntryId
  readonly on: Day
  readonly sign: Sign
  readonly taken: number
  readonly dead: number
  readonly undecided: number
}

export interface Loss {
  readonly entry: EntryId
  readonly on: Day
  readonly step: StepId
  readonly number: number
  readonly cause: string
}

export interface Batch {
  readonly id: BatchId
  readonly name: string
  readonly kind: KindId
  readonly protocol: ProtocolId
  readonly startedOn: Day
  readonly number: number
  readonly workedBy: readonly PersonId[]
  readonly sources: readonly Source[]
  readonly candidates: readonly CultivarId[]
  /** Living plants not yet finished, by step and bench. */
  readonly portions: readonly Portion[]
  /** Finished and still here: for sale, or rootstocks ready to work. */
  readonly finished: number
  readonly finishedOn: Day | null
  readonly outcomes: readonly StepOutcome[]
  readonly losses: readonly Loss[]
  readonly dispatched: readonly {
    readonly order: OrderId | null
    readonly on: Day
    readonly number: number
  }[]
  readonly usedAsRootstock: number
  readonly splitOff: number
  readonly joinedIn: number
  readonly joinedAway: number
  readonly calipers: readonly {
    readonly on: Day
    readonly step: StepId
    readonly calipersMm: readonly number[]
  }[]
  /** Ids of all entries that speak of this batch, in the order in which they count. */
  readonly entries: readonly EntryId[]
}

/** What does not add up: kept and shown until someone settles it by an entry. */
export interface Query {
  readonly id: string
  readonly about: {
    readonly batch?: BatchId
    readonly mother?: MotherId
    readonly order?: OrderId
    readonly lot?: MaterialLotId
  }
  readonly entry: EntryId
  readonly kind: string
  /** The facts of it, worded for people at the edge. */
  readonly facts: Readonly<Record<string, string | number>>
}

export interface MaterialLot {
  readonly id: MaterialLotId
  readonly mother: MotherId
  readonly material: Material
  readonly on: Day
  readonly number: number
  readonly used: number
  readonly stored: string
  readonly goodUntil: Day | null
}

export interface MotherState {
  readonly mother: Mother
  readonly observations: readonly {
    readonly on: Day
    readonly bbch: string | null
    readonly health: string
  }[]
  readonly tests: readonly {
    readonly on: Day
    readonly test: string
    readonly result: 'clean' | 'positive' | 'unclear'
    readonly laboratory: string
    readonly validUntil: Day | null
  }[]
  readonly retired: { readonly on: Day; readonly why: string } | null
  /** All that was taken from it: by collection, or straight into a batch. */
  readonly given: readonly {
    readonly on: Day
    readonly material: Material
    readonly number: number
    readonly batch: BatchId | null
  }[]
}

export interface Hold {
  readonly id: EntryId
  readonly on: Held
  readonly since: Day
  readonly why: string
  readonly released: { readonly on: Day; readonly why: string } | null
}

export interface OrderState {
  readonly order: Order
  readonly cancelled: boolean
  readonly dispatched: number
}

export interface AcceptedPlan {
  readonly plan: string
  readonly entry: EntryId
  readonly on: Day
  readonly starts: readonly {
    readonly start: string
    readonly kindOfTree: KindId
    readonly protocol: ProtocolId
    readonly week: string
    readonly number: number
    readonly bench: BenchId | null
  }[]
  readonly chances: Readonly<Record<string, number>>
}

export interface RateSet {
  readonly protocol: ProtocolId
  readonly step: StepId
  readonly kind: KindId | null
  readonly survival: { readonly low: number; readonly typical: number; readonly high: number }
  readonly on: Day
  readonly why: string
}

/** Everything that the entries say, folded. Maps are keyed by the id of what they hold. */
export interface Nursery {
  readonly site: Site | null
  readonly prices: Prices
  readonly settings: Settings
  readonly benches: ReadonlyMap<BenchId, Bench>
  readonly people: ReadonlyMap<PersonId, Person>
  readonly cultivars: ReadonlyMap<CultivarId, Cultivar>
  readonly kinds: ReadonlyMap<KindId, Kind>
  readonly protocols: ReadonlyMap<ProtocolId, Protocol>
  readonly mothers: ReadonlyMap<MotherId, MotherState>
  readonly lots: ReadonlyMap<MaterialLotId, MaterialLot>
  readonly batches: ReadonlyMap<BatchId, Batch>
  readonly orders: ReadonlyMap<OrderId, OrderState>
  readonly holds: ReadonlyMap<EntryId, Hold>
  readonly rateSets: readonly RateSet[]
  readonly acceptedPlan: AcceptedPlan | null
  readonly tasksDone: ReadonlyMap<string, { readonly on: Day; readonly minutes: number | null }>
  readonly queries: readonly Query[]
}
