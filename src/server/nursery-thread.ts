import type { Worker } from 'node:worker_threads'
import type { ThreadSays, ThreadWork } from './nursery.worker.ts'
import { endThread, openThread } from './open-thread.ts'

/** A thread that was asked nothing for so long is ended: its memory grows with the nursery. */
const IDLE_MINUTES = 30

/** A thread with its own fold of the log, for work that would keep everybody waiting: it lives on for the next. */
export interface NurseryThread {
  say(work: ThreadWork): void
  onSays(heard: (said: ThreadSays) => void): () => void
  /** Hears why when the thread has ended without being asked to. */
  onEnd(heard: (why: string) => void): () => void
  close(): Promise<void>
}

/** @param folder of the log */
export const nurseryThread = (folder: string): NurseryThread => {
  const listeners = new Set<(said: ThreadSays) => void>()
  const mourners = new Set<(why: string) => void>()
  let worker: Worker | null = null
  let idle: NodeJS.Timeout | undefined
  let asked = 0

  const living = (): Worker => {
    const made = openThread('nursery', { folder })
    let why = 'The thread stopped.'
    asked = 0
    made.unref()
    made.on('message', (said: ThreadSays) => {
      for (const heard of listeners) heard(said)
      if (said.says.endsWith('progress')) return
      asked -= 1
      if (asked === 0) idle = setTimeout(rest, IDLE_MINUTES * 60_000).unref()
    })
    made.on('error', problem => {
      why = problem.message
    })
    made.on('exit', () => {
      if (worker !== made) return
      worker = null
      for (const heard of mourners) heard(why)
    })
    return made
  }
  /** The next that is asked goes to another thread. */
  const rest = (): void => {
    if (worker) void endThread(worker)
    worker = null
  }
  const listening = <T>(to: Set<T>) => {
    return (heard: T) => {
      to.add(heard)
      return () => void to.delete(heard)
    }
  }
  return {
    say: work => {
      clearTimeout(idle)
      worker ??= living()
      asked += 1
      worker.postMessage(work)
    },
    onSays: listening(listeners),
    onEnd: listening(mourners),
    close: async () => {
      clearTimeout(idle)
      if (worker) await endThread(worker)
    },
  }
}
