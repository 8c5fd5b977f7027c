import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { type BatchRow, rowsOf, type Table } from '../src/api/index.ts'
import { foldEntries } from '../src/record/index.ts'
import { canonicalNursery } from '../src/record/nursery-text.ts'
import { seededRandom } from '../src/science/index.ts'
import { openLog } from '../src/store/index.ts'
import { BUILT, type RealServer, startServer } from './real-server.ts'
import { discard, entryOf, newFolder } from './served-nursery.ts'

let folder: string
const running: RealServer[] = []
beforeEach(() => {
  folder = newFolder()
})
afterEach(async () => {
  for (const server of running.splice(0)) await server.end('SIGKILL')
  discard(folder)
})

const start = async (): Promise<RealServer> => {
  const server = await startServer(BUILT, folder, '--empty')
  running.push(server)
  return server
}
const startedBatch = (id: string) =>
  entryOf({
    kind: 'batch-started/1',
    batch: id,
    name: id,
    kindOfTree: 'fig',
    protocol: 'cuttings',
    number: 40,
    sources: [],
    bench: null,
    workedBy: [],
    candidates: [],
  })

/** The state as it was kept, if it can be used, and the one that the whole log says. */
const onDisk = async () => {
  const log = await openLog(folder)
  try {
    const entries = log.read({ afterSeq: 0, limit: 10_000_000 })
    const kept = log.loadSnapshot()
    return { ids: new Set(entries.map(({ id }) => id as string)), entries, kept }
  } finally {
    log.close()
  }
}

test('a process killed while it keeps its state leaves one that is right or none, and nothing acknowledged is lost', async () => {
  const KILLS = 4
  const dice = seededRandom(7)
  const acknowledged: string[] = []
  /** How long it takes to end of itself, with the state kept last of all. */
  let ending = 0
  for (let run = 0; run <= KILLS; run++) {
    const server = await start()
    const entries = Array.from({ length: run === 0 ? 1_200 : 3 }, (_, i) => startedBatch(`${run}-${i}`))
    const answer = await fetch(`${server.address}/api/entries`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ entries }),
    })
    const { accepted } = (await answer.json()) as { accepted: { id: string }[] }
    acknowledged.push(...accepted.map(({ id }) => id))

    const began = performance.now()
    const ended = server.end('SIGTERM')
    if (run > 0) setTimeout(() => server.process.kill('SIGKILL'), dice.uniform() * ending)
    await ended
    if (run === 0) ending = performance.now() - began

    const { ids, entries: there, kept } = await onDisk()
    expect(acknowledged.filter(id => !ids.has(id))).toEqual([])
    if (run === 0) expect(kept?.seq).toBe(there.length)
    if (kept)
      expect(canonicalNursery(kept.nursery)).toBe(canonicalNursery(foldEntries(there.slice(0, kept.seq))))
  }
  expect(existsSync(join(folder, 'nursery.snapshot'))).toBe(true)

  const server = await start()
  const answer = await fetch(`${server.address}/api/batches?state=all&limit=100000`)
  const rows = rowsOf((await answer.json()) as Table<BatchRow>)
  expect(rows.length).toBe(1_200 + 3 * KILLS)
  expect(rows.reduce((sum, { standing }) => sum + standing, 0)).toBe(40 * rows.length)
})
