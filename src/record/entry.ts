import * as z from 'zod'
import {
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
  ShareFigure,
  Sign,
  Species,
  SpeciesId,
  StepId,
} from '../trade/index.ts'
import { Bench, Day, Mother, Order, Person, Prices, Settings, Site, Week } from './register.ts'

const Plants = z.number().int().min(0).max(10_000_000)
const SomePlants = Plants.min(1)

/** Where a batch's plants come from, with quantities: the edges of lineage. */
export const Source = z.discriminatedUnion('from', [
  z
    .object({
      from: z.literal('mother'),
      mother: MotherId,
      material: Material,
      number: z.number().positive(),
    })
    .readonly(),
  z.object({ from: z.literal('lot'), lot: MaterialLotId, number: z.number().positive() }).readonly(),
  z
    .object({
      from: z.literal('batch'),
      batch: BatchId,
      as: z.enum(['rootstock', 'interstem', 'scion', 'whole plant']),
      number: SomePlants,
    })
    .readonly(),
  z
    .object({
      from: z.literal('bought'),
      supplier: z.string(),
      material: z.string(),
      number: z.number().positive(),
    })
    .readonly(),
])
export type Source = z.infer<typeof Source>

export const Held = z.discriminatedUnion('what', [
  z.object({ what: z.literal('mother'), mother: MotherId }).readonly(),
  z.object({ what: z.literal('batch'), batch: BatchId }).readonly(),
  z.object({ what: z.literal('bench'), bench: BenchId }).readonly(),
  /** The mother or batch and everything that came from it. */
  z
    .object({
      what: z.literal('lineage'),
      of: z.union([z.object({ mother: MotherId }), z.object({ batch: BatchId })]),
    })
    .readonly(),
])
export type Held = z.infer<typeof Held>

const body = <K extends string, S extends z.ZodRawShape>(kind: K, shape: S) =>
  z.object({ kind: z.literal(kind), ...shape }).readonly()

