import {
  createWriteStream,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import type { ReadableStream } from 'node:stream/web'
import type { OpenAPIHono } from '@hono/zod-openapi'
import { type PutBack, type Refusal, refusal } from '../../api/index.ts'
import { routes } from '../../api/routes/index.ts'
import { LogTrouble } from '../../store/index.ts'
import { type Part, type Phrase, phrase } from '../../trade/index.ts'
import { bodyOf, download } from '../download.ts'
import { isInvented } from '../invented.ts'
import type { Served } from '../served.ts'

/** What the nursery of before is kept as beside the one put in its place. */
const KEPT = /^before-[\d-]+\.budstick$/

/** What is wrong, of a file by the name that people know. */
const renamed = ({ says, of }: Phrase, file: string, named: Part): Phrase =>
  phrase(
    says,
    Object.fromEntries(Object.entries(of).map(([key, part]) => [key, part === file ? named : part])),
  )

/** The whole nursery in one file: out, in the place of the one that is here, and the way back. */
export const backupRoutes = (
  app: OpenAPIHono,
  { memory, underWay, today, now, writeBackup, putBack, putAside, invent }: Served,
): void => {
  const { folder } = memory.log

  const keptName = () => `before-${now().slice(0, 23).replaceAll(/[T:.]/g, '-')}.budstick`

  const watched = (signal: AbortSignal) => ({ signal, tell: underWay.tell('backup') })

  /** Keeps the nursery that is here; an empty one stands in its place. */
  const emptied = async (signal: AbortSignal): Promise<PutBack> => {
    const kept = keptName()
    const keptAs = join(folder, kept)
    await putAside(keptAs, watched(signal))
    return { entries: 0, keptAs, kept }
  }

  /** Puts a file in the nursery's place; null with the reason where it is no whole backup. */
  const inPlace = async (file: string, named: Part, signal: AbortSignal): Promise<PutBack | Refusal> => {
    const kept = keptName()
    const keptAs = join(folder, kept)
    try {
      return { entries: await putBack(file, keptAs, watched(signal)), keptAs, kept }
    } catch (problem) {
      if (!(problem instanceof LogTrouble)) throw problem
      return refusal('backup-not-put-back', { trouble: renamed(problem.says, file, named) })
    }
  }

  app.openapi(routes.restore, async c => {
    const incoming = join(folder, 'incoming.budstick')
    try {
      await pipeline(
        Readable.fromWeb((c.req.raw.body ?? new Blob().stream()) as ReadableStream),
        createWriteStream(incoming),
      )
      const put = await inPlace(incoming, phrase('The file'), c.req.raw.signal)
      return 'what' in put ? c.json(put, 422) : c.json(put, 200)
    } finally {
      rmSync(incoming, { force: true })
    }
  })

  app.openapi(routes.kept, c =>
    c.json(
      readdirSync(folder)
        .filter(name => KEPT.test(name))
        .map(name => ({ name, at: statSync(join(folder, name)).mtime.toISOString() }))
        .sort((a, b) => b.name.localeCompare(a.name)),
      200,
    ),
  )

  app.openapi(routes.restoreKept, async c => {
    const { name } = c.req.valid('param')
    const file = join(folder, name)
    if (!KEPT.test(name) || !existsSync(file)) return c.json(refusal('none-kept', { name }), 404)
    const put = await inPlace(file, name, c.req.raw.signal)
    return 'what' in put ? c.json(put, 422) : c.json(put, 200)
  })

  app.openapi(routes.beginOwn, async c => {
    if (!isInvented(memory)) return c.json(refusal('not-invented', {}), 409)
    return c.json(await emptied(c.req.raw.signal), 200)
  })

  app.openapi(routes.openInvented, async c => {
    const { batches, orders } = memory.nursery()
    if (batches.size + orders.size > 0) return c.json(refusal('not-empty', {}), 409)
    const put = await emptied(c.req.raw.signal)
    invent()
    return c.json(put, 200)
  })

  app.openapi(routes.backup, async c => {
    const folder = mkdtempSync(join(tmpdir(), 'budstick-backup-'))
    try {
      const file = join(folder, 'nursery.budstick')
      await writeBackup(file, watched(c.req.raw.signal))
      return c.body(
        bodyOf(readFileSync(file)),
        200,
        download(`nursery-${today()}.budstick`, 'application/octet-stream'),
      )
    } finally {
      rmSync(folder, { recursive: true, force: true })
    }
  })
}
