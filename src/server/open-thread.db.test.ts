import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { discard, entryOf, newFolder } from '../../test/served-nursery.ts'
import { seededRandom } from '../science/index.ts'
import { openLog } from '../store/index.ts'
import { inBackupThread } from './backup-thread.ts'
import { nurseryThread } from './nursery-thread.ts'

const ENTRIES = 12_000

let folder: string
beforeAll(async () => {
  folder = newFolder()
  const log = await openLog(folder, { write: true })
  const notes = Array.from({ length: ENTRIES }, (_, i) =>
    entryOf({ kind: 'noted/1', about: '', text: `note ${i}` }),
  )
  log.append(notes, '2026-05-19T06:00:00.000Z')
  log.close()
})
afterAll(() => discard(folder))

test('a backup broken off at whatever moment of its reading leaves nothing behind, and the program goes on: the next one is whole', async () => {
  const dice = seededRandom(3)
  const file = join(folder, 'kept.budstick')
  const work = { do: 'write', folder, file } as const
  for (let times = 0; times < 6; times++) {
    const giving = new AbortController()
    const breakOff = () => setTimeout(() => giving.abort(), dice.uniform() * 20)
    await expect(inBackupThread(work, breakOff, giving.signal)).rejects.toThrow(/abort/)
    expect(existsSync(file)).toBe(false)
  }
  await inBackupThread(work, () => undefined, new AbortController().signal)
  const kept = await openLog(folder)
  expect(kept.verify()).toMatchObject({ ok: true, entries: ENTRIES })
  kept.close()
})

test('the thread that folds the log is ended at whatever moment, while it still loads too, and the program goes on', async () => {
  const dice = seededRandom(4)
  for (let times = 0; times < 8; times++) {
    const thread = nurseryThread(folder)
    thread.say({ do: 'keep the state', throughSeq: ENTRIES })
    await new Promise(wait => setTimeout(wait, dice.uniform() * 450))
    await thread.close()
  }
})
