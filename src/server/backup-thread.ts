import { rmSync } from 'node:fs'
import { LogTrouble } from '../store/index.ts'
import type { BackupSays, BackupWork } from './backup.worker.ts'
import { endThread, openThread } from './open-thread.ts'

/**
 * Writes or reads a backup in a thread of its own, so that nobody waits for it; broken off by the signal, nothing is left of it.
 * @returns how many entries were laid ready; throws `LogTrouble` as the store does
 */
export const inBackupThread = (
  work: BackupWork,
  tell: (share: number) => void,
  signal: AbortSignal,
): Promise<number> =>
  new Promise((done, fail) => {
    signal.throwIfAborted()
    const thread = openThread('backup', work)
    let isOver = false
    const end = (how: () => void): void => {
      if (isOver) return
      isOver = true
      signal.removeEventListener('abort', breakOff)
      how()
    }
    const breakOff = (): void =>
      end(
        () =>
          void endThread(thread).then(() => {
            for (const left of [work.file, `${work.file}.half`, `${work.file}.half-journal`])
              rmSync(left, { force: true })
            fail(signal.reason)
          }),
      )
    signal.addEventListener('abort', breakOff)
    thread.on('message', (said: BackupSays) => {
      if (said.says === 'progress') tell(said.share)
      else if (said.says === 'done') end(() => done(said.entries))
      else end(() => fail(new LogTrouble(said.kind, said.trouble)))
    })
    thread.on('error', problem => end(() => fail(problem)))
    thread.on('exit', () => end(() => fail(new Error('The thread stopped.'))))
  })
