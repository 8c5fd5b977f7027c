import type { EntriesPushed, Refusal } from '../../../api/index.ts'
import type { Entry } from '../../../record/index.ts'

/** An entry made here and not yet confirmed by the server. `place` is its number in the order of making. */
export interface Waiting {
  readonly place: number
  readonly entry: Entry
  /** Why the server would not take it; null while it has not said so. */
  readonly refused: Refusal | null
  /** Put aside by hand after it was refused: it is not sent, and stays to be read and put back. */
  readonly thrown?: boolean
}

export interface OutboxStore {
  all(): Promise<readonly Waiting[]>
  add(entries: readonly Entry[]): Promise<void>
  replace(waiting: Waiting): Promise<void>
  remove(places: readonly number[]): Promise<void>
}

export interface OutboxState {
  readonly waiting: readonly Waiting[]
  /** Refused ones that were thrown away. */
  readonly thrown: readonly Waiting[]
  /** Those that the server took since the page was opened, the newest last: views may not show them yet. */
  readonly lately: readonly Entry[]
  /** `away`: no server answered the last time it was tried. */
  readonly link: 'untried' | 'sending' | 'together' | 'away'
  /** This device would not keep an entry: full, or forbidden to store. */
  readonly notKept: string | null
}

const AT_ONCE = 200
const LATELY = 500

/**
 * What was said on this device and is not yet at the office: kept on the disk first, pushed in order, once each.
 * The server knows an entry by its id, so that pushing twice after a broken answer does no harm.
 */
export const createOutbox = (
  store: OutboxStore,
  push: (entries: readonly Entry[]) => Promise<EntriesPushed>,
) => {
  let state: OutboxState = { waiting: [], thrown: [], lately: [], link: 'untried', notKept: null }
  let sending: Promise<void> | null = null
  const listeners = new Set<() => void>()
  const become = (change: Partial<OutboxState>): void => {
    state = { ...state, ...change }
    for (const tell of listeners) tell()
  }
  const kept = async (): Promise<Pick<OutboxState, 'waiting' | 'thrown'>> => {
    const all = await store.all()
    return {
      waiting: all.filter(({ thrown }) => thrown !== true),
      thrown: all.filter(({ thrown }) => thrown === true),
    }
  }
  const reread = async (): Promise<void> => become(await kept())

  const sendAll = async (): Promise<void> => {
    for (;;) {
      const ready = (await store.all()).filter(({ refused }) => refused === null).slice(0, AT_ONCE)
      if (ready.length === 0) break
      become({ link: 'sending' })
      const answer = await push(ready.map(({ entry }) => entry))
      for (const { index, refusal } of answer.refused) {
        const refused = ready[index]
        if (refused !== undefined) await store.replace({ ...refused, refused: refusal })
      }
      const no = new Set(answer.refused.map(({ index }) => index))
      const taken = ready.filter((_, index) => !no.has(index))
      await store.remove(taken.map(({ place }) => place))
      become({
        ...(await kept()),
        lately: [...state.lately, ...taken.map(({ entry }) => entry)].slice(-LATELY),
      })
      become({ link: 'together' })
    }
  }

  const send = (): Promise<void> => {
    sending ??= sendAll()
      .catch(() => become({ link: 'away' }))
      .finally(() => {
        sending = null
      })
    return sending
  }

  return {
    state: () => state,
    onChange: (tell: () => void) => {
      listeners.add(tell)
      return () => listeners.delete(tell)
    },
    open: async () => {
      await reread()
      await send()
    },
    /** True once the entries are safe on this device. They go to the server at once if it answers. */
    add: async (entries: readonly Entry[]): Promise<boolean> => {
      try {
        await store.add(entries)
      } catch (problem) {
        become({ notKept: problem instanceof Error ? problem.message : String(problem) })
        return false
      }
      become({ ...(await kept()), notKept: null })
      return true
    },
    send,
    /** What other questions to the server came to: it answered, or it did not. */
    heard: (answered: boolean): void => {
      const link = answered ? 'together' : 'away'
      if (state.link !== 'sending' && state.link !== link) become({ link })
    },
    /** Throws away an entry that the server refused: it is kept to be read, and goes nowhere. */
    discard: async (place: number): Promise<void> => {
      const refused = state.waiting.find(one => one.place === place)
      if (refused !== undefined) await store.replace({ ...refused, thrown: true })
      await reread()
    },
    /** Puts back one that was thrown away, to be tried again. */
    putBack: async (place: number): Promise<void> => {
      const thrown = state.thrown.find(one => one.place === place)
      if (thrown !== undefined) await store.replace({ ...thrown, refused: null, thrown: false })
      await reread()
      await send()
    },
  }
}
export type Outbox = ReturnType<typeof createOutbox>
