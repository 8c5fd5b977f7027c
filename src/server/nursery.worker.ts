import { parentPort, workerData } from 'node:worker_threads'
import {
  type HowFar,
  type Plan,
  type Progress,
  planMemory,
  planSeason,
  type Supposed,
  type WhatIf,
  whatIf,
  whatIfMemory,
} from '../planning/index.ts'
import type { Entry } from '../record/index.ts'
import { mayBeEndedBy, openLog } from '../store/index.ts'
import { foldLog } from './folded-log.ts'
import type { ThreadData } from './open-thread.ts'
import { seasonThreads } from './season-threads.ts'
import { type Look, looks } from './views/looks.ts'

/** What the thread is asked: the state is that after the entry `throughSeq` of the log. */
export type ThreadWork =
  | PlanWork
  | WhatIfWork
  | LookWork
  | { readonly do: 'keep the state'; readonly throughSeq: number }

export interface PlanWork {
  readonly do: 'plan'
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

export interface WhatIfWork {
  readonly do: 'what if'
  readonly question: string
  readonly supposed: Supposed
  readonly plan: Plan
  readonly today: string
  readonly throughSeq: number
  readonly seasons: number
  readonly seed: number
  /** One Int32: 0 go on, 1 stop without an answer. */
  readonly stop: SharedArrayBuffer
}

export interface LookWork {
  readonly do: 'look'
  readonly question: string
  readonly look: Look
  /** What it is about, as the look has it. */
  readonly of: unknown
  readonly today: string
  readonly throughSeq: number
  /** One Int32: 0 go on, 1 stop without an answer. */
  readonly stop: SharedArrayBuffer
}

/** What it says back. */
export type ThreadSays =
  | { readonly says: 'progress'; readonly progress: Progress }
  | { readonly says: 'plan'; readonly plan: Plan }
  | { readonly says: 'no plan'; readonly why: string }
  | {
      readonly says: 'what-if progress'
      readonly question: string
      readonly progress: Pick<Progress, 'share' | 'says'>
    }
  /** Null when it was stopped, or speaks of an order that is not known. */
  | { readonly says: 'what if'; readonly question: string; readonly answer: WhatIf | null }
  | { readonly says: 'no what-if'; readonly question: string; readonly why: string }
  | {
      readonly says: 'look progress'
      readonly question: string
      readonly progress: Pick<Progress, 'share' | 'says'>
    }
  | { readonly says: 'look'; readonly question: string; readonly answer: unknown }
  | { readonly says: 'no look'; readonly question: string; readonly why: string }
  | { readonly says: 'state kept'; readonly throughSeq: number }
  | { readonly says: 'state not kept'; readonly why: string }

const say = (message: ThreadSays): void => parentPort?.postMessage(message)
const whyOf = (problem: unknown) => (problem instanceof Error ? problem.message : String(problem))

const { gate, own } = workerData as ThreadData<{ readonly folder: string }>
mayBeEndedBy(gate)
const opened = openLog(own.folder).then(log => ({ log, folded: foldLog(log) }))
/** The thread lives on between plans: what was simulated for one is there for the next. */
const memory = planMemory()
const questions = whatIfMemory(memory.simulated)
const lines = seasonThreads()

async function plan({ throughSeq, stop, ...wish }: PlanWork): Promise<void> {
  const { folded } = await opened
  folded.catchUp(throughSeq)
  const flag = new Int32Array(stop)
  const made = await planSeason(
    folded.nursery(),
    { ...wish, throughSeq: folded.throughSeq() },
    {
      onProgress: progress => say({ says: 'progress', progress }),
      isStopped: () => Atomics.load(flag, 0) === 1,
      memory,
      lines,
    },
  )
  say({ says: 'plan', plan: made })
}

async function answer({ question, throughSeq, stop, ...asked }: WhatIfWork): Promise<void> {
  const { folded } = await opened
  folded.catchUp(throughSeq)
  const flag = new Int32Array(stop)
  const said = await whatIf(
    { ...asked, nursery: folded.nursery() },
    {
      memory: questions,
      onProgress: (share, says) => say({ says: 'what-if progress', question, progress: { share, says } }),
      isStopped: () => Atomics.load(flag, 0) === 1,
    },
  )
  say({ says: 'what if', question, answer: said })
}

async function lookAt({ question, look, of, today, throughSeq, stop }: LookWork): Promise<void> {
  const { folded } = await opened
  const flag = new Int32Array(stop)
  const tell: HowFar = (share, says) => {
    if (Atomics.load(flag, 0) === 1) throw new Error('Nobody waits for it any more.')
    say({ says: 'look progress', question, progress: { share, says } })
  }
  folded.catchUp(throughSeq)
  const answerOf = looks[look] as (...asked: unknown[]) => unknown
  say({ says: 'look', question, answer: answerOf(folded.nursery(), today, of, tell) })
}

async function keepTheState(throughSeq: number): Promise<void> {
  const { log, folded } = await opened
  folded.catchUp(throughSeq)
  log.saveSnapshot(folded.throughSeq(), folded.nursery())
  say({ says: 'state kept', throughSeq: folded.throughSeq() })
}

/** One after the other: what was solved and simulated is kept from one to the next. */
let last = Promise.resolve()
parentPort?.on('message', (work: ThreadWork) => {
  last = last.then(() => done(work))
})

async function done(work: ThreadWork): Promise<void> {
  try {
    if (work.do === 'plan') await plan(work)
    else if (work.do === 'what if') await answer(work)
    else if (work.do === 'look') await lookAt(work)
    else await keepTheState(work.throughSeq)
  } catch (problem) {
    const why = whyOf(problem)
    if (work.do === 'plan') say({ says: 'no plan', why })
    else if (work.do === 'what if') say({ says: 'no what-if', question: work.question, why })
    else if (work.do === 'look') say({ says: 'no look', question: work.question, why })
    else say({ says: 'state not kept', why })
  }
}
