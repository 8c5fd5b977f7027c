/** The door of the store: the log on disk. */
export { layReady, putLogAside, replaceLog, restoreLog, writeBackup } from './backup.ts'
export { keptFromCalling, mayBeEndedBy, newGate } from './between-calls.ts'
export { type Appended, type Log, openLog } from './log.ts'
export { LogTrouble, type TroubleKind } from './log-trouble.ts'
export type { Snapshot } from './snapshot.ts'
export type { Verified } from './verify.ts'
