import { availableParallelism } from 'node:os'
import type { Worker } from 'node:worker_threads'
import type { Line } from '../planning/index.ts'
import { openThread } from './open-thread.ts'

/** Each thread holds the season once more. */
const MOST_THREADS = 4

/** The other cores of this computer, as threads that begin when they are first asked for and live on for the next plan. */
export const seasonThreads = (): (() => readonly Line[]) => {
  const count = Math.min(MOST_THREADS, availableParallelism() - 1)
  let threads: readonly Worker[] | undefined
  return () => {
    threads ??= Array.from({ length: count }, () => {
      const thread = openThread('seasons', null)
      thread.unref()
      return thread.on('error', problem => {
        throw problem
      })
    })
    return threads
  }
}
