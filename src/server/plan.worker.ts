import { parentPort } from 'node:worker_threads'
import { type Plan, type Progress, planMemory, planSeason } from '../planning/index.ts'
import type { Entry, Nursery } from '../record/index.ts'

/** What the planning thread is given. */
export interface PlanWork {
  readonly nursery: Nursery
  readonly today: string
  readonly throughSeq: number
  readonly seasons: number
  readonly seed: number
  readonly previous: Plan | null
  /** What came in since the plan that the new one is compared with. */
  readonly news: readonly Entry[]
  /** One Int32: 0 go on, 1 stop with the best answer so far. */
  readonly stop: SharedArrayBuffer
}

/** What it says back. */
export type PlanWorkSays =
  | { readonly says: 'progress'; readonly progress: Progress }
  | { readonly says: 'plan'; readonly plan: Plan }
  | { readonly says: 'failed'; readonly why: string }

const say = (message: PlanWorkSays): void => parentPort?.postMessage(message)
/** The thread lives on between plans: what was simulated for one is there for the next. */
const memory = planMemory()

parentPort?.on('message', async ({ nursery, stop, ...wish }: PlanWork) => {
  const flag = new Int32Array(stop)
  try {
    const plan = await planSeason(nursery, wish, {
      onProgress: progress => say({ says: 'progress', progress }),
      isStopped: () => Atomics.load(flag, 0) === 1,
      memory,
    })
    say({ says: 'plan', plan })
  } catch (problem) {
    say({ says: 'failed', why: problem instanceof Error ? problem.message : String(problem) })
  }
})
