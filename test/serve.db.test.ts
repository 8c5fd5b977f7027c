import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import type { EntriesPulled, EntriesPushed } from '../src/api/index.ts'
import { openLog } from '../src/store/index.ts'
import { BUILT, type RealServer, runCommand, startServer } from './real-server.ts'
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

const start = async (...flags: string[]): Promise<RealServer> => {
  const server = await startServer(BUILT, folder, '--empty', ...flags)
  running.push(server)
  return server
}

const push = async (address: string, entries: readonly object[]): Promise<EntriesPushed> => {
  const answer = await fetch(`${address}/api/entries`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ entries }),
  })
  expect(answer.status).toBe(200)
  return (await answer.json()) as EntriesPushed
}

test('every entry that the served process acknowledged before kill -9 is there after a restart, once', async () => {
  const acknowledged: string[] = []
  for (const rowsBeforeKill of [37, 160]) {
    const server = await start()
    let sent = 0
    /** Several phones at once, each with small bundles, until the process is gone. */
    const phone = async (bundle: number): Promise<void> => {
      for (;;) {
        const entries = Array.from({ length: bundle }, () =>
          entryOf({ kind: 'noted/1', about: 'mist-1', text: `entry ${sent++}` }),
        )
        try {
          const { accepted } = await push(server.address, entries)
          acknowledged.push(...accepted.map(({ id }) => id))
        } catch {
          return
        }
        if (sent > rowsBeforeKill) server.process.kill('SIGKILL')
      }
    }
    await Promise.all([phone(1), phone(3), phone(8)])
    await server.end('SIGKILL')
  }
  expect(acknowledged.length).toBeGreaterThan(100)

  const server = await start()
  const answer = await fetch(`${server.address}/api/entries?limit=10000`)
  const { entries } = (await answer.json()) as EntriesPulled
  const there = new Set(entries.map(({ id }) => id as string))
  expect(there.size).toBe(entries.length)
  expect(acknowledged.filter(id => !there.has(id))).toEqual([])
  await server.end()
  const log = await openLog(folder)
  expect(log.verify()).toMatchObject({ ok: true, entries: entries.length })
  log.close()
})

test('SIGTERM ends the server well while a page listens: nothing is left open, and the log is closed', async () => {
  const server = await start()
  const listener = await fetch(`${server.address}/api/events`)
  const reader = listener.body!.getReader()
  await reader.read()
  await push(server.address, [entryOf({ kind: 'noted/1', about: '', text: 'last words' })])
  expect(await server.end('SIGTERM')).toBe(0)
  await reader.cancel().catch(() => undefined)
  expect(existsSync(join(folder, 'nursery.budstick-wal'))).toBe(false)
  const log = await openLog(folder)
  expect(log.lastSeq()).toBe(1)
  log.close()
})

test('a second server is refused in words: by its port, or by the folder that another one writes to', async () => {
  const server = await start()
  const port = new URL(server.address).port
  const elsewhere = newFolder()
  const taken = await runCommand(BUILT, [
    'serve',
    '--data',
    elsewhere,
    '--port',
    port,
    '--empty',
    '--no-open',
  ])
  discard(elsewhere)
  expect(taken).toEqual({
    code: 1,
    data: '',
    said: `Port ${port} is taken by another program. Use another: npm start -- --port ${Number(port) + 1}\n`,
  })
  const twice = await runCommand(BUILT, ['serve', '--data', folder, '--port', '0', '--empty', '--no-open'])
  expect(twice).toMatchObject({ code: 1, data: '', said: expect.stringContaining(folder) })
  expect((await fetch(`${server.address}/api/nursery`)).status).toBe(200)
})

test('the served nursery lives on the day that it was given', async () => {
  const server = await start('--today', '2026-12-31')
  const { today, week } = (await (await fetch(`${server.address}/api/nursery`)).json()) as Record<
    string,
    string
  >
  expect({ today, week }).toEqual({ today: '2026-12-31', week: '2026-W53' })
  const wrong = await runCommand(BUILT, ['serve', '--data', folder, '--today', '2026-02-30'])
  expect(wrong).toMatchObject({ code: 2, data: '', said: expect.stringContaining('--today takes a day') })
})
