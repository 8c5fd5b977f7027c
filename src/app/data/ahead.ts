import { hashKey, type QueryClient, type QueryKey } from '@tanstack/react-query'
import { useSyncExternalStore } from 'react'
import { type AheadAsked, rowsOf } from '../../api/index.ts'
import { atLeisure } from './at-leisure.ts'
import { client } from './client.ts'
import { type KeptView, keptViews } from './device-store.ts'
import { look } from './queries.ts'
import { keepDeeds } from './task-deeds.ts'
import { wantedAhead } from './wanted-ahead.ts'
import { whoNow } from './who.ts'

/** What was fetched before anybody asked for it, to be there where no server answers. */
export interface KeptAhead {
  /** Of what state of the nursery, and for whom. */
  readonly of: string
  /** The instant at which it was all here. */
  readonly at: number
  readonly batches: number
  /** So many batches live. */
  readonly ofBatches: number
  readonly mothers: number
  readonly benches: number
}

const KEPT = 'budstick.ahead'
const AGAIN_MS = 5 * 60_000
/** Nobody has touched the page for so long, and nothing was fetched. */
const QUIET_MS = 4000
/** Few, so that no tap waits while they are written. */
const TOGETHER = 10
const NOTHING: AheadAsked = { batches: [], mothers: [], benches: [] }

const heard = new Set<() => void>()
const textKept = (): string | null => localStorage.getItem(KEPT)
const readKept = (text: string | null): KeptAhead | null =>
  text === null ? null : (JSON.parse(text) as KeptAhead)

/** What this device holds ready, as of when. */
export const useKeptAhead = (): KeptAhead | null =>
  readKept(
    useSyncExternalStore(tell => {
      heard.add(tell)
      return () => heard.delete(tell)
    }, textKept),
  )

const keep = async (answers: readonly (readonly [QueryKey, unknown])[]): Promise<void> => {
  const at = Date.now()
  await keptViews.writeAll(
    answers.map(([key, answer]): [string, KeptView] => [hashKey(key), { json: JSON.stringify(answer), at }]),
  )
}

/** The lists go the way of every view; of what is in them, each goes on the disk alone. */
const fetchAhead = async (queries: QueryClient): Promise<void> => {
  const nursery = await queries.fetchQuery(look.nursery())
  const { plan } = await queries.fetchQuery(look.plan())
  const person = whoNow()
  const of = JSON.stringify([nursery.lastHash, nursery.today, plan?.id, person])
  if (readKept(textKept())?.of === of) return
  const work = await queries.fetchQuery(look.work(undefined))
  const mothers = await queries.fetchQuery(look.mothers())
  const batches = rowsOf(await queries.fetchQuery(look.batchesAlive()))
  await queries.prefetchQuery(look.orders())
  await queries.prefetchQuery(look.benches(undefined))
  await queries.prefetchQuery(look.holds())
  await queries.prefetchQuery(look.queries())
  if (plan !== null) await queries.prefetchQuery(look.seasonPlan())

  await keepDeeds(work.done.map(({ task }) => task))

  const week = { ...work.planned, tasks: rowsOf(work.planned.tasks), done: work.done }
  const wanted = wantedAhead(week, person, {
    batches: batches.map(({ id }) => id),
    mothers: mothers.map(({ mother }) => mother.id),
    benches: nursery.benches.map(({ id }) => id),
  })
  for (const sort of ['batches', 'benches', 'mothers'] as const)
    for (let from = 0; from < wanted[sort].length; from += TOGETHER) {
      await atLeisure(queries, QUIET_MS)
      const piece = { [sort]: wanted[sort].slice(from, from + TOGETHER) }
      const answer = await client.ahead({ ...NOTHING, ...piece } as AheadAsked)
      await keep([
        ...answer.batches.map(view => [look.batch(view.row.id).queryKey, view] as const),
        ...answer.expected.map(({ batch, band }) => [look.batchExpected(batch).queryKey, band] as const),
        ...answer.mothers.map(view => [look.mother(view.row.mother.id).queryKey, view] as const),
        ...answer.benches.map(view => [look.benchStand(view.bench).queryKey, view] as const),
      ])
    }
  const kept: KeptAhead = {
    of,
    at: Date.now(),
    batches: wanted.batches.length,
    ofBatches: batches.length,
    mothers: wanted.mothers.length,
    benches: wanted.benches.length,
  }
  localStorage.setItem(KEPT, JSON.stringify(kept))
  for (const tell of heard) tell()
}

/** Holds ready what will be wanted where no server answers: once the first view stands, and again when it is not the newest. */
export const keepAhead = (queries: QueryClient): void => {
  const again = () => setTimeout(() => keepAhead(queries), AGAIN_MS)
  void atLeisure(queries, QUIET_MS)
    .then(() => fetchAhead(queries))
    // Without a server, or on a device that is full, what is here already stays.
    .catch(() => undefined)
    .finally(again)
}
