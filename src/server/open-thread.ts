import { Worker } from 'node:worker_threads'
import { keptFromCalling, newGate } from '../store/index.ts'

/** Where the build puts a thread's file: beside this one, or, as this is run from its source, into what was built of it last. */
const built = import.meta.url.endsWith('.ts') ? '../../dist/server/' : './'

const gates = new WeakMap<Worker, SharedArrayBuffer>()

/** What every thread is told beside its own: by which gate it may be ended. */
export interface ThreadData<Own> {
  readonly gate: SharedArrayBuffer
  readonly own: Own
}

export const openThread = <Own>(name: 'nursery' | 'seasons' | 'backup', own: Own): Worker => {
  const gate = newGate()
  const workerData: ThreadData<Own> = { gate, own }
  const thread = new Worker(new URL(`${built}${name}.worker.js`, import.meta.url), { workerData })
  gates.set(thread, gate)
  return thread
}

/** Ends a thread, whatever it is at, but not within a call to SQLite: that would end the whole program. */
export const endThread = async (thread: Worker): Promise<void> => {
  // A thread that has ended has no number.
  await keptFromCalling(gates.get(thread)!, () => thread.threadId === -1)
  await thread.terminate()
}
