import type { Plan, Progress, Supposed, WhatIf } from '../planning/index.ts'
import type { NurseryMemory } from './nursery-memory.ts'
import type { NurseryThread } from './nursery-thread.ts'
import { SEED } from './plan-jobs.ts'

export type Answered =
  | { readonly kind: 'answer'; readonly answer: WhatIf }
  /** A later question came, or nobody waits any more. */
  | { readonly kind: 'stopped' }
  | { readonly kind: 'failed'; readonly why: string }

/** What-if, answered in the thread beside the server: one question at a time, the last one asked. */
export interface WhatIfs {
  ask(supposed: Supposed, plan: Plan, today: string, signal: AbortSignal): Promise<Answered>
  onProgress(heard: (progress: Pick<Progress, 'share' | 'says'>) => void): () => void
  close(): void
}

export const createWhatIfs = (memory: NurseryMemory, thread: NurseryThread, newId: () => string): WhatIfs => {
  const listeners = new Set<(progress: Pick<Progress, 'share' | 'says'>) => void>()
  let asked: { question: string; stop: Int32Array; end: (answered: Answered) => void } | null = null

  const end = (answered: Answered): void => {
    const was = asked
    asked = null
    was?.end(answered)
  }
  const giveUp = (): void => {
    if (asked) Atomics.store(asked.stop, 0, 1)
    end({ kind: 'stopped' })
  }
  const forget = [
    thread.onSays(said => {
      if (!('question' in said) || said.question !== asked?.question) return
      if (said.says === 'what-if progress') for (const heard of listeners) heard(said.progress)
      else if (said.says === 'no what-if') end({ kind: 'failed', why: said.why })
      else if (said.says === 'what if')
        end(said.answer === null ? { kind: 'stopped' } : { kind: 'answer', answer: said.answer })
    }),
    thread.onEnd(why => end({ kind: 'failed', why })),
  ]

  return {
    ask: (supposed, plan, today, signal) => {
      giveUp()
      if (signal.aborted) return Promise.resolve({ kind: 'stopped' })
      return new Promise(resolve => {
        const question = newId()
        const stop = new SharedArrayBuffer(4)
        asked = { question, stop: new Int32Array(stop), end: resolve }
        signal.addEventListener('abort', () => {
          if (asked?.question === question) giveUp()
        })
        thread.say({
          do: 'what if',
          question,
          supposed,
          plan,
          today,
          throughSeq: memory.throughSeq(),
          // In the same seasons as the plan: in others an order would be surer or less sure by chance, and be planned anew.
          seasons: plan.seasonsSimulated,
          seed: SEED,
          stop,
        })
      })
    },
    onProgress: heard => {
      listeners.add(heard)
      return () => listeners.delete(heard)
    },
    close: () => {
      giveUp()
      for (const leave of forget) leave()
    },
  }
}
