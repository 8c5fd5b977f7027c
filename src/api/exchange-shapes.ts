import * as z from 'zod'
import { Day } from '../record/index.ts'
import { EntryId, PersonId, Phrase } from '../trade/index.ts'

/** What a sheet of a nursery is about. Each has its own fields, and its own empty sheet to begin from. */
export const SheetKind = z.enum([
  'orders',
  'mothers',
  'benches',
  'people',
  'batches',
  'kinds',
  'history',
  'cultivars',
  'passport',
  'nursery',
])
export type SheetKind = z.infer<typeof SheetKind>

/** What the user says of one sheet. What is not said is guessed, or was said of such a sheet before. */
export const SheetSaid = z
  .object({
    /** Null: the sheet is left out. */
    kind: SheetKind.nullable().optional(),
    /** Field by the header of its column; null: this column is not read. */
    columns: z.record(z.string(), z.string().nullable()).optional(),
    /** Choice by question. */
    answers: z.record(z.string(), z.string()).optional(),
  })
  .readonly()
export type SheetSaid = z.infer<typeof SheetSaid>

/** By the sheet's id (`orders.csv`, `nursery.xlsx#Orders`), or by its headers for sheets like it. */
export const Mapping = z.record(z.string(), SheetSaid)
export type Mapping = z.infer<typeof Mapping>

const Choice = z.object({ id: z.string(), says: z.string() }).readonly()

/** What a sheet of such a kind can say. */
export const SheetField = z
  .object({ id: z.string(), name: z.string(), says: z.string(), needed: z.boolean() })
  .readonly()
export type SheetField = z.infer<typeof SheetField>

export const ReadColumn = z
  .object({
    /** As a spreadsheet letters it: A, B, … AA. */
    column: z.string(),
    header: z.string(),
    field: z.string().nullable(),
    /** By its header, by what was said of such a sheet before, by the user now; null: it is not read. */
    by: z.enum(['header', 'before', 'user']).nullable(),
    examples: z.array(z.string()),
  })
  .readonly()
export type ReadColumn = z.infer<typeof ReadColumn>

export const ReadSheet = z
  .object({
    id: z.string(),
    file: z.string(),
    /** Null for a file that is one table. */
    sheet: z.string().nullable(),
    /** How the file is written: "Windows-1252, semicolons". */
    written: z.string(),
    kind: SheetKind.nullable(),
    /** As the spreadsheet numbers it; null where none was found. */
    headerRow: z.number().nullable(),
    columns: z.array(ReadColumn),
    rows: z
      .object({
        /** Below the header. */
        all: z.number(),
        good: z.number(),
        bad: z.number(),
        /** Blank, totals, the header again. */
        passedOver: z.number(),
      })
      .readonly(),
  })
  .readonly()
export type ReadSheet = z.infer<typeof ReadSheet>

/** What only the user can know: whether 3/4/2027 is in March or in April, which fruit a name means. */
export const ReadQuestion = z
  .object({
    id: z.string(),
    /** Id of the sheet: the answer goes under `answers` of that sheet. */
    sheet: z.string(),
    column: z.string().nullable(),
    asks: z.string(),
    choices: z.array(Choice),
    examples: z.array(z.string()),
    answer: z.string().nullable(),
    suggested: z.string().nullable(),
    /** Nothing can be accepted before it is answered; the others may stay open, at the cost of their rows. */
    needed: z.boolean(),
  })
  .readonly()
export type ReadQuestion = z.infer<typeof ReadQuestion>

/** A cell that could not be read as it stands. */
export const ReadCell = z
  .object({
    file: z.string(),
    sheet: z.string().nullable(),
    row: z.number(),
    column: z.string(),
    header: z.string(),
    said: z.string(),
    wrong: z.string(),
    done: z.string(),
    /** The row was left out for it. */
    rowLost: z.boolean(),
  })
  .readonly()
export type ReadCell = z.infer<typeof ReadCell>

/** What the files say, before anything is written. */
export const Reading = z
  .object({
    id: z.string(),
    sheets: z.array(ReadSheet),
    questions: z.array(ReadQuestion),
    cells: z.array(ReadCell),
    /** What the program took for granted to make a plan possible, each with how to say it otherwise. */
    assumptions: z.array(z.object({ about: z.string(), says: z.string() }).readonly()),
    /** Files that could not be opened at all. */
    unread: z.array(z.object({ file: z.string(), wrong: z.string() }).readonly()),
    /** What would be written: how many of each, and the first of them in words. */
    would: z.array(
      z
        .object({ kind: z.string(), number: z.number(), says: z.string(), first: z.array(z.string()) })
        .readonly(),
    ),
    /** How many rows say what the nursery has word for word already. */
    known: z.number(),
    mapping: Mapping,
    fields: z.partialRecord(SheetKind, z.array(SheetField)),
    /** No needed question is open, and there is something to write. */
    ready: z.boolean(),
  })
  .readonly()
export type Reading = z.infer<typeof Reading>

export const AcceptedReading = z
  .object({
    written: z.number(),
    byKind: z.array(z.object({ kind: z.string(), number: z.number() }).readonly()),
    throughSeq: z.number(),
    /** By which it can be taken back as one. */
    brought: z.string(),
  })
  .readonly()
export type AcceptedReading = z.infer<typeof AcceptedReading>

/** What was once brought in from spreadsheets. */
export const BroughtRow = z
  .object({
    id: z.string(),
    /** Instant, ISO 8601 in UTC. */
    at: z.string(),
    by: PersonId.nullable(),
    files: z.array(z.string()).readonly(),
    written: z.number(),
    /** Of what was written, how much is not struck. */
    standing: z.number(),
  })
  .readonly()
export type BroughtRow = z.infer<typeof BroughtRow>

/** What was brought in, taken back: what was struck, and what could not be, since other entries rest on it. */
export const TakenBack = z
  .object({
    /** The entries that strike, one for each that is struck. */
    strikes: z.array(EntryId).readonly(),
    stay: z.number(),
    /** The first of those that stay, each with an entry that rests on it. */
    reasons: z.array(z.object({ entry: EntryId, says: Phrase, for: Phrase, on: Day }).readonly()).readonly(),
  })
  .readonly()
export type TakenBack = z.infer<typeof TakenBack>

/** A nursery that was kept as a backup when another was put in its place. */
export const KeptNursery = z
  .object({ name: z.string(), /** Instant, ISO 8601 in UTC. */ at: z.string() })
  .readonly()
export type KeptNursery = z.infer<typeof KeptNursery>

/** A backup put in the place of the nursery. */
export const PutBack = z
  .object({
    entries: z.number(),
    /** The file that holds what was there before. */
    keptAs: z.string(),
    /** Its name among those that are kept. */
    kept: z.string(),
  })
  .readonly()
export type PutBack = z.infer<typeof PutBack>

/** The kinds of sheet that can be saved empty, each with headers and one example. */
export const EmptySheet = z
  .object({ kind: SheetKind, name: z.string(), says: z.string(), fields: z.array(SheetField) })
  .readonly()
export type EmptySheet = z.infer<typeof EmptySheet>
