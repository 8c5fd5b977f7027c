import type { PlanJob } from '../api/index.ts'
import { Plan } from '../planning/index.ts'
import { phrase } from '../trade/index.ts'
import { newsSince } from './news-since.ts'
import type { ThreadSays } from './nursery.worker.ts'
import type { NurseryMemory } from './nursery-memory.ts'
import type { NurseryThread } from './nursery-thread.ts'

/** Seasons simulated for the chance that is shown: a chance of 0.9 is then known to about 0.013. */
const SEASONS = 2_000
export const SEED = 20_260_101

/**
 * The planner: one job at a time in the thread beside the server; the last plan is kept over restarts, and the next
 * begins from it.
 */
export interface PlanJobs {
  latest(): Plan | null
  job(): PlanJob | null
  /** Begins a job, or says null because one is running. */
  begin(today: string): PlanJob | null
  /** Asks the running job to end with its best answer; null when none runs. */
  stop(): PlanJob | null
  onChange(heard: (job: PlanJob) => void): () => void
  close(): void
}

export const createPlanJobs = (
  memory: NurseryMemory,
  thread: NurseryThread,
  newId: () => string,
): PlanJobs => {
  /** A plan that another version of the program wrote may not fit this one: then there is none until the next is made. */
  let latest: Plan | null = Plan.safeParse(memory.log.recall('latest-plan')).data ?? null
  let job: PlanJob | null = null
  let stopFlag: Int32Array | null = null
  const listeners = new Set<(job: PlanJob) => void>()

  const tell = (next: PlanJob): void => {
    job = next
    for (const heard of listeners) heard(next)
  }

  /** Why the plan will be gone after a restart; null when it is kept. */
  const keep = (plan: Plan): string | null => {
    try {
      memory.log.remember('latest-plan', plan)
      return null
    } catch (problem) {
      return `It is not kept for the next start. ${problem instanceof Error ? problem.message : String(problem)}`
    }
  }

  const hear = (running: PlanJob, message: ThreadSays): void => {
    switch (message.says) {
      case 'progress':
        tell({ ...running, ...message.progress })
        return
      case 'plan': {
        latest = message.plan
        const stopped = message.plan.outcome.kind === 'stopped early'
        tell({
          ...running,
          state: stopped ? 'stopped' : 'done',
          stage: 'answer',
          share: 1,
          says: phrase(stopped ? 'Stopped with the best plan so far.' : 'The plan is ready.'),
          why: keep(message.plan),
        })
        return
      }
      case 'no plan':
        tell({ ...running, state: 'failed', says: phrase('The plan could not be made.'), why: message.why })
    }
  }

  const forget = [
    thread.onSays(said => {
      if (job?.state === 'running') hear(job, said)
    }),
    thread.onEnd(why => {
      if (job?.state === 'running')
        tell({ ...job, state: 'failed', says: phrase('The planner ended without an answer.'), why })
    }),
  ]

  return {
    latest: () => latest,
    job: () => job,
    begin: today => {
      if (job?.state === 'running') return null
      const begun: PlanJob = {
        id: newId(),
        state: 'running',
        stage: 'reading',
        share: 0,
        says: phrase('Reading the nursery.'),
        why: null,
      }
      const stop = new SharedArrayBuffer(4)
      stopFlag = new Int32Array(stop)
      tell(begun)
      thread.say({
        do: 'plan',
        today,
        throughSeq: memory.throughSeq(),
        seasons: SEASONS,
        seed: SEED,
        previous: latest,
        news: newsSince(memory, latest),
        stop,
      })
      return begun
    },
    stop: () => {
      if (job?.state !== 'running' || stopFlag === null) return null
      Atomics.store(stopFlag, 0, 1)
      tell({ ...job, says: phrase('Stopping with the best plan so far.') })
      return job
    },
    onChange: heard => {
      listeners.add(heard)
      return () => listeners.delete(heard)
    },
    close: () => {
      for (const leave of forget) leave()
    },
  }
}
