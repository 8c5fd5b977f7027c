import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { foldEntries } from '../src/record/index.ts'
import { openLog } from '../src/store/index.ts'
import { madeLog } from './made-log.ts'

const milliseconds = async (work: () => unknown): Promise<number> => {
  const began = performance.now()
  await work()
  return performance.now() - began
}

/** Opens the log of ten years (100,000 entries: 200,000 trees a year) from its snapshot, and by folding. Goal: under 300 ms. */
export default async () => {
  const folder = mkdtempSync(join(tmpdir(), 'start-'))
  try {
    const entries = madeLog(5_400).slice(0, 100_000)
    const log = await openLog(folder)
    const toWrite = await milliseconds(() => log.append(entries, '2026-01-01T00:00:00Z'))
    const toFold = await milliseconds(() => foldEntries(log.read({ afterSeq: 0, limit: 1_000_000 })))
    const nursery = foldEntries(entries)
    const toSave = await milliseconds(() => log.saveSnapshot(log.lastSeq(), nursery))
    const toVerify = await milliseconds(() => log.verify())
    log.close()
    let found = 0
    const toStart = await milliseconds(async () => {
      const again = await openLog(folder)
      found = again.loadSnapshot()?.nursery.batches.size ?? 0
      again.close()
    })
    return {
      figures: {
        entries: entries.length,
        batches: found,
        millisecondsFromSnapshot: toStart,
        millisecondsReadAndFold: toFold,
        millisecondsSaveSnapshot: toSave,
        millisecondsAppendInOneTransaction: toWrite,
        millisecondsVerify: toVerify,
      },
      rivals: {},
      notes: ['goal: under 300 ms from opening the folder to the folded state'],
    }
  } finally {
    rmSync(folder, { recursive: true })
  }
}
