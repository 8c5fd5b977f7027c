import { checkBackup, openLog, putLogAside, replaceLog } from '../store/index.ts'
import { type App, createApp } from './app.ts'
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
      app: createApp({ ...clock, memory, plans, whatIfs, rateLooks, underWay, putBack, putAside, invent }),
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
  const putBack = async (file: string, keptAs: string): Promise<number> => {
    checkBackup(file)
    return meanwhile(() => replaceLog(file, folder, keptAs))
  }
  const putAside = (keptAs: string): Promise<void> => meanwhile(() => putLogAside(folder, keptAs))
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
