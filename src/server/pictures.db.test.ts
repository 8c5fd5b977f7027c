import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { BUILT, runCommand } from '../../test/real-server.ts'
import { discard, entryOf, newFolder, type ServedNursery, serveNursery } from '../../test/served-nursery.ts'
import { type EntriesPulled, pictureFileOf } from '../api/index.ts'
import { openLog, restoreLog } from '../store/index.ts'

/** The first bytes of a JPEG as ISO/IEC 10918-1 has them: start of image, then a marker. The rest is any. */
const photo = (...rest: number[]) => new Uint8Array([0xff, 0xd8, 0xff, 0xe0, ...rest])

let folder: string
let nursery: ServedNursery
beforeAll(async () => {
  folder = newFolder()
  nursery = await serveNursery(folder, '2026-05-19')
})
afterAll(async () => {
  await nursery.close()
  discard(folder)
})

const put = (file: string, body: Uint8Array<ArrayBuffer>) =>
  nursery.app.request(`http://localhost/api/pictures/${file}`, {
    method: 'PUT',
    headers: { 'content-type': 'image/jpeg' },
    body,
  })
const get = (file: string) => nursery.app.request(`http://localhost/api/pictures/${file}`)

test('a picture’s name is the SHA-256 of its bytes: of none, as FIPS 180-4 has it', async () => {
  expect(await pictureFileOf(new ArrayBuffer(0))).toBe(
    'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855.jpg',
  )
})

test('a picture comes back as it was sent, may be sent twice, and is known to the entry that names it', async () => {
  const bytes = photo(1, 2, 3)
  const file = await pictureFileOf(bytes.buffer)
  expect((await put(file, bytes)).status).toBe(204)
  expect((await put(file, bytes)).status).toBe(204)
  const answer = await get(file)
  expect([answer.status, answer.headers.get('content-type')]).toEqual([200, 'image/jpeg'])
  expect(new Uint8Array(await answer.arrayBuffer())).toEqual(bytes)
  await nursery.push([entryOf({ kind: 'photographed/1', about: '', file, caption: 'the union' })])
  const { entries }: EntriesPulled = (await nursery.ask('/api/entries')).json
  expect(entries.map(({ picture }) => picture)).toEqual([file])
})

test('what is no photograph, is too large, did not arrive whole or has no such name is refused', async () => {
  const bytes = photo(4)
  const file = await pictureFileOf(bytes.buffer)
  const page = new TextEncoder().encode('<script>')
  const large = new Uint8Array(6 * 1024 * 1024)
  expect((await put(await pictureFileOf(page.buffer as ArrayBuffer), page as never)).status).toBe(422)
  expect((await put(file, large)).status).toBe(413)
  expect((await put(file, photo(5))).status).toBe(422)
  expect((await put('../nursery.budstick', bytes)).status).toBeGreaterThanOrEqual(400)
  expect((await put('photo.jpg', bytes)).status).toBe(400)
  expect((await get(file)).status).toBe(404)
})

test('a backup has the pictures, and so has what is exported and taken in elsewhere', async () => {
  const bytes = photo(7, 8)
  const file = await pictureFileOf(bytes.buffer)
  await put(file, bytes)
  await nursery.push([entryOf({ kind: 'photographed/1', about: '', file, caption: '' })])
  const elsewhere = mkdtempSync(join(tmpdir(), 'pictures-'))
  try {
    const backup = await nursery.app.request('http://localhost/api/backup')
    const saved = join(elsewhere, 'saved.budstick')
    writeFileSync(saved, new Uint8Array(await backup.arrayBuffer()))
    await restoreLog(saved, join(elsewhere, 'restored'))
    const exported = join(elsewhere, 'exported')
    for (const args of [
      ['export', exported, '--data', join(elsewhere, 'restored')],
      ['import', exported, '--data', join(elsewhere, 'taken-in')],
    ])
      expect(await runCommand(BUILT, args)).toMatchObject({ code: 0 })
    for (const name of ['restored', 'taken-in']) {
      const log = await openLog(join(elsewhere, name))
      expect(log.picture(file)).toEqual(bytes)
      log.close()
    }
  } finally {
    rmSync(elsewhere, { recursive: true })
  }
})
