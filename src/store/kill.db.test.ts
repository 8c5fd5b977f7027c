import { existsSync, mkdtempSync, rmSync, watch } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { foldEntries } from '../record/index.ts'
import { seededRandom } from '../science/index.ts'
import { bundleChild, linesOf, startChild } from './child-process.ts'
import { openLog } from './log.ts'
import { toldEntry } from './told-entry.ts'

let bundle: string
let keeping: string
const folders = ['a', 'b', 'kept'].map(name => mkdtempSync(join(tmpdir(), `killed-${name}-`)))

beforeAll(async () => {
  bundle = await bundleChild()
  keeping = await bundleChild('keeping-child')
})
afterAll(() => {
  for (const made of [bundle, keeping]) rmSync(dirname(made), { recursive: true, force: true })
  for (const folder of folders) rmSync(folder, { recursive: true, force: true })
})

const killsInEachFolder = 100

/** Starts a child again and again in one folder and kills it at a random moment. Gives what was acknowledged. */
async function killOften(
  folder: string,
  seed: number,
): Promise<{ acknowledged: string[]; troubles: string[] }> {
  const dice = seededRandom(seed)
  const acknowledged: string[] = []
  const troubles: string[] = []
  for (let run = 1; run <= killsInEachFolder; run++) {
    const child = startChild(bundle, folder, seed * 1000 + run)
    const lines = linesOf(child)
    // One in eight dies while it starts, one while its first entries are on their way, the rest soon after these.
    const kill = () => setTimeout(() => child.kill('SIGKILL'), dice.uniform() * 30)
    const awaited = run % 8 === 1 ? 'open' : 'kept'
    if (run % 8 === 0) kill()
    else
      child.stdout.on('data', function look(said: Buffer) {
        if (!said.includes(awaited)) return
        child.stdout.off('data', look)
        kill()
      })
    for (const line of await lines) {
      const [word, ...rest] = line.split(' ')
      if (word === 'kept') acknowledged.push(...rest)
      if (word === 'trouble') troubles.push(line)
    }
  }
  return { acknowledged, troubles }
}

test('every entry acknowledged before one of 200 kills at random moments is there once, and the chain is unbroken', {
  timeout: 300_000,
}, async () => {
  const results = await Promise.all(folders.slice(0, 2).map((folder, i) => killOften(folder, i + 1)))
  for (const [i, { acknowledged, troubles }] of results.entries()) {
    expect(troubles).toEqual([])
    expect(acknowledged.length).toBeGreaterThan(killsInEachFolder)
    expect(new Set(acknowledged).size).toBe(acknowledged.length)
    const log = await openLog(folders[i]!)
    const there = log.read({ afterSeq: 0, limit: 10_000_000 }).map(entry => entry.id as string)
    expect(new Set(there).size).toBe(there.length)
    const found = new Set(there)
    expect(acknowledged.filter(id => !found.has(id))).toEqual([])
    expect(log.verify()).toMatchObject({ ok: true, entries: there.length })
    log.close()
  }
})

test('a state that was being kept at a kill is the one before or the new one, whole', {
  timeout: 300_000,
}, async () => {
  const folder = folders[2]!
  const log = await openLog(folder)
  const entries = Array.from({ length: 4_000 }, (_, i) => toldEntry(1, i))
  log.append(entries, '2026-05-04T06:30:00.000Z')
  const state = foldEntries(entries)
  log.saveSnapshot(entries.length, state)
  log.close()

  const half = join(folder, 'nursery.snapshot.half')
  // Killed as soon as a state is seen to be written, until some kills were quick enough.
  for (let met = 0, kills = 0; met < 3; kills++) {
    expect(kills, 'kills that met no writing').toBeLessThan(200)
    const child = startChild(keeping, folder, kills)
    const watching = watch(folder, (_, name) => {
      if (name?.startsWith('nursery.snapshot')) child.kill('SIGKILL')
    })
    await linesOf(child)
    watching.close()
    if (existsSync(half)) met += 1
    rmSync(half, { force: true })
    const again = await openLog(folder)
    expect(again.loadSnapshot()?.nursery).toEqual(state)
    again.close()
  }
})
