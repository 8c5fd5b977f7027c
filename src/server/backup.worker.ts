import { parentPort, workerData } from 'node:worker_threads'
import { LogTrouble, layReady, mayBeEndedBy, type TroubleKind, writeBackup } from '../store/index.ts'
import type { Phrase } from '../trade/index.ts'
import type { ThreadData } from './open-thread.ts'

/** What the thread does once, and ends. */
export type BackupWork =
  | { readonly do: 'write'; readonly folder: string; readonly file: string }
  | { readonly do: 'lay ready'; readonly from: string; readonly file: string }

export type BackupSays =
  | { readonly says: 'progress'; readonly share: number }
  /** How many entries were laid ready. */
  | { readonly says: 'done'; readonly entries: number }
  | { readonly says: 'trouble'; readonly kind: TroubleKind; readonly trouble: Phrase }

const say = (message: BackupSays): void => parentPort?.postMessage(message)
const tell = (share: number): void => say({ says: 'progress', share })

const { gate, own: work } = workerData as ThreadData<BackupWork>
mayBeEndedBy(gate)
try {
  let entries = 0
  if (work.do === 'write') writeBackup(work.folder, work.file, tell)
  else entries = layReady(work.from, work.file, tell)
  say({ says: 'done', entries })
} catch (problem) {
  if (!(problem instanceof LogTrouble)) throw problem
  say({ says: 'trouble', kind: problem.kind, trouble: problem.says })
}
