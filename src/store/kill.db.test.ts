import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { seededRandom } from '../science/index.ts'
import { bundleChild, linesOf, startChild } from './child-process.ts'
import { openLog } from './log.ts'

let bundle: string
const folders = ['a', 'b'].map(name => mkdtempSync(join(tmpdir(), `killed-${name}-`)))

beforeAll(async () => {
  bundle = await bundleChild()
})
afterAll(() => {
  rmSync(dirname(bundle), { recursive: true, force: true })
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
  const results = await Promise.all(folders.map((folder, i) => killOften(folder, i + 1)))
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
