import * as z from 'zod'
import { PlannedStart, Task, WeekText } from '../planning/index.ts'
import { Bench, Day, Mother, Order, Person, Prices, Settings, Site } from '../record/index.ts'
import {
  Basis,
  BatchId,
  BenchId,
  Cultivar,
  EntryId,
  FactSaid,
  Kind,
  KindId,
  Material,
  MethodId,
  MethodMark,
  MotherId,
  OrderId,
  PersonId,
  Phrase,
  PlaceKind,
  ProtocolId,
  Sign,
  Species,
  SpeciesId,
  StepId,
  Taking,
} from '../trade/index.ts'
import { PlanJob } from './plan-shapes.ts'
import { tableOf } from './table-shape.ts'

/**
 * What went wrong, where, and how to mend it, in English; and by its code with its values, so that it can be said in another
 * language. Every refusal of the server has this shape.
 */
export const Refusal = z
  .object({
    code: z.string(),
    of: z.record(z.string(), z.any()),
    what: z.string(),
    where: z.string(),
    mend: z.string(),
    /** What a library, the disk or the sheets say themselves; it stands in `mend` too. */
    detail: z.string().optional(),
  })
  .readonly()
export type Refusal = z.infer<typeof Refusal>

export const ProtocolSummary = z
  .object({
    id: ProtocolId,
    name: z.string(),
    version: z.number(),
    method: MethodId,
    /** Null where it serves any fruit. */
    species: SpeciesId.nullable(),
    /** What a start takes. */
    takes: z.array(Taking),
    /** When it may begin here: the condition, and the months that stand for it at this site. */
    window: z.object({ condition: z.string(), months: z.array(z.number().int()), basis: Basis }).readonly(),
    steps: z.array(z.object({ id: StepId, name: z.string(), place: PlaceKind, sign: Sign }).readonly()),
  })
  .readonly()
export type ProtocolSummary = z.infer<typeof ProtocolSummary>

/** Everything a screen needs to give things their names. */
const saidAs = { entry: EntryId, on: Day, why: z.string() }
export const SpeciesSet = z.object({ ...saidAs, species: Species }).readonly()
export const FactSet = z.object({ ...saidAs, species: SpeciesId, set: FactSaid }).readonly()

export const NurseryView = z
  .object({
    site: Site.nullable(),
    today: Day,
    week: WeekText,
    throughSeq: z.number(),
    /** The hash of the last entry, chained to all before: no other nursery has it, nor this one at another time. */
    lastHash: z.string(),
    /** It is the invented one, to look around in. */
    isInvented: z.boolean(),
    settings: Settings,
    prices: Prices,
    benches: z.array(Bench),
    people: z.array(Person),
    cultivars: z.array(Cultivar),
    kinds: z.array(Kind),
    protocols: z.array(ProtocolSummary),
    /** Fruits that the nursery describes itself, and the facts of fruits that it states itself. */
    speciesSets: z.array(SpeciesSet),
    factSets: z.array(FactSet),
    /** Of the batches named after this year and a number, the one with the greatest. */
    lastBatchName: z.string().nullable(),
    counts: z
      .object({
        batches: z.number(),
        plants: z.number(),
        mothers: z.number(),
        openOrders: z.number(),
        queries: z.number(),
        holds: z.number(),
      })
      .readonly(),
  })
  .readonly()
export type NurseryView = z.infer<typeof NurseryView>

export const OrderRow = z
  .object({
    order: Order,
    kindName: z.string(),
    mark: MethodMark.nullable(),
    dispatched: z.number(),
    /** The entries that `dispatched` adds up from, and all that speak of the order. */
    sentBy: z.array(EntryId),
    entries: z.array(EntryId),
    cancelled: z.boolean(),
    /** From the latest plan; null where there is none yet, or it is older than the order. */
    chance: z.number().nullable(),
    chanceAtAcceptance: z.number().nullable(),
  })
  .readonly()
export type OrderRow = z.infer<typeof OrderRow>

