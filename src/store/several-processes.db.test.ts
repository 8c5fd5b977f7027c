import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest'
import { bundleChild, linesOf, startChild } from './child-process.ts'
import { openLog } from './log.ts'
import { toldEntry } from './told-entry.ts'

let bundle: string
let folder: string
beforeAll(async () => {
  bundle = await bundleChild()
})
afterAll(() => rmSync(dirname(bundle), { recursive: true, force: true }))
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'shared-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

const arrival = '2026-05-04T06:30:00.000Z'
const kindOf = (work: () => unknown): unknown => {
  try {
    work()
  } catch (error) {
    return (error as { kind: string }).kind
  }
  return 'none'
}

test('while one process writes, others read, verify and back up, but do not write; when it is killed they may', async () => {
  const child = startChild(bundle, folder, 1)
  const lines = linesOf(child)
  await new Promise<void>(kept => {
    child.stdout.on('data', (data: Buffer) => {
      if (data.toString().includes('kept')) kept()
    })
  })
  const log = await openLog(folder)
  expect(log.lastSeq()).toBeGreaterThan(0)
  expect(log.verify()).toMatchObject({ ok: true })
  await log.backup(join(folder, 'while-writing.budstick'))
  expect(kindOf(() => log.append([toldEntry(2, 1)], arrival))).toBe('in-use')
  await expect(openLog(folder, { write: true })).rejects.toMatchObject({ kind: 'in-use' })
  child.kill('SIGKILL')
  await lines
  expect(log.append([toldEntry(2, 1)], arrival).accepted.length).toBe(1)
  log.close()
})

test('the right to write is given back when a log is closed', async () => {
  const first = await openLog(folder, { write: true })
  await expect(openLog(folder, { write: true })).rejects.toMatchObject({ kind: 'in-use' })
  first.close()
  const second = await openLog(folder, { write: true })
  second.close()
})

/** How to get a small disk of one's own: a file system in memory, as root or in a user namespace. */
const small = join(tmpdir(), `small-disk-${process.pid}`)
const onSmallDisk = ['sh', '-c', `mount -t tmpfs -o size=1500k none ${small} && exec "$@"`, 'sh']
const wraps = [
  ['unshare', '-m', ...onSmallDisk],
  ['unshare', '-Urm', ...onSmallDisk],
]
mkdirSync(small, { recursive: true })
const wrap = wraps.find(([command, ...rest]) => spawnSync(command!, [...rest, 'true']).status === 0)
afterAll(() => rmSync(small, { recursive: true, force: true }))

test.runIf(wrap !== undefined)(
  'a full disk stops the append with its reason, and what was acknowledged before stays (where this machine lets a test mount a small disk)',
  async () => {
    // The disk goes with the process that mounted it: so the log is copied to a large one as soon as the small one is full.
    const andKeep = ['sh', '-c', `"$@"; cp ${small}/nursery.budstick* ${folder}`, 'sh']
    const lines = await linesOf(startChild(bundle, small, 3, [...wrap!, ...andKeep]))
    expect(lines.at(-1)).toBe('trouble disk-full')
    const acknowledged = lines
      .filter(line => line.startsWith('kept '))
      .flatMap(line => line.split(' ').slice(1))
    expect(acknowledged.length).toBeGreaterThan(100)
    const log = await openLog(folder)
    const there = new Set(log.read({ afterSeq: 0, limit: 1_000_000 }).map(entry => entry.id as string))
    expect(acknowledged.filter(id => !there.has(id))).toEqual([])
    expect(log.verify()).toMatchObject({ ok: true, entries: there.size })
    log.close()
  },
)
