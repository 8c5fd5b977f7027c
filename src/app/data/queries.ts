import { queryOptions } from '@tanstack/react-query'
import { type LongJob, type NeedsLook, rowsOf, type WeekWork } from '../../api/index.ts'
import type { Supposed } from '../../planning/index.ts'
import type { Phrase } from '../../trade/index.ts'
import { client } from './client.ts'

/** Late batches and poor takes may be thousands: they come column by column. */
const rowsOfLook = ({ late, poor, ...look }: NeedsLook) => ({
  ...look,
  late: rowsOf(late),
  poor: rowsOf(poor),
})

/** Everything that a screen may look at, by name. What is kept on this device is shown until the server answers. */
export const look = {
  nursery: () => queryOptions({ queryKey: ['nursery'], queryFn: client.nursery }),
  orders: () => queryOptions({ queryKey: ['orders'], queryFn: client.orders }),
  batchesAlive: () =>
    queryOptions({
      queryKey: ['batches', 'alive'],
      queryFn: () => client.batches({ state: 'alive', limit: 100_000 }),
      select: rowsOf,
      structuralSharing: false,
    }),
  /** Those that are over, as far as they are called so: too many to be held here. */
  pastBatches: (find: string) =>
    queryOptions({
      queryKey: ['batches', 'past', find],
      queryFn: () => client.batches({ find, state: 'past', limit: 20 }),
      select: rowsOf,
      gcTime: 60_000,
      meta: { kept: false },
    }),
  batch: (id: string) => queryOptions({ queryKey: ['batch', id], queryFn: () => client.batch(id) }),
  /** Of a large record it takes a while after a start: what takes is learnt first. */
  batchExpected: (id: string) =>
    queryOptions({ queryKey: ['batch', id, 'expected'], queryFn: () => client.batchExpected(id) }),
  mothers: () => queryOptions({ queryKey: ['mothers'], queryFn: client.mothers }),
  mother: (id: string) => queryOptions({ queryKey: ['mothers', id], queryFn: () => client.mother(id) }),
  /** Entries by their ids, worded. */
  entries: (ids: readonly string[]) =>
    queryOptions({ queryKey: ['entries', ids], queryFn: () => client.entriesShown(ids), gcTime: 60_000 }),
  holds: () => queryOptions({ queryKey: ['holds'], queryFn: client.holds }),
  queries: () => queryOptions({ queryKey: ['queries'], queryFn: client.queries }),
  benches: (week: string | undefined) =>
    queryOptions({ queryKey: ['benches', week ?? 'now'], queryFn: () => client.benches(week) }),
  fullBenches: () => queryOptions({ queryKey: ['benches', 'full'], queryFn: client.fullBenches }),
  lineage: (what: 'batch' | 'mother', id: string) =>
    queryOptions({ queryKey: ['lineage', what, id], queryFn: () => client.lineage(what, id) }),
  ratesCompared: () => queryOptions({ queryKey: ['rates', 'compared'], queryFn: client.ratesCompared }),
  needsLook: () => queryOptions({ queryKey: ['needs-look'], queryFn: client.needsLook, select: rowsOfLook }),
  protocol: (id: string) => queryOptions({ queryKey: ['protocol', id], queryFn: () => client.protocol(id) }),
  affected: (what: 'batch' | 'mother', id: string) =>
    queryOptions({ queryKey: ['lineage', what, id, 'affected'], queryFn: () => client.affected(what, id) }),
  benchStand: (id: string) =>
    queryOptions({ queryKey: ['benches', 'stand', id], queryFn: () => client.benchStand(id) }),
  rates: () => queryOptions({ queryKey: ['rates'], queryFn: client.rates }),
  broughtIn: () =>
    queryOptions({ queryKey: ['brought-in'], queryFn: client.broughtIn, meta: { kept: false } }),
  kept: () => queryOptions({ queryKey: ['kept-nurseries'], queryFn: client.kept, meta: { kept: false } }),
  plan: () => queryOptions({ queryKey: ['plan'], queryFn: client.plan }),
  seasonPlan: () => queryOptions({ queryKey: ['season-plan'], queryFn: client.seasonPlan }),
  orderPlanned: (order: string) =>
    queryOptions({ queryKey: ['order-planned', order], queryFn: () => client.orderPlanned(order) }),
  promise: (asked: { readonly kind: string; readonly number: number; readonly sure: number }) =>
    queryOptions({
      queryKey: ['promise', asked],
      queryFn: ({ signal }) => client.promise(asked, signal),
      meta: { kept: false },
    }),
  startMoved: (asked: { readonly start: string; readonly week: string; readonly number: number }) =>
    queryOptions({
      queryKey: ['what-if', asked],
      queryFn: ({ signal }) => client.startMoved(asked, signal),
      gcTime: 60_000,
      meta: { kept: false },
    }),
  whatIf: (supposed: Supposed) =>
    queryOptions({
      queryKey: ['what-if', supposed],
      queryFn: ({ signal }) => client.whatIf(supposed, signal),
      gcTime: 60_000,
      meta: { kept: false },
    }),
  /** How far a long answer has come, told by the server as it comes on; never asked. */
  underWay: (of: LongJob) =>
    queryOptions<{ readonly share: number; readonly says: Phrase } | null>({
      queryKey: ['under-way', of],
      queryFn: () => null,
      enabled: false,
      meta: { kept: false },
    }),
  workAgain: (batch: string) =>
    queryOptions({ queryKey: ['work-again', batch], queryFn: () => client.workAgain(batch) }),
  work: (week: string | undefined) =>
    queryOptions({
      queryKey: ['work', week ?? 'now'],
      queryFn: ({ client: seen, queryKey }) => client.work(week, seen.getQueryData<WeekWork>(queryKey)),
      structuralSharing: false,
    }),
}
