import type { BandPoint } from '../api/index.ts'
import type { HowFar } from '../planning/index.ts'
import type { BatchId } from '../trade/index.ts'
import type { NurseryMemory } from './nursery-memory.ts'
import type { NurseryThread } from './nursery-thread.ts'
import { type AskedOf, type Look, type Looks as LooksOf, looks } from './views/looks.ts'

/** What is known of so few batches is looked through sooner than it is asked for in a thread. */
const FEW_BATCHES = 2_000
/** Bands that are kept in memory. */
const MOST_BANDS = 20_000

/** Looks at what rests on rates: of a large record in a thread of its own, so that nobody else waits for it. */
export interface RateLooks {
  ask<L extends Look>(
    look: L,
    of: AskedOf<L>,
    today: string,
    watched?: Watched,
  ): Promise<ReturnType<LooksOf[L]>>
  /**
   * In what a batch's counts are expected to run, by the rates learnt last: one count more hardly moves them, and the newer
   * ones are there for the next who asks.
   */
  band(batch: BatchId, today: string): Promise<readonly BandPoint[]>
  /** Has the rates of a large record learnt, so that they are there for the first who asks. */
  prepare(today: string): void
  close(): void
}

/** Of a look that takes long: given up by the signal, and then nothing is answered; it tells how far it is. */
export interface Watched {
  readonly signal: AbortSignal
  readonly tell: HowFar
}

interface BandKnown {
  readonly throughSeq: number
  readonly today: string
  readonly band: readonly BandPoint[]
}

interface Waiting {
  readonly answer: (answer: unknown) => void
  readonly fail: (problem: Error) => void
  readonly tell: HowFar | undefined
}

/** @param thread not the one that plans: a look would wait for the plan */
export const createRateLooks = (
  memory: NurseryMemory,
  thread: NurseryThread,
  fewBatches = FEW_BATCHES,
): RateLooks => {
  const waiting = new Map<string, Waiting>()
  const bands = new Map<string, BandKnown>()
  const answers = new Map<Look, { readonly of: string; readonly answer: Promise<unknown> }>()
  let asked = 0

  const failAll = (why: string): void => {
    for (const { fail } of waiting.values()) fail(new Error(why))
    waiting.clear()
  }
  const forget = [
    thread.onSays(said => {
      if (said.says === 'look progress')
        waiting.get(said.question)?.tell?.(said.progress.share, said.progress.says)
      if (said.says !== 'look' && said.says !== 'no look') return
      const asking = waiting.get(said.question)
      waiting.delete(said.question)
      if (said.says === 'look') asking?.answer(said.answer)
      else asking?.fail(new Error(said.why))
    }),
    thread.onEnd(failAll),
  ]

  const lookThrough: RateLooks['ask'] = (look, of, today, watched) => {
    const nursery = memory.nursery()
    const answerOf = looks[look] as (...asked: unknown[]) => ReturnType<LooksOf[typeof look]>
    if (nursery.batches.size <= fewBatches) return Promise.resolve(answerOf(nursery, today, of))
    return new Promise((answer, fail) => {
      asked += 1
      const question = String(asked)
      const stop = new SharedArrayBuffer(4)
      waiting.set(question, { answer: answer as Waiting['answer'], fail, tell: watched?.tell })
      watched?.signal.addEventListener('abort', () => {
        Atomics.store(new Int32Array(stop), 0, 1)
        // Its answer may be on its way already.
        waiting.delete(question)
        fail(new Error('Nobody waits for it any more.'))
      })
      thread.say({ do: 'look', question, look, of, today, throughSeq: memory.throughSeq(), stop })
    })
  }

  /** What is about the whole record is looked through once for each of its states, for all who ask. */
  const ask: RateLooks['ask'] = <L extends Look>(
    look: L,
    of: AskedOf<L>,
    today: string,
    watched?: Watched,
  ) => {
    if (of !== null) return lookThrough(look, of, today, watched)
    const state = `${memory.throughSeq()} ${today}`
    const known = answers.get(look)
    if (known?.of === state) return known.answer as Promise<ReturnType<LooksOf[L]>>
    const answer = lookThrough(look, of, today)
    answers.set(look, { of: state, answer })
    answer.catch(() => answers.delete(look))
    return answer
  }

  /** All that a band rests on but what was counted: what the nursery has set itself is seen at once. */
  const keyOf = (id: BatchId): string | null => {
    const nursery = memory.nursery()
    const batch = nursery.batches.get(id)
    const protocol = batch && nursery.protocols.get(batch.protocol)
    if (batch === undefined || protocol === undefined) return null
    const { kind, startedOn, number, workedBy } = batch
    const set = nursery.rateSets.length
    return JSON.stringify([protocol.id, protocol.version, set, kind, startedOn.slice(5, 7), number, workedBy])
  }

  return {
    ask,
    band: async (batch, today) => {
      const key = keyOf(batch)
      if (key === null) return []
      const throughSeq = memory.throughSeq()
      const known = bands.get(key)
      if (known?.throughSeq === throughSeq && known.today === today) return known.band
      const newer = ask('band', batch, today).then(band => {
        if (bands.size >= MOST_BANDS) bands.clear()
        bands.set(key, { throughSeq, today, band })
        return band
      })
      if (known === undefined || memory.nursery().batches.size <= fewBatches) return newer
      newer.catch(() => undefined)
      return known.band
    },
    prepare: today => {
      if (memory.nursery().batches.size > fewBatches) ask('rates', null, today).catch(() => undefined)
    },
    close: () => {
      for (const leave of forget) leave()
      failAll('The server closes.')
    },
  }
}
