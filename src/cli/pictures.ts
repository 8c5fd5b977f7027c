import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { PictureFile } from '../api/index.ts'
import type { AnyEntry } from '../record/index.ts'
import type { Log } from '../store/index.ts'

/** The folder for photographs in what export writes. */
export const PICTURES = 'pictures'

const filesOf = (entries: readonly AnyEntry[]): ReadonlySet<string> =>
  new Set(
    entries.flatMap(({ body }) =>
      body.kind === 'photographed/1' && 'file' in body && PictureFile.safeParse(body.file).success
        ? [String(body.file)]
        : [],
    ),
  )

/** The photographs that entries name and the nursery has. */
export function* picturesOf(
  log: Log,
  entries: readonly AnyEntry[],
): Generator<readonly [string, Uint8Array]> {
  for (const file of filesOf(entries)) {
    const bytes = log.picture(file)
    if (bytes !== undefined) yield [file, bytes]
  }
}

/** Takes in those photographs that entries name and the folder has. */
export const takePictures = (log: Log, entries: readonly AnyEntry[], folder: string): void => {
  for (const file of filesOf(entries)) {
    const path = join(folder, PICTURES, file)
    if (existsSync(path)) log.keepPicture(file, readFileSync(path))
  }
}
