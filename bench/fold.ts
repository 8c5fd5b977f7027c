import { createFold, foldEntries } from '../src/record/index.ts'
import { madeLog } from './made-log.ts'

/** Of all threads of the process, the collector of garbage among them: says more than the clock on a busy machine. */
const processorSeconds = (): number => {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1e6
}
const seconds = (work: () => unknown): number => {
  const began = performance.now()
  work()
  return (performance.now() - began) / 1000
}

/** Folds a million entries at once; then one more count, late and on time. Goal: under 3 s. */
export default async () => {
  const log = madeLog(54_000).slice(0, 1_000_000)
  const fold = createFold()
  const before = processorSeconds()
  const all = seconds(() => {
    fold.add(log)
    fold.nursery()
  })
  const processor = processorSeconds() - before
  const shuffled = [...log].reverse()
  const backwards = seconds(() => foldEntries(shuffled))
  const last = log.findLast(entry => entry.body.kind === 'counted/1')!
  const again = { ...last, id: `01b${last.id.slice(3)}` as typeof last.id }
  const oneMore = seconds(() => {
    fold.add([again])
    fold.nursery()
  })
  return {
    figures: {
      entries: log.length,
      seconds: all,
      processorSeconds: processor,
      secondsInReverseOrder: backwards,
      secondsForOneMore: oneMore,
      peakMB: Math.round(process.memoryUsage().rss / 2 ** 20),
    },
    rivals: {},
    notes: ['entries as objects in memory, not yet folded; goal: under 3 s'],
  }
}
