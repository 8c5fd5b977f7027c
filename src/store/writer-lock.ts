import { join } from 'node:path'
import { phrase } from '../trade/index.ts'
import { LogTrouble } from './log-trouble.ts'
import { openSqlite } from './sqlite.ts'

/**
 * Takes the right to write in a folder, until the function that it gives is called or the process ends, however
 * it ends: the lock is one of the operating system on a file of its own, and a crash leaves none behind.
 */
export function claimWriting(folder: string): () => void {
  const lock = openSqlite(join(folder, 'writing.lock'), { patience: 0 })
  try {
    lock.exec('PRAGMA journal_mode = DELETE; BEGIN EXCLUSIVE')
  } catch (error) {
    lock.close()
    if (!(error instanceof LogTrouble) || error.kind !== 'busy') throw error
    throw new LogTrouble(
      'in-use',
      phrase(
        'Another Budstick is writing to the nursery in {path}. Close it first, or enter this through it.',
        { path: folder },
      ),
      error,
    )
  }
  return () => lock.close()
}