export const BatchRow = z
  .object({
    id: BatchId,
    name: z.string(),
    kind: KindId,
    kindName: z.string(),
    method: MethodId,
    mark: MethodMark,
    protocol: ProtocolId,
    startedOn: Day,
    number: z.number(),
    standing: z.number(),
    finished: z.number(),
    lost: z.number(),
    /** Name of the step that most of its plants stand in; "finished", "gone". */
    stage: z.string(),
    benches: z.array(BenchId),
    countedOn: Day.nullable(),
    onHold: z.boolean(),
    queries: z.number(),
  })
  .readonly()
export type BatchRow = z.infer<typeof BatchRow>

export const ShownEntry = z
  .object({
    id: EntryId,
    seq: z.number(),
    on: Day,
    at: z.string().nullable(),
    by: PersonId.nullable(),
    says: Phrase,
    kind: z.string(),
    /** The file of its photograph. */
    picture: z.string().nullable(),
    /** The instant at which it was made on its device, or arrived where that is not known; ISO 8601 in UTC. */
    made: z.string(),
    /** Who struck it, when and why; null where it counts. */
    struck: z.object({ on: Day, by: PersonId.nullable(), why: z.string() }).readonly().nullable(),
  })
  .readonly()
export type ShownEntry = z.infer<typeof ShownEntry>

export const QueryRow = z
  .object({
    id: z.string(),
    entry: EntryId,
    batch: BatchId.nullable(),
    mother: MotherId.nullable(),
    order: OrderId.nullable(),
    says: Phrase,
    /** What the entry that raised it said; null where it has not arrived. */
    raisedBy: z.object({ on: Day, by: PersonId.nullable(), says: Phrase }).readonly().nullable(),
  })
  .readonly()
export type QueryRow = z.infer<typeof QueryRow>

export const MotherRow = z
  .object({
    mother: Mother,
    cultivarName: z.string(),
    givenThisYear: z.array(
      z.object({ material: Material, number: z.number(), mayGive: z.number() }).readonly(),
    ),
    onHold: z.boolean(),
    retired: z.boolean(),
    lastTest: z
      .object({
        on: Day,
        test: z.string(),
        result: z.enum(['clean', 'positive', 'unclear']),
        validUntil: Day.nullable(),
      })
      .readonly()
      .nullable(),
    bbch: z.string().nullable(),
  })
  .readonly()
export type MotherRow = z.infer<typeof MotherRow>

/** What stands on a bench in a week, or is expected to. */
export const BenchView = z
  .object({
    bench: BenchId,
    /** What can be used in that week. */
    areaSquareMetres: z.number(),
    stands: z.array(
      z
        .object({
          batch: BatchId.nullable(),
          /** A planned start that is not begun yet. */
          start: z.string().nullable(),
          name: z.string(),
          kindName: z.string(),
          mark: MethodMark,
          step: z.string(),
          /** The step as entries name it; null of finished plants. */
          stepId: StepId.nullable(),
          number: z.number(),
          squareMetres: z.number(),
          /** Foreseen, not told by an entry. */
          expected: z.boolean(),
        })
        .readonly(),
    ),
  })
  .readonly()
export type BenchView = z.infer<typeof BenchView>

const LineageRef = z.object({ what: z.enum(['mother', 'lot', 'batch', 'bought']), id: z.string() }).readonly()

/** The family of a batch or mother tree. Generations below nought came before it, those above came of it. */
export const LineageView = z
  .object({
    of: LineageRef,
    things: z.array(
      z
        .object({
          what: z.enum(['mother', 'lot', 'batch', 'bought']),
          id: z.string(),
          name: z.string(),
          detail: z.string(),
          mark: MethodMark.nullable(),
          generation: z.number().int(),
          number: z.number(),
          onHold: z.boolean(),
        })
        .readonly(),
    ),
    links: z.array(
      z
        .object({
          from: LineageRef,
          to: LineageRef,
          number: z.number(),
          /** The first day on which any went. */
          on: Day,
          as: z.string(),
          entries: z.array(EntryId),
        })
        .readonly(),
    ),
    /** Further relatives that were left out of a family too large to draw. */
    notShown: z.number().int(),
  })
  .readonly()
