import type {
  BatchId,
  BenchId,
  Cultivar,
  CultivarId,
  EntryId,
  FactSaid,
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
  Species,
  SpeciesId,
  StepId,
} from '../trade/index.ts'
import type { Held, LaterEntry, Source } from './entry.ts'
import type { Query, SettledQuery } from './query.ts'
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

/** Finished plants of one grade on one bench. */
export interface FinishedPortion {
  readonly bench: BenchId | null
  readonly grade: string
  readonly since: Day
  readonly number: number
}

/**
 * What one step did to a batch so far: the raw material of rates. Always
 * entered + found = left + lost + missing + what stands in it.
 */
export interface StepOutcome {
  readonly step: StepId
  /** Came in alive: started, advanced, or with a split or a join. */
  readonly entered: number
  readonly firstEntered: Day
  /** Left the step alive: advanced, finished, used, split off or joined away. */
  readonly left: number
  /** Of `entered` and of `left`, those that changed batch (by a split or a join) and stayed in the step. */
  readonly cameAcross: number
  readonly wentAcross: number
  readonly lastLeft: Day | null
  readonly lost: number
  /** More than the record had, and fewer, as counts found. */
  readonly found: number
  readonly missing: number
  /** Moves into it that no entry says, and that another entry shows to have happened. */
  readonly unsaid: number
  /** The bench on which its first plants stood. */
  readonly bench: BenchId | null
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

/** One parent of a batch, with how much of it went in, and when. */
export interface Origin {
  readonly entry: EntryId
  readonly on: Day
  readonly from: 'mother' | 'lot' | 'batch' | 'bought'
  /** Id of the mother, lot or batch; name of the supplier. */
  readonly id: string
  /** The material or part that it gave. `rest` is a batch split off, `joined` one put with this one. */
  readonly as:
    | Material
    | 'rootstock'
    | 'interstem'
    | 'scion'
    | 'whole plant'
    | 'lot'
    | 'rest'
    | 'joined'
    | (string & {})
  readonly number: number
  /** It was in every plant of the batch from the first day; otherwise it came by a join or a rework. */
  readonly atBirth: boolean
}

/** A stretch of time in which plants of the batch stood on a bench; `to` null: they still do. */
export interface Stay {
  readonly bench: BenchId
  readonly from: Day
  readonly to: Day | null
}

export interface Batch {
  readonly id: BatchId
  readonly name: string
  readonly kind: KindId
  readonly protocol: ProtocolId
  /** Of a batch split off: when the one that it comes from was started. */
  readonly startedOn: Day
  /** The entry that began it: its start, or the split. */
  readonly begunBy: EntryId
  /** Plants that it began with. */
  readonly number: number
  readonly workedBy: readonly PersonId[]
  /** As said at the start and at each rework. */
  readonly sources: readonly Source[]
  /** Every parent, with splits and joins. */
  readonly origins: readonly Origin[]
  /** The batch that it was split from, if it was not started for itself. */
  readonly splitFrom: BatchId | null
  readonly candidates: readonly CultivarId[]
  /** The name found after a doubt. */
  readonly settledAs: CultivarId | null
  readonly nucellar: boolean
  /** Living plants not yet finished, by step and bench. */
  readonly portions: readonly Portion[]
  /** Finished and still here: for sale, or rootstocks ready to work. */
  readonly finished: number
  /** Day on which the first were finished. */
  readonly finishedOn: Day | null
  /** Where the finished plants stand; their numbers add up to `finished`. */
  readonly finishedPortions: readonly FinishedPortion[]
  readonly outcomes: readonly StepOutcome[]
  readonly losses: readonly Loss[]
  readonly dispatched: readonly {
    readonly entry: EntryId
    readonly order: OrderId | null
    /** Who had it, where no order says so. */
    readonly to: string
    readonly on: Day
    readonly number: number
  }[]
  readonly cameBack: readonly {
    readonly entry: EntryId
    readonly order: OrderId | null
    readonly on: Day
    readonly number: number
  }[]
  /** The sum of what came back. */
  readonly returned: number
  readonly usedAsRootstock: number
  /** Went whole into other batches. */
  readonly usedWhole: number
  readonly splitOff: number
  readonly joinedIn: number
  readonly joinedAway: number
  /** More plants than the record had, and fewer, over all steps. */
  readonly found: number
  readonly missing: number
  readonly calipers: readonly {
    readonly entry: EntryId
    readonly on: Day
    readonly step: StepId
    readonly calipersMm: readonly number[]
  }[]
  readonly grades: readonly {
    readonly entry: EntryId
    readonly on: Day
    readonly step: StepId
    readonly grades: Readonly<Record<string, number>>
  }[]
  readonly pottings: readonly {
    readonly entry: EntryId
    readonly on: Day
    readonly step: StepId
    readonly number: number
    readonly potLitres: number
  }[]
  /** Worked over to a kind that it was not before. */
  readonly reworks: readonly {
    readonly entry: EntryId
    readonly on: Day
    readonly number: number
    readonly was: KindId
    readonly kind: KindId
  }[]
  readonly stays: readonly Stay[]
  /** Days on which a blade went through its plants, and whose. */
  readonly blades: readonly { readonly on: Day; readonly person: PersonId }[]
  /** Ids of all entries that speak of this batch, struck ones too, in the order in which they count. */
  readonly entries: readonly EntryId[]
}

export interface MaterialLot {
  readonly id: MaterialLotId
  readonly mother: MotherId
  readonly material: Material
  readonly on: Day
  readonly number: number
  /** Went into batches. */
  readonly used: number
  readonly discarded: number
  readonly stored: string
  readonly goodUntil: Day | null
  /** Ids of all entries that speak of it, struck ones too, in the order in which they count. */
  readonly entries: readonly EntryId[]
}

export interface MotherState {
  readonly mother: Mother
  readonly observations: readonly {
    readonly on: Day
    /** Two or three figures; null: no stage was said, or none that is one. */
    readonly bbch: string | null
    readonly health: string
  }[]
  readonly tests: readonly {
    readonly on: Day
    readonly test: string
    readonly result: 'clean' | 'positive' | 'unclear'
    readonly laboratory: string
    readonly reference: string
    readonly validUntil: Day | null
    readonly by: PersonId | null
    readonly entry: EntryId
  }[]
  readonly retired: { readonly on: Day; readonly why: string } | null
  /** All that was taken from it: by collection, or straight into a batch. */
  readonly given: readonly {
    readonly on: Day
    readonly material: Material
    readonly number: number
    readonly batch: BatchId | null
    readonly lot: MaterialLotId | null
    readonly by: PersonId | null
    readonly entry: EntryId
  }[]
  /** Ids of all entries that speak of it, struck ones too, in the order in which they count. */
  readonly entries: readonly EntryId[]
}

export interface Hold {
  readonly id: EntryId
  readonly on: Held
  readonly since: Day
  readonly why: string
  readonly released: { readonly by: EntryId; readonly on: Day; readonly why: string } | null
}

export interface OrderState {
  readonly order: Order
  readonly cancelled: boolean
  /** Sent, less what came back. */
  readonly dispatched: number
  /** The entries that this adds up from. */
  readonly sentBy: readonly EntryId[]
  /** Ids of all entries that speak of it, struck ones too, in the order in which they count. */
  readonly entries: readonly EntryId[]
}

/** An entry that counts no more, and the entry that says so. */
export interface Struck {
  readonly by: EntryId
  readonly on: Day
  readonly why: string
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

/** A start that the nursery fixed itself, by kind and protocol; the last word on a week counts. */
export interface StartSet {
  /** Null of one that is only supposed. */
  readonly entry: EntryId | null
  readonly kind: KindId
  readonly protocol: ProtocolId
  readonly week: string
  readonly number: number
  readonly insteadOf: string | null
}

export interface RateSet {
  /** Null of one that is only supposed. */
  readonly entry: EntryId | null
  readonly protocol: ProtocolId
  readonly step: StepId
  readonly kind: KindId | null
  readonly survival: { readonly low: number; readonly typical: number; readonly high: number }
  readonly on: Day
  readonly why: string
}

export interface ProtocolVersion {
  readonly version: Protocol['version']
  readonly on: Day
}

/** A fruit that the nursery describes itself. */
export interface SpeciesSet {
  readonly entry: EntryId
  readonly species: Species
  readonly on: Day
  readonly why: string
}

/** A figure or a window of a fruit that the nursery states itself. */
export interface FactSet {
  readonly entry: EntryId
  readonly species: SpeciesId
  readonly set: FactSaid
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
  /** The last version of each; what still stands in it as the facts gave it follows `factSets`. */
  readonly protocols: ReadonlyMap<ProtocolId, Protocol>
  /** When each protocol was written down or changed, in that order: a batch follows the one of its start. */
  readonly protocolVersions: ReadonlyMap<ProtocolId, readonly ProtocolVersion[]>
  readonly mothers: ReadonlyMap<MotherId, MotherState>
  readonly lots: ReadonlyMap<MaterialLotId, MaterialLot>
  readonly batches: ReadonlyMap<BatchId, Batch>
  readonly orders: ReadonlyMap<OrderId, OrderState>
  readonly holds: ReadonlyMap<EntryId, Hold>
  /** The last time that each bench was counted against the record. */
  readonly benchCounts: ReadonlyMap<BenchId, { readonly entry: EntryId; readonly on: Day }>
  /** Of an entry that says a bench, a person or a mother tree anew, the one before it that said the same thing. */
  readonly insteadOf: ReadonlyMap<EntryId, EntryId>
  /** Ids of the notes and photographs about anything with an id, struck ones too, in the order in which they count. */
  readonly notes: ReadonlyMap<string, readonly EntryId[]>
  readonly rateSets: readonly RateSet[]
  readonly speciesSets: readonly SpeciesSet[]
  readonly factSets: readonly FactSet[]
  readonly acceptedPlan: AcceptedPlan | null
  readonly startSets: readonly StartSet[]
  readonly tasksDone: ReadonlyMap<
    string,
    {
      readonly entry: EntryId
      readonly on: Day
      /** How many it was done to; null where the entry is of a kind that did not say so. */
      readonly number: number | null
      readonly minutes: number | null
    }
  >
  /** What does not add up and no one has settled yet, in order of the entries. */
  readonly queries: readonly Query[]
  readonly settledQueries: readonly SettledQuery[]
  readonly struck: ReadonlyMap<EntryId, Struck>
  /** Entries of a newer version of the program. */
  readonly waiting: readonly LaterEntry[]
  /** No longer here; kept so that old entries keep their names. */
  readonly former: {
    readonly benches: ReadonlyMap<BenchId, Bench>
    readonly people: ReadonlyMap<PersonId, Person>
    readonly kinds: ReadonlyMap<KindId, Kind>
  }
}
