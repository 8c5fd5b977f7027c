import { rmSync } from 'node:fs'
import { openLog, putLogAside, replaceLog } from '../store/index.ts'
import { phrase } from '../trade/index.ts'
import { type App, createApp } from './app.ts'
import { inBackupThread } from './backup-thread.ts'
import { tellInvented } from './invented.ts'
import { keepState } from './kept-state.ts'
import { type NurseryMemory, openNurseryMemory } from './nursery-memory.ts'
import { nurseryThread } from './nursery-thread.ts'
import { createPlanJobs, type PlanJobs } from './plan-jobs.ts'
import { createRateLooks } from './rate-looks.ts'
import type { Served } from './served.ts'
import { createUnderWay } from './under-way.ts'
import { createWhatIfs } from './what-ifs.ts'

/** The nursery of a folder, served: the same address goes on when a backup is put in its place. */
export interface ServedFolder {
  fetch(request: Request): Response | Promise<Response>
  memory(): NurseryMemory
  plans(): PlanJobs
  /** Fills the nursery, which is empty, with the invented one. */
  invent(): void
  close(): Promise<void>
}

interface Opened {
  readonly app: App
  readonly memory: NurseryMemory
  readonly plans: PlanJobs
  close(): Promise<void>
}

export const serveFolder = async (
  folder: string,
  clock: Pick<Served, 'today' | 'now' | 'newId'>,
): Promise<ServedFolder> => {
  const open = async (): Promise<Opened> => {
    const log = await openLog(folder, { write: true })
    const memory = openNurseryMemory(log)
    const thread = nurseryThread(folder)
    const kept = keepState(memory, thread)
    const plans = createPlanJobs(memory, thread, clock.newId)
    const whatIfs = createWhatIfs(memory, thread, clock.newId)
    const looking = nurseryThread(folder)
    const rateLooks = createRateLooks(memory, looking)
    rateLooks.prepare(clock.today())
    const underWay = createUnderWay()
    return {
      app: createApp({
        ...{ ...clock, memory, plans, whatIfs, rateLooks, underWay },
        ...{ writeBackup, putBack, putAside, invent },
      }),
      memory,
      plans,
      close: async () => {
        plans.close()
        whatIfs.close()
        rateLooks.close()
        await Promise.all([thread.close(), looking.close()])
        kept.close()
        memory.close()
        log.close()
      },
    }
  }
  const writeBackup: Served['writeBackup'] = async (file, { tell, signal }) => {
    tell(0, phrase('Writing the backup.'))
    const heard = (share: number) => tell(share, phrase('Reading the backup once more.'))
    await inBackupThread({ do: 'write', folder, file }, heard, signal)
  }
  /** Half of it is reading what comes, half is keeping what is here; until both are done all stays as it is. */
  const putBack: Served['putBack'] = async (file, keptAs, { tell, signal }) => {
    const ready = `${keptAs}.ready`
    const reading = (share: number) => tell(share / 2, phrase('Reading the backup.'))
    const keeping = (share: number) => tell((1 + share) / 2, phrase('Keeping what is here.'))
    reading(0)
    const entries = await inBackupThread({ do: 'lay ready', from: file, file: ready }, reading, signal)
    try {
      keeping(0)
      await inBackupThread({ do: 'write', folder, file: keptAs }, keeping, signal)
      signal.throwIfAborted()
    } catch (problem) {
      rmSync(ready, { force: true })
      throw problem
    }
    tell(1, phrase('Putting it in its place.'))
    await meanwhile(() => replaceLog(ready, folder, keptAs))
    return entries
  }
  const putAside: Served['putAside'] = async (keptAs, { tell, signal }) => {
    const keeping = (share: number) => tell(share, phrase('Keeping what is here.'))
    keeping(0)
    await inBackupThread({ do: 'write', folder, file: keptAs }, keeping, signal)
    signal.throwIfAborted()
    tell(1, phrase('Opening an empty nursery.'))
    await meanwhile(() => putLogAside(folder, keptAs))
  }
  const invent = (): void => {
    tellInvented(opened.memory, clock)
    opened.plans.begin(clock.today())
  }
  /** Does with the folder what can be done while nobody has its log open. */
  const meanwhile = async <T>(change: () => T): Promise<T> => {
    await opened.close()
    try {
      return change()
    } finally {
      opened = await open()
    }
  }
  let opened = await open()
  return {
    fetch: request => opened.app.fetch(request),
    memory: () => opened.memory,
    plans: () => opened.plans,
    invent,
    close: () => opened.close(),
  }
}
