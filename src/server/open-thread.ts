import { Worker } from 'node:worker_threads'

/** Where the build puts a thread's file: beside this one, or, as this is run from its source, into what was built of it last. */
const built = import.meta.url.endsWith('.ts') ? '../../dist/server/' : './'

export const openThread = (name: 'nursery' | 'seasons' | 'backup', workerData: unknown = null): Worker =>
  new Worker(new URL(`${built}${name}.worker.js`, import.meta.url), { workerData })
