import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { pictureFileOf, rowsOf } from '../../src/api/index.ts'
import { entryOf } from '../served-nursery.ts'
import { openScreen, type ServedApp, serveApp } from './serve-app.ts'
import { localToday } from './small-nursery.ts'

let app: ServedApp
let folder: string
beforeAll(async () => {
  app = await serveApp()
  folder = mkdtempSync(join(tmpdir(), 'backups-'))
})
afterAll(async () => {
  await app.close()
  rmSync(folder, { recursive: true })
})

/** All that the nursery is: every entry as it was said, and what is folded from them. */
const state = async () => {
  const { client } = app
  const batches = rowsOf(await client.batches({ state: 'all' }))
  return {
    said: await (await fetch(client.downloads.entries)).text(),
    batches,
    first: await client.batch(batches[0]!.id),
    orders: await client.orders(),
    mothers: await client.mothers(),
    benches: await client.benches(),
    checks: await client.queries(),
  }
}

const putBack = async (page: Page, file: string): Promise<string> => {
  await openScreen(page, app, '/settings')
  const choosing = page.waitForEvent('filechooser')
  await page.getByRole('button', { name: 'Put a backup back' }).click()
  await (await choosing).setFiles(file)
  const leaf = page.getByRole('dialog', { name: 'Put this backup back?' })
  await leaf.getByRole('button', { name: 'Put it back' }).click()
  const says = (await leaf.getByRole('status').textContent())!
  const kept = /kept as (.+\.budstick)\./.exec(says)
  if (kept === null) throw new Error(`The page does not say where the nursery of before is kept: ${says}`)
  await Promise.all([
    page.waitForEvent('load'),
    leaf.getByRole('button', { name: 'Open the nursery' }).click(),
  ])
  await leaf.waitFor({ state: 'detached' })
  return kept[1]!
}

test('a backup saved from Settings and put back there gives the nursery as it was, photographs too; what was entered since is kept beside it and comes back in the same way, or by one press', async () => {
  const { page, problems } = app
  const [batch] = rowsOf(await app.client.batches({ state: 'alive' }))
  const bytes = new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 7])
  const file = await pictureFileOf(bytes.buffer)
  await app.client.keepPicture(file, bytes.buffer)
  const picture = async () =>
    new Uint8Array(await (await fetch(app.client.downloads.picture(file))).arrayBuffer())
  const before = await state()

  await page.goto(`${app.address}/settings`)
  // On its way it is stopped, and asked for again.
  const held = '**/api/backup'
  await page.route(held, () => undefined)
  await page.getByRole('link', { name: 'Save a backup' }).click()
  await page.getByRole('progressbar', { name: 'Fetching: Save a backup' }).waitFor()
  await page.getByRole('button', { name: 'Stop' }).click()
  await page.getByRole('progressbar').waitFor({ state: 'detached' })
  await page.unroute(held)
  const saving = page.waitForEvent('download')
  await page.getByRole('link', { name: 'Save a backup' }).click()
  const backup = join(folder, 'saved.budstick')
  await (await saving).saveAs(backup)
  expect(readFileSync(backup).length).toBeGreaterThan(0)

  const { step } = (await app.client.batch(batch!.id)).portions[0]!
  const lost = { kind: 'lost/1', batch: batch!.id, step, number: 1, cause: 'mice' }
  await app.client.pushEntries([entryOf(lost, localToday())])
  const later = await state()
  expect(later.said).not.toBe(before.said)
  expect((await app.client.batch(batch!.id)).row.standing).toBe(batch!.standing - 1)

  const keptAs = await putBack(page, backup)
  expect(await state()).toEqual(before)
  expect(await picture()).toEqual(bytes)
  await openScreen(page, app, `/batches/${batch!.id}`)
  await page.getByRole('heading', { name: `Batch ${batch!.name}` }).waitFor()
  expect(await page.locator('main').textContent()).not.toContain('mice')

  await putBack(page, keptAs)
  expect(await state()).toEqual(later)

  // Both that were kept are named in Settings, the newest first, and stand there again by one press.
  await openScreen(page, app, '/settings')
  const kept = page.getByRole('button', { name: /^Put it back: / })
  await kept.first().waitFor()
  expect(await kept.count()).toBe(2)
  await Promise.all([page.waitForEvent('load'), kept.first().click()])
  expect(await state()).toEqual(before)
  await page.getByRole('button', { name: 'Put a backup back' }).waitFor()
  const choosing = page.waitForEvent('filechooser')
  await page.getByRole('button', { name: 'Put a backup back' }).click()
  await (await choosing).setFiles(keptAs)
  await page.getByRole('button', { name: 'Put it back', exact: true }).click()
  const goBack = page.getByRole('button', { name: 'Go back to what was here' })
  await goBack.waitFor()
  expect(await state()).toEqual(later)
  await Promise.all([page.waitForEvent('load'), goBack.click()])
  expect(await state()).toEqual(before)
  expect(await picture()).toEqual(bytes)
  expect(problems).toEqual([])
})
