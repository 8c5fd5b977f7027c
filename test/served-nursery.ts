import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { uuidv7 } from 'uuidv7'
import type { AnyEntry, Entry } from '../src/record/index.ts'
import {
  type App,
  createApp,
  createPlanJobs,
  createRateLooks,
  createWhatIfs,
  type NurseryMemory,
  type NurseryThread,
  nurseryThread,
  openNurseryMemory,
  type PlanJobs,
} from '../src/server/index.ts'
import { createUnderWay } from '../src/server/under-way.ts'
import { openLog } from '../src/store/index.ts'
import { EntryId } from '../src/trade/index.ts'

/** A new folder for a nursery's log, thrown away at the end by `discard`. */
export const newFolder = (): string => mkdtempSync(join(tmpdir(), 'budstick-nursery-'))
export const discard = (folder: string): void => rmSync(folder, { recursive: true, force: true })

const cannotPutBack = () =>
  Promise.reject(new Error('This nursery stands on one log, called without its folder.'))

/** The server as it is, on a log on disk, called without a port. */
export interface ServedNursery {
  readonly app: App
  readonly memory: NurseryMemory
  readonly plans: PlanJobs
  readonly thread: NurseryThread
  /** The nursery's date, to be turned by the test. */
  today: string
  /** Asks, and reads the answer as JSON. */
  ask(path: string, init?: RequestInit): Promise<{ status: number; json: never }>
  push(entries: readonly unknown[]): Promise<{ status: number; json: never }>
  close(): Promise<void>
}

export const serveNursery = async (
  folder: string,
  today: string,
  entries: readonly AnyEntry[] = [],
): Promise<ServedNursery> => {
  const log = await openLog(folder, { write: true })
  const now = () => '2026-05-19T06:00:00.000Z'
  if (entries.length > 0) log.append(entries, now())
  const memory = openNurseryMemory(log)
  const thread = nurseryThread(folder)
  const plans = createPlanJobs(memory, thread, uuidv7)
  const whatIfs = createWhatIfs(memory, thread, uuidv7)
  const rateLooks = createRateLooks(memory, thread)
  const app = createApp({
    memory,
    plans,
    whatIfs,
    rateLooks,
    underWay: createUnderWay(),
    today: () => served.today,
    now,
    newId: uuidv7,
    writeBackup: file => log.backup(file),
    putBack: cannotPutBack,
    putAside: cannotPutBack,
    invent: () => undefined,
  })
  const ask = async (path: string, init?: RequestInit) => {
    const answer = await app.request(`http://localhost${path}`, init)
    return { status: answer.status, json: (await answer.json()) as never }
  }
  const served: ServedNursery = {
    app,
    memory,
    plans,
    thread,
    today,
    ask,
    push: said =>
      ask('/api/entries', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ entries: said }),
      }),
    close: async () => {
      plans.close()
      whatIfs.close()
      rateLooks.close()
      await thread.close()
      memory.close()
      log.close()
    },
  }
  return served
}

/** An entry as a device makes it. */
export const entryOf = (body: object, on = '2026-05-19'): Entry =>
  ({ id: EntryId.parse(uuidv7()), on, at: null, by: null, device: 'test', body }) as Entry

/** Waits until something holds; says what was waited for when it never does. */
export const until = async <T>(
  what: string,
  look: () => T | Promise<T>,
  holds: (seen: T) => boolean,
  seconds = 90,
): Promise<T> => {
  const end = Date.now() + seconds * 1000
  for (;;) {
    const seen = await look()
    if (holds(seen)) return seen
    if (Date.now() > end)
      throw new Error(
        `${what} did not come true in ${seconds} s; last seen: ${JSON.stringify(seen)?.slice(0, 600)}`,
      )
    await new Promise(wait => setTimeout(wait, 50))
  }
}
