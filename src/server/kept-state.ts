import type { NurseryMemory } from './nursery-memory.ts'
import type { NurseryThread } from './nursery-thread.ts'

/** The state is kept anew once the log has been quiet for so long and has grown by a hundredth. */
const QUIET_MS = 30_000
const GROWN_SHARE = 0.01

/** The folded state beside the log, for a fast start. Nothing depends on it. */
export interface KeptState {
  /** Keeps the state now, if it is newer than the one kept. */
  keep(): void
  /** Keeps it a last time. */
  close(): void
}

/** While the server runs, the thread beside it keeps the state, so that nobody waits for it. */
export const keepState = (memory: NurseryMemory, thread: NurseryThread): KeptState => {
  let keptTo = memory.begunFrom === 'snapshot' ? memory.throughSeq() : 0
  let quiet: ReturnType<typeof setTimeout> | undefined

  const keepWhenQuiet = (): void => {
    clearTimeout(quiet)
    const grown = memory.throughSeq() - keptTo
    if (grown === 0 || grown < GROWN_SHARE * memory.throughSeq()) return
    quiet = setTimeout(() => thread.say({ do: 'keep the state', throughSeq: memory.throughSeq() }), QUIET_MS)
    quiet.unref()
  }
  const keep = (): void => {
    if (keptTo === memory.throughSeq()) return
    try {
      memory.log.saveSnapshot(memory.throughSeq(), memory.nursery())
      keptTo = memory.throughSeq()
    } catch {
      // A full disk costs the next start some time, and nothing else.
    }
  }

  const forget = [
    memory.onAppend(keepWhenQuiet),
    thread.onSays(said => {
      if (said.says === 'state kept') keptTo = Math.max(keptTo, said.throughSeq)
    }),
  ]
  keepWhenQuiet()
  return {
    keep,
    close: () => {
      clearTimeout(quiet)
      for (const leave of forget) leave()
      keep()
    },
  }
}