export type LineageView = z.infer<typeof LineageView>

/** What is known of a batch where work is done. */
export const WorkBatch = BatchRow.unwrap()
  .pick({
    id: true,
    name: true,
    kind: true,
    protocol: true,
    startedOn: true,
    finished: true,
    onHold: true,
  })
  .readonly()
export type WorkBatch = z.infer<typeof WorkBatch>

/** What a plan asks for in a week. */
export const WeekPlanned = z
  .object({
    tasks: tableOf(Task),
    /** The starts that the tasks belong to. */
    starts: z.array(PlannedStart),
  })
  .readonly()
export type WeekPlanned = z.infer<typeof WeekPlanned>

export const WorkList = z
  .object({
    week: WeekText,
    monday: Day,
    /** Names what is planned: as long as it is the same, so is that. */
    mark: z.string(),
    /** Null where the asker named this mark: it has it already. */
    planned: WeekPlanned.nullable(),
    /** The batches that the tasks are about, and those from which they may send out. */
    batches: tableOf(WorkBatch),
    /** What is done, and the entry that says so. */
    done: z.array(
      z
        .object({
          task: z.string(),
          entry: EntryId,
          /** How many it was done to; null where nobody said so. */
          number: z.number().nullable(),
        })
        .readonly(),
    ),
    /** Tasks that a hold stops: their wood, plants or trees may not be taken, begun with, sold or sent out. */
    stopped: z.array(z.string()),
    accepted: z.boolean(),
  })
  .readonly()
export type WorkList = z.infer<typeof WorkList>

/** The work of a week with what is planned, whether it was just answered or known before. */
export type WeekWork = WorkList & { readonly planned: WeekPlanned }

export const EntriesPushed = z
  .object({
    accepted: z.array(z.object({ id: EntryId, seq: z.number() }).readonly()),
    known: z.array(EntryId),
    refused: z.array(z.object({ index: z.number(), id: z.string().nullable(), refusal: Refusal }).readonly()),
    throughSeq: z.number(),
  })
  .readonly()
export type EntriesPushed = z.infer<typeof EntriesPushed>

export const EntriesPulled = z.object({ entries: z.array(ShownEntry), throughSeq: z.number() }).readonly()
export type EntriesPulled = z.infer<typeof EntriesPulled>

/** One step of one protocol: what takes, and where the number comes from. */
export const RateRow = z
  .object({
    protocol: ProtocolId,
    protocolName: z.string(),
    method: MethodId,
    step: StepId,
    stepName: z.string(),
    sign: Sign,
    kind: KindId.nullable(),
    kindName: z.string().nullable(),
    mean: z.number(),
    low: z.number(),
    high: z.number(),
    from: z.enum(['facts', 'records', 'set by the nursery']),
    /** The entry that overrules it. */
    setBy: EntryId.nullable(),
    basis: z.string(),
    sources: z.array(z.string()),
    batches: z.number(),
    entered: z.number(),
    survived: z.number(),
  })
  .readonly()
export type RateRow = z.infer<typeof RateRow>

/** What may take long, beside the plan. */
export const LongJob = z.enum(['what if', 'promise', 'start moved', 'reading', 'backup'])
export type LongJob = z.infer<typeof LongJob>

/** Server-sent events, one `data:` line of JSON each. */
export const ServerEvent = z.discriminatedUnion('event', [
  z.object({ event: z.literal('entries'), throughSeq: z.number() }).readonly(),
  z.object({ event: z.literal('job'), job: PlanJob }).readonly(),
  /** How far what was asked for has come, and in what. */
  z.object({ event: z.literal('under way'), of: LongJob, share: z.number(), says: Phrase }).readonly(),
  /** Midnight has passed at the nursery. */
  z.object({ event: z.literal('day'), today: Day }).readonly(),
])
export type ServerEvent = z.infer<typeof ServerEvent>

/** Which entries are asked for; a number adds up from no more. */
export const EntryIds = z.object({ ids: z.array(EntryId).max(100_000) })
export const PushEntries = z.object({ entries: z.array(z.unknown()).max(20_000) })
