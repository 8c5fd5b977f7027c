/**
 * SQLite's library for Node ends the whole process where a thread is ended within a call to it. So a thread that another
 * may end shares a gate with it: it passes only while nobody is about to end it, and is ended only while it is in no call.
 */
const FREE = 0
const CALLING = 1
const ENDING = 2
/** A call lasts thousandths of a second; to copy a whole log, seconds. */
const LOOK_AGAIN_MS = 5

/** Shut until the thread has loaded the library, for that is a call as well. */
export const newGate = (): SharedArrayBuffer => {
  const shared = new SharedArrayBuffer(4)
  new Int32Array(shared)[0] = CALLING
  return shared
}

let gate: Int32Array | null = null

/** Says, once in a thread that has loaded and before it opens a log, by which gate it may be ended. */
export const mayBeEndedBy = (shared: SharedArrayBuffer): void => {
  gate = new Int32Array(shared)
  Atomics.store(gate, 0, FREE)
}

/** One call to SQLite. In a thread that is being ended it never begins. */
export function calling<T>(call: () => T): T {
  if (gate === null) return call()
  while (Atomics.compareExchange(gate, 0, FREE, CALLING) !== FREE) Atomics.wait(gate, 0, ENDING)
  try {
    return call()
  } finally {
    Atomics.store(gate, 0, FREE)
  }
}

/** Waits until the thread of a gate is in no call, or is over, and keeps it from the next call: then it may be ended. */
export async function keptFromCalling(shared: SharedArrayBuffer, isOver: () => boolean): Promise<void> {
  const gate = new Int32Array(shared)
  while (!isOver() && Atomics.compareExchange(gate, 0, FREE, ENDING) === CALLING)
    await new Promise(wait => setTimeout(wait, LOOK_AGAIN_MS))
}