/** One schema for each kind of entry. A kind's number rises when its shape changes; an old one is never reused. */
export const bodies = {
  // The nursery itself
  siteSet: body('site-set/1', { site: Site }),
  benchSet: body('bench-set/1', { bench: Bench }),
  benchRemoved: body('bench-removed/1', { bench: BenchId, why: z.string() }),
  personSet: body('person-set/1', { person: Person }),
  personLeft: body('person-left/1', { person: PersonId }),
  cultivarSet: body('cultivar-set/1', { cultivar: Cultivar }),
  kindSet: body('kind-set/1', { kindOfTree: Kind }),
  kindDropped: body('kind-dropped/1', { kindOfTree: KindId, why: z.string() }),
  protocolSet: body('protocol-set/1', { protocol: Protocol }),
  pricesSet: body('prices-set/1', { prices: Prices }),
  settingsSet: body('settings-set/1', { settings: Settings }),
  /** A rate that the nursery states itself, against facts and records, with its reason. */
  rateSet: body('rate-set/1', {
    protocol: ProtocolId,
    step: StepId,
    kindOfTree: KindId.nullable(),
    survival: ShareFigure,
    why: z.string().min(1),
  }),

  /** A fruit that the facts do not know, or that the nursery describes anew as a whole. */
  speciesSet: body('species-set/1', { species: Species, why: z.string().min(1) }),
  /** A figure or a window of a fruit that the nursery states itself, against the facts, with its reason. */
  factSet: body('fact-set/1', { species: SpeciesId, set: FactSaid, why: z.string().min(1) }),

  // Mother trees and material
  motherSet: body('mother-set/1', { mother: Mother }),
  motherObserved: body('mother-observed/1', {
    mother: MotherId,
    bbch: z.string().nullable(),
    health: z.string(),
  }),
  motherTested: body('mother-tested/1', {
    mother: MotherId,
    test: z.string().min(1),
    result: z.enum(['clean', 'positive', 'unclear']),
    laboratory: z.string(),
    /** The laboratory's own number for it. */
    reference: z.string().optional(),
    validUntil: Day.nullable(),
  }),
  motherRetired: body('mother-retired/1', { mother: MotherId, why: z.string() }),
  materialCollected: body('material-collected/1', {
    lot: MaterialLotId,
    mother: MotherId,
    material: Material,
    number: z.number().positive(),
    stored: z.string(),
    goodUntil: Day.nullable(),
  }),

  /** Spoiled, dried out or thrown away before it was used. */
  materialDiscarded: body('material-discarded/1', {
    lot: MaterialLotId,
    number: z.number().positive(),
    why: z.string().min(1),
  }),

  // Batches
  batchStarted: body('batch-started/1', {
    batch: BatchId,
    name: z.string().min(1),
    kindOfTree: KindId,
    protocol: ProtocolId,
    number: SomePlants,
    sources: z.array(Source).readonly(),
    bench: BenchId.nullable(),
    workedBy: z.array(PersonId).readonly(),
    /** Where labels were lost or mixed: what it may be. Empty when the name is sure. */
    candidates: z.array(CultivarId).readonly().default([]),
    /** Seedlings grown from the mother's own tissue, not from a cross, and so true to her. */
    nucellar: z.boolean().optional(),
    /**
     * Some way on when this record began with it: the step in which `number` plants stood, or `finished`, and since
     * when. What went before is not known, so nothing is learnt from it.
     */
    takenOver: z.object({ step: StepId, since: Day }).readonly().optional(),
  }),
  /** One look over the plants that stand in a step: taken, dead (thrown out at this look), not yet to tell. */
  counted: body('counted/1', {
    batch: BatchId,
    step: StepId,
    sign: Sign,
    taken: Plants,
    dead: Plants,
    undecided: Plants,
  }),
  /**
   * A bench counted against the record, batch by batch. `stood` is what the record had there when it was counted;
   * `cause` says why there are fewer, and is empty where none is known.
   */
  benchCounted: body('bench-counted/1', {
    bench: BenchId,
    lines: z
      .array(
        z
          .object({ batch: BatchId, step: StepId, stood: Plants, counted: Plants, cause: z.string() })
          .readonly(),
      )
      .readonly(),
  }),
  lost: body('lost/1', { batch: BatchId, step: StepId, number: SomePlants, cause: z.string().min(1) }),
  advanced: body('advanced/1', {
    batch: BatchId,
    from: StepId,
    to: StepId,
    number: SomePlants,
    bench: BenchId.nullable(),
  }),
  /** Past the last step: fit to sell, or to be worked on if it is a rootstock. */
  finished: body('finished/1', { batch: BatchId, number: SomePlants, grade: z.string().default('') }),
  moved: body('moved/1', { batch: BatchId, step: StepId, number: SomePlants, to: BenchId }),
  split: body('split/1', {
    batch: BatchId,
    step: StepId,
    number: SomePlants,
    into: BatchId,
    name: z.string().min(1),
    why: z.string(),
  }),
  joined: body('joined/1', { batch: BatchId, step: StepId, number: SomePlants, into: BatchId }),
  measured: body('measured/1', {
    batch: BatchId,
    step: StepId,
    calipersMm: z.array(z.number().positive()).min(1).readonly(),
  }),
  graded: body('graded/1', { batch: BatchId, step: StepId, grades: z.record(z.string(), Plants) }),
  pottedOn: body('potted-on/1', {
    batch: BatchId,
    step: StepId,
    number: SomePlants,
    potLitres: z.number().positive(),
  }),
  /** A living tree worked over to another cultivar: it gains a parent and keeps its old ones. */
  reworked: body('reworked/1', {
    batch: BatchId,
    step: StepId,
    number: SomePlants,
    kindOfTree: KindId,
    sources: z.array(Source).readonly(),
  }),
  nameSettled: body('name-settled/1', { batch: BatchId, cultivar: CultivarId, how: z.string() }),
  dispatched: body('dispatched/1', {
    batch: BatchId,
    order: OrderId.nullable(),
    number: SomePlants,
    to: z.string().default(''),
  }),
  returned: body('returned/1', {
    batch: BatchId,
    order: OrderId.nullable(),
    number: SomePlants,
    why: z.string(),
  }),

  // Holds
  holdPlaced: body('hold-placed/1', { on: Held, why: z.string().min(1) }),
  holdReleased: body('hold-released/1', { hold: EntryId, why: z.string().min(1) }),

  // Orders and plans
  orderPlaced: body('order-placed/1', { order: Order }),
  orderChanged: body('order-changed/1', { order: Order, why: z.string().default('') }),
  orderCancelled: body('order-cancelled/1', { order: OrderId, why: z.string() }),
  planAccepted: body('plan-accepted/1', {
    plan: z.string().min(1),
    starts: z
      .array(
        z
          .object({
            start: z.string(),
            kindOfTree: KindId,
            protocol: ProtocolId,
            week: Week,
            number: SomePlants,
            bench: BenchId.nullable(),
          })
          .readonly(),
      )
      .readonly(),
    /** Chance of each order when it was accepted, to compare with later. */
    chances: z.record(z.string(), z.number()),
  }),
  /** A start that is to be begun so, whatever the planner would do: in this week, so many. */
  startSet: body('start-set/1', {
    kindOfTree: KindId,
    protocol: ProtocolId,
    week: Week,
    number: SomePlants,
    /** The start of a plan whose place it takes, by the plan's name for it; null where it comes beside the others. */
    insteadOf: z.string().nullable(),
  }),
  taskDone: body('task-done/1', { task: z.string().min(1), minutes: z.number().min(0).nullable() }),
  taskDoneWithNumber: body('task-done/2', {
    task: z.string().min(1),
    /** How many it was done to, which may be other than planned. */
    number: z.number().min(0),
    minutes: z.number().min(0).nullable(),
  }),

  // Words, pictures, corrections
  noted: body('noted/1', { about: z.string(), text: z.string().min(1) }),
  photographed: body('photographed/1', { about: z.string(), file: z.string(), caption: z.string() }),
  /** The entry named was wrong. It stays to be seen, and counts no more. */
  struck: body('struck/1', { entry: EntryId, why: z.string().min(1) }),
  /** Someone looked into a query and says how it stands. The query is kept, with the answer. */
  querySettled: body('query-settled/1', { query: z.string().min(1), how: z.string().min(1) }),
} as const

