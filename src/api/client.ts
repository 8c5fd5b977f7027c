import type { OrderForecast, Supposed, WhatIf } from '../planning/index.ts'
import type { Entry } from '../record/index.ts'
import type { Protocol } from '../trade/index.ts'
import type { Ahead, AheadAsked } from './ahead-shapes.ts'
import type { BandPoint, BatchView } from './batch-shapes.ts'
import { type Carrying, sendCarried } from './carry.ts'
import type { RatesCompared } from './compared-shapes.ts'
import type {
  AcceptedReading,
  BroughtRow,
  EmptySheet,
  KeptNursery,
  Mapping,
  PutBack,
  Reading,
  TakenBack,
} from './exchange-shapes.ts'
import type { HoldRow } from './hold-shapes.ts'
import type { JournalPage, TaskDeed } from './journal-shapes.ts'
import type { FullBench, NeedsLook } from './look-shapes.ts'
import type { PlanJob, PlanState, SeasonPlan } from './plan-shapes.ts'
import type { CouldBePromised, StartMoved, WorkAgain } from './promise-shapes.ts'
import type { AffectedView, BenchStand, MotherView } from './record-shapes.ts'
import { refusal } from './refusals.ts'
import type {
  BatchRow,
  BenchView,
  EntriesPulled,
  EntriesPushed,
  LineageView,
  MotherRow,
  NurseryView,
  OrderRow,
  QueryRow,
  RateRow,
  Refusal,
  ServerEvent,
  ShownEntry,
  WeekWork,
  WorkList,
} from './shapes.ts'
import type { Table } from './table.ts'

/** The server said no, in words that a person can act on. */
export class Refused extends Error {
  override readonly name = 'Refused'
  readonly status: number
  readonly refusal: Refusal
  constructor(status: number, refusal: Refusal) {
    super(`${refusal.what} (${refusal.where}): ${refusal.mend}`)
    this.status = status
    this.refusal = refusal
  }
}

