/** The door of the API: the shapes that server and screens share, and the client. The routes have a door of their own. */
export { Ahead, AheadAsked } from './ahead-shapes.ts'
export { BATCH_SUMS, BandPoint, BatchView } from './batch-shapes.ts'
export { type Carrying, fetchCarried, sendCarried } from './carry.ts'
export { type Client, createClient, Refused } from './client.ts'
export { RatesCompared } from './compared-shapes.ts'
export {
  AcceptedReading,
  BroughtRow,
  EmptySheet,
  KeptNursery,
  Mapping,
  PutBack,
  ReadCell,
  ReadColumn,
  Reading,
  ReadQuestion,
  ReadSheet,
  SheetField,
  SheetKind,
  SheetSaid,
  TakenBack,
} from './exchange-shapes.ts'
export { HoldRow } from './hold-shapes.ts'
export { JournalEntry, JournalPage, TaskDeed } from './journal-shapes.ts'
export { LicenceRow } from './licence-shapes.ts'
export { FullBench, NeedsLook, Slumped } from './look-shapes.ts'
export { PictureFile, pictureFileOf } from './picture-file.ts'
export { PlanHead, PlanJob, PlanState, SeasonPlan } from './plan-shapes.ts'
export { CouldBePromised, StartMoved, WorkAgain } from './promise-shapes.ts'
export { AffectedView, BenchStand, LotRow, MotherView } from './record-shapes.ts'
export { REFUSALS, type RefusalCode, refusal, wordsOf } from './refusals.ts'
export {
  BatchRow,
  BenchView,
  EntriesPulled,
  EntriesPushed,
  LineageView,
  LongJob,
  MotherRow,
  NurseryView,
  OrderRow,
  ProtocolSummary,
  PushEntries,
  QueryRow,
  RateRow,
  Refusal,
  ServerEvent,
  ShownEntry,
  WeekPlanned,
  type WeekWork,
  WorkBatch,
  WorkList,
} from './shapes.ts'
export { rowsOf, type Table, toTable } from './table.ts'
