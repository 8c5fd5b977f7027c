/** The door of the record: what entries say, the state they fold to, and what can be asked of it. */
export {
  type AnyEntry,
  Body,
  type BodyOf,
  bodies,
  Entry,
  Held,
  isKnown,
  LaterEntry,
  type Logged,
  type LoggedEntry,
  Source,
} from './entry.ts'
export { changePhrase } from './entry-change.ts'
export { canonicalJson, entryLine, type ParsedEntry, parseEntry, parseEntryLine } from './entry-line.ts'
export { madeAt } from './entry-made.ts'
export { compareEntries } from './entry-order.ts'
export { type EntryNames, entryPhrase, entryText } from './entry-text.ts'
export { aliveIn, finishedStep, unknownStep } from './fold/batch-draft.ts'
export { createFold, type Fold, foldEntries } from './fold/fold.ts'
export { visitSubjects } from './fold/subjects.ts'
export { countOnSupplies, givenInSeason, seasonYear } from './fold/supplies.ts'
export { fruitsOf } from './fruits-of.ts'
export { type History, historyText, readHistory } from './history.ts'
export { type LicenceTally, licenceTally } from './licence-tally.ts'
export { type Affected, affectedBy, type Carrier, type SentOut } from './lineage/affected.ts'
export { childrenOf } from './lineage/children.ts'
export type { Link, Ref } from './lineage/graph.ts'
export { type HeldThings, heldBatches, heldLots, heldMothers, heldThings } from './lineage/holds.ts'
export { type Identity, identityOf, identityPhrase } from './lineage/identity.ts'
export {
  type SharedBench,
  type SharedBlade,
  type SharedGround,
  sharedGround,
} from './lineage/shared-ground.ts'
export { type Lineage, lineageOf, type Reached, type Trace } from './lineage/trace.ts'
export { type BatchNumber, type BatchSums, batchSums, numbersBehind } from './numbers-behind.ts'
export { foldVersion, nurseryFromBytes, nurseryToBytes } from './nursery-text.ts'
export { type Observation, observations } from './observations.ts'
export { deedOf } from './one-deed.ts'
export type { Query, SettledQuery } from './query.ts'
export { type QueryKind, queryKinds, queryPhrase } from './query-text.ts'
export {
  Accepted,
  Bench,
  Day,
  Mother,
  Order,
  Person,
  Prices,
  Settings,
  Site,
  Supply,
  Week,
} from './register.ts'
export type {
  AcceptedPlan,
  Batch,
  FactSet,
  FinishedPortion,
  Hold,
  Look,
  Loss,
  MaterialLot,
  MotherState,
  Nursery,
  OrderState,
  Origin,
  Portion,
  RateSet,
  SpeciesSet,
  StartSet,
  Stay,
  StepOutcome,
  Struck,
} from './state.ts'
export { restedOn } from './what-rests.ts'