/** The server as the screens see it. Every call throws `Refused`, or `TypeError` when no server answers. */
export const createClient = (base = '') => {
  const ask = async <T>(path: string, init?: RequestInit): Promise<T> => {
    return answered<T>(path, await fetch(`${base}/api${path}`, init))
  }
  const answered = async <T>(path: string, answer: Response): Promise<T> => {
    if (!answer.ok) {
      const said = await answer.json().catch(() => null)
      throw new Refused(answer.status, said ?? refusal('odd-answer', { status: answer.status, path }))
    }
    return (answer.status === 204 ? undefined : answer.json()) as Promise<T>
  }
  const send = <T>(
    path: string,
    method: 'POST' | 'DELETE',
    body?: unknown,
    signal?: AbortSignal,
  ): Promise<T> =>
    ask(path, {
      method,
      signal: signal ?? null,
      headers: { 'content-type': 'application/json' },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    })
  const query = (values: Record<string, string | number | undefined>): string => {
    const kept = Object.entries(values).filter(([, value]) => value !== undefined && value !== '')
    return kept.length ? `?${new URLSearchParams(kept.map(([k, v]) => [k, String(v)]))}` : ''
  }

  return {
    nursery: () => ask<NurseryView>('/nursery'),
    orders: () => ask<OrderRow[]>('/orders'),
    mothers: () => ask<MotherRow[]>('/mothers'),
    mother: (id: string) => ask<MotherView>(`/mothers/${encodeURIComponent(id)}`),
    holds: () => ask<HoldRow[]>('/holds'),
    queries: () => ask<QueryRow[]>('/queries'),
    ratesCompared: () => ask<RatesCompared>('/rates/compared'),
    needsLook: () => ask<NeedsLook>('/needs-look'),
    protocol: (id: string) => ask<Protocol>(`/protocols/${encodeURIComponent(id)}`),
    rates: () => ask<RateRow[]>('/rates'),
    batches: (wanted: { find?: string; state?: 'alive' | 'past' | 'all'; limit?: number } = {}) =>
      ask<Table<BatchRow>>(`/batches${query(wanted)}`),
    batch: (id: string) => ask<BatchView>(`/batches/${encodeURIComponent(id)}`),
    batchExpected: (id: string) => ask<BandPoint[]>(`/batches/${encodeURIComponent(id)}/expected`),
    benches: (week?: string) => ask<BenchView[]>(`/benches${query({ week })}`),
    fullBenches: () => ask<FullBench[]>('/full-benches'),
    lineage: (what: 'batch' | 'mother', id: string) =>
      ask<LineageView>(`/lineage/${what}/${encodeURIComponent(id)}`),
    affected: (what: 'batch' | 'mother', id: string) =>
      ask<AffectedView>(`/lineage/${what}/${encodeURIComponent(id)}/affected`),
    ahead: (asked: AheadAsked) => send<Ahead>('/ahead', 'POST', asked),
    benchStand: (id: string) => ask<BenchStand>(`/benches/${encodeURIComponent(id)}`),
    /** @param before what was answered last: what is planned is not sent again while it is the same */
    work: async (week?: string, before?: WeekWork): Promise<WeekWork> => {
      const said = await ask<WorkList>(`/work${query({ week, known: before?.mark })}`)
      return { ...said, planned: said.planned ?? before!.planned }
    },
    promise: (asked: { kind: string; number: number; sure: number }, signal?: AbortSignal) =>
      ask<CouldBePromised>(`/promise${query(asked)}`, { signal: signal ?? null }),
    startMoved: (asked: { start: string; week: string; number: number }, signal?: AbortSignal) =>
      ask<StartMoved>(`/what-if/start${query(asked)}`, { signal: signal ?? null }),
    whatIf: (suppose: Supposed, signal: AbortSignal) =>
      ask<WhatIf>('/what-if', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ suppose }),
        signal,
      }),
    workAgain: (batch: string) => ask<WorkAgain | null>(`/batches/${encodeURIComponent(batch)}/again`),
    plan: () => ask<PlanState>('/plan'),
    seasonPlan: () => ask<SeasonPlan>('/plan/season'),
    orderPlanned: (order: string) => ask<OrderForecast | null>(`/plan/orders/${encodeURIComponent(order)}`),
    startPlan: () => send<PlanJob>('/plan', 'POST'),
    stopPlan: () => send<PlanJob>('/plan/job', 'DELETE'),
    acceptPlan: (plan: string, by: string | null) => send<PlanState>('/plan/accept', 'POST', { plan, by }),
    entriesAfter: (after: number, limit?: number) => ask<EntriesPulled>(`/entries${query({ after, limit })}`),
    entriesShown: (ids: readonly string[]) => send<ShownEntry[]>('/entries/shown', 'POST', { ids }),
    journal: (asked: { before?: number | undefined; find?: string }) =>
      ask<JournalPage>(`/journal${query(asked)}`),
    deedsOf: (tasks: readonly string[]) => send<TaskDeed[]>('/journal/deeds', 'POST', { tasks }),
    pushEntries: (entries: readonly Entry[]) => send<EntriesPushed>('/entries', 'POST', { entries }),
    /** Reads spreadsheets and says what they would write. `FormData` sets its own header. */
    readFiles: async (files: readonly File[], by: Carrying) => {
      const form = new FormData()
      for (const file of files) form.append('files', file, file.name)
      const path = '/exchange/read'
      return answered<Reading>(path, await sendCarried(`${base}/api${path}`, form, by))
    },
    readAgain: (reading: string, mapping: Mapping, signal: AbortSignal) =>
      send<Reading>(`/exchange/read/${encodeURIComponent(reading)}`, 'POST', { mapping }, signal),
    acceptReading: (reading: string, by: string | null, signal: AbortSignal) =>
      send<AcceptedReading>('/exchange/accept', 'POST', { reading, by }, signal),
    broughtIn: () => ask<BroughtRow[]>('/exchange/brought'),
    takeBack: (brought: string, by: string | null) =>
      send<TakenBack>(`/exchange/brought/${encodeURIComponent(brought)}/strike`, 'POST', { by }),
    keepPicture: async (file: string, bytes: ArrayBuffer): Promise<void> => {
      await ask(`/pictures/${file}`, {
        method: 'PUT',
        headers: { 'content-type': 'image/jpeg' },
        body: bytes,
      })
    },
    putBack: async (backup: Blob, by: Carrying) =>
      answered<PutBack>('/restore', await sendCarried(`${base}/api/restore`, backup, by)),
    kept: () => ask<KeptNursery[]>('/kept'),
    /** The invented nursery is put aside, and an empty one begins; or the other way round. */
    beginOwn: (signal: AbortSignal) => send<PutBack>('/own-nursery', 'POST', undefined, signal),
    openInvented: (signal: AbortSignal) => send<PutBack>('/invented-nursery', 'POST', undefined, signal),
    putBackKept: (name: string, { signal }: Pick<Carrying, 'signal'>) =>
      send<PutBack>(`/kept/${encodeURIComponent(name)}/restore`, 'POST', undefined, signal),
    emptySheets: () => ask<EmptySheet[]>('/exchange/sheets'),
    /** Addresses to download from. */
    downloads: {
      /** `orders.csv`, `orders.xlsx`, or `all.xlsx` for one workbook of all sheets. */
      emptySheet: (file: string) => `${base}/api/exchange/sheets/${encodeURIComponent(file)}`,
      family: (what: 'batch' | 'mother', id: string, table: 'family.csv' | 'letters.csv' | 'nearby.csv') =>
        `${base}/api/lineage/${what}/${encodeURIComponent(id)}/${table}`,
      picture: (file: string) => `${base}/api/pictures/${encodeURIComponent(file)}`,
      entries: `${base}/api/exchange/export`,
      table: (file: string) => `${base}/api/exchange/export/${encodeURIComponent(file)}`,
      backup: `${base}/api/backup`,
    },
    /** What the server tells on its own: new entries, and how the planning job goes on. Call the result to stop listening. */
    listen: (heard: (event: ServerEvent) => void): (() => void) => {
      const source = new EventSource(`${base}/api/events`)
      source.onmessage = message => heard(JSON.parse(message.data))
      return () => source.close()
    },
  }
}
export type Client = ReturnType<typeof createClient>
