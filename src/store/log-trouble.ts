import { inEnglish, type Phrase, phrase } from '../trade/index.ts'

export type TroubleKind =
  | 'not-a-folder'
  | 'not-writable'
  | 'disk-full'
  | 'in-use'
  | 'busy'
  | 'newer-version'
  | 'not-a-log'
  | 'damaged'
  | 'already-there'

/** What keeps the log from being opened, read or written, with what to do. Nothing half-written is left behind. */
export class LogTrouble extends Error {
  override readonly name = 'LogTrouble'
  readonly kind: TroubleKind
  readonly says: Phrase
  constructor(kind: TroubleKind, says: Phrase, cause?: unknown) {
    super(inEnglish(says), cause === undefined ? undefined : { cause })
    this.kind = kind
    this.says = says
  }
}

const BUSY = 'Another program is writing to {path} just now. Try again in a moment.'
const NOT_WRITABLE =
  '{path} cannot be written to. Give yourself the right to write there, or choose another folder.'
const DISK_FULL = 'The disk is full: nothing was written to {path}. Make room, then enter it again.'

/** SQLite's result codes, from its documentation (https://sqlite.org/rescode.html). */
const codes: Readonly<Record<number, readonly [TroubleKind, says: string]>> = {
  5: ['busy', BUSY],
  6: ['busy', BUSY],
  8: ['not-writable', NOT_WRITABLE],
  10: [
    'damaged',
    'The disk did not read or write {path} as it should. Check the disk, then restore the last good backup.',
  ],
  11: ['damaged', '{path} is damaged. Restore the last good backup into an empty folder.'],
  13: ['disk-full', DISK_FULL],
  14: ['not-writable', '{path} cannot be opened. See that the folder is there and that you may write in it.'],
  26: ['not-a-log', '{path} is not a nursery’s log. Choose another folder, or restore a backup.'],
}

/** Words an error of SQLite or of the file system for people; anything unexpected stays as it is. */
export function toTrouble(error: unknown, path: string): unknown {
  if (!(error instanceof Error) || error instanceof LogTrouble) return error
  const { errcode, code } = error as { errcode?: unknown; code?: unknown }
  // The low byte is the primary code.
  const known = typeof errcode === 'number' ? codes[errcode & 0xff] : undefined
  if (known) return new LogTrouble(known[0], phrase(known[1], { path }), error)
  if (code === 'ENOSPC' || code === 'EDQUOT')
    return new LogTrouble('disk-full', phrase(DISK_FULL, { path }), error)
  if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS') {
    return new LogTrouble('not-writable', phrase(NOT_WRITABLE, { path }), error)
  }
  if (code === 'ENOTDIR' || code === 'EEXIST') {
    return new LogTrouble(
      'not-a-folder',
      phrase('{path} is not a folder. Choose a folder for the nursery.', { path }),
      error,
    )
  }
  return error
}
