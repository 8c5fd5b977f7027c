import { Worker } from 'node:worker_threads'

/** Built, a thread's file stands beside this one. Run from source, the thread must first learn to read TypeScript. */
export const openThread = (name: 'nursery' | 'seasons', workerData: unknown = null): Worker => {
  if (!import.meta.url.endsWith('.ts'))
    return new Worker(new URL(`./${name}.worker.js`, import.meta.url), { workerData })
  const file = new URL(`./${name}.worker.ts`, import.meta.url).href
  const readsTypeScript = `import('tsx/esm/api').then(({ register }) => { register(); return import('${file}') })`
  return new Worker(readsTypeScript, { eval: true, workerData })
}