export const Body = z.discriminatedUnion(
  'kind',
  Object.values(bodies) as [typeof bodies.siteSet, ...(typeof bodies)[keyof typeof bodies][]],
)
export type Body = { readonly [K in keyof typeof bodies]: z.infer<(typeof bodies)[K]> }[keyof typeof bodies]
export type BodyOf<K extends Body['kind']> = Extract<Body, { kind: K }>

const envelope = {
  /** UUIDv7, made where the entry was made. */
  id: EntryId,
  /** The day on which it happened. */
  on: Day,
  /** Time of day, if it matters: `07:40`. */
  at: z
    .string()
    .regex(/^([01]\d|2[0-3]):[0-5]\d$/)
    .nullable(),
  by: PersonId.nullable(),
  device: z.string().max(120),
}

/** A fact about the nursery, said once and never edited. */
export const Entry = z.object({ ...envelope, body: Body }).readonly()
export interface Entry {
  readonly id: EntryId
  readonly on: Day
  readonly at: string | null
  readonly by: PersonId | null
  readonly device: string
  readonly body: Body
}

const knownKinds: ReadonlySet<string> = new Set(
  Object.values(bodies).map(schema => schema.unwrap().shape.kind.value),
)

/** An entry of a kind that only a newer version of the program knows: kept as it is, and waits. */
export const LaterEntry = z
  .object({
    ...envelope,
    body: z
      .looseObject({
        kind: z
          .string()
          .regex(/^[a-z]+(-[a-z]+)*\/\d+$/, 'a kind of entry is words and a number: counted/1')
          .refine(kind => !knownKinds.has(kind), 'this version knows the kind, and the rest does not fit it'),
      })
      .readonly(),
  })
  .readonly()
export interface LaterEntry extends Omit<Entry, 'body'> {
  readonly body: { readonly kind: string; readonly [field: string]: unknown }
}

export type AnyEntry = Entry | LaterEntry

/** Whether this version of the program knows what the entry says. */
export const isKnown = (entry: AnyEntry): entry is Entry => knownKinds.has(entry.body.kind)

/** An entry as the log keeps it: numbered, timed, and chained to the one before. */
export type Logged<E extends AnyEntry> = E & {
  readonly seq: number
  /** Instant of arrival, ISO 8601 in UTC. */
  readonly receivedAt: string
  /** SHA-256 over the hash before, the instant of arrival and this entry's canonical text, lower-case hex. */
  readonly hash: string
}
export type LoggedEntry = Logged<AnyEntry>
