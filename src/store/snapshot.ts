import { createHash } from 'node:crypto'
import { readFileSync, renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { foldVersion, type Nursery, nurseryFromBytes, nurseryToBytes } from '../record/index.ts'
import { toTrouble } from './log-trouble.ts'

export interface Snapshot {
  /** The state is that after this entry. */
  readonly seq: number
  readonly nursery: Nursery
}

interface Head {
  readonly foldVersion: number
  readonly seq: number
  /** Hash of the entry `seq`, which says that it is this log and no other. */
  readonly hash: string
  readonly sha256: string
}

const snapshotFile = (folder: string) => join(folder, 'nursery.snapshot')
const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex')

/** Keeps the state beside the log, in one piece: a line that says what it is, then the state. */
export function writeSnapshot(folder: string, { seq, nursery }: Snapshot, hash: string | undefined): void {
  if (hash === undefined)
    throw new RangeError(`saveSnapshot: seq must be that of an entry in the log, got ${seq}`)
  const state = nurseryToBytes(nursery)
  const head: Head = { foldVersion, seq, hash, sha256: sha256(state) }
  const file = snapshotFile(folder)
  try {
    writeFileSync(`${file}.half`, Buffer.concat([Buffer.from(`${JSON.stringify(head)}\n`), state]))
    renameSync(`${file}.half`, file)
  } catch (error) {
    throw toTrouble(error, file)
  }
}

/** Nothing depends on a snapshot: one that is missing, cut off or foreign is passed over, and the log folded. */
export function readSnapshot(folder: string, hashAt: (seq: number) => string | undefined): Snapshot | null {
  try {
    const whole = readFileSync(snapshotFile(folder))
    const end = whole.indexOf('\n')
    const head = JSON.parse(whole.toString('latin1', 0, end)) as Head
    if (head.foldVersion !== foldVersion || head.hash !== hashAt(head.seq)) return null
    const state = whole.subarray(end + 1)
    if (head.sha256 !== sha256(state)) return null
    return { seq: head.seq, nursery: nurseryFromBytes(state) }
  } catch {
    return null
  }
}
