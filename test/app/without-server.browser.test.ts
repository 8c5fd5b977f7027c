import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { buildApp, buildServer } from '../../scripts/setup/build.js'
import { createClient, rowsOf } from '../../src/api/index.ts'
import { inEnglish } from '../../src/trade/index.ts'
import { sharedBrowser } from '../browser.ts'
import { BUILT, startServer } from '../real-server.ts'
import { discard, newFolder } from '../served-nursery.ts'
import { root } from '../source-files.ts'
import { smallNursery } from './small-nursery.ts'

const TODAY = '2026-05-19'

let browser: Browser
let folder: string
beforeAll(async () => {
  await Promise.all([buildServer(root), buildApp(root)])
  browser = await sharedBrowser()
  folder = newFolder()
})
afterAll(async () => {
  discard(folder)
})

/** The questions whose answers the device has kept, once one of them is as an older version kept it, in another shape. */
const keptOn = (page: Page, older: string | null = null) =>
  page.evaluate(
    question =>
      new Promise<IDBValidKey[]>((tell, fail) => {
        const opening = indexedDB.open('budstick')
        opening.onerror = () => fail(opening.error)
        opening.onsuccess = () => {
          const answers = opening.result.transaction('answers', 'readwrite').objectStore('answers')
          if (question !== null) answers.put({ json: '[{}]', at: Date.now(), shapedBy: 'older' }, question)
          const asked = answers.getAllKeys()
          asked.onsuccess = () => tell(asked.result)
          opening.result.close()
        }
      }),
    older,
  )

test('the app opens and shows what it knew while no server runs, but not what an older version kept in another shape; a batch that was never opened can be counted, and what is entered then arrives once', async () => {
  const first = await startServer(BUILT, folder, '--empty', '--today', TODAY)
  const client = createClient(first.address)
  await client.pushEntries(smallNursery(TODAY))
  const [row, other] = rowsOf(await client.batches({ state: 'alive' }))
  const { counts: countsBefore } = await client.batch(other!.id)

  const context = await browser.newContext({ locale: 'en-GB', serviceWorkers: 'allow' })
  const page = await context.newPage()
  await page.goto(`${first.address}/orders`)
  await page.getByText(/open orders/).waitFor()
  await page.getByRole('link', { name: 'Batches' }).first().click()
  await page.getByRole('link', { name: row!.name }).first().click()
  await page.getByRole('button', { name: 'Record something else' }).waitFor()
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined))
  const kept = ['["nursery"]', '["orders"]', `["batch","${row!.id}"]`]
  await expect.poll(() => keptOn(page)).toEqual(expect.arrayContaining(kept))
  // Nobody opens this one while there is a server.
  await expect.poll(() => keptOn(page), { timeout: 30_000 }).toContain(`["batch","${other!.id}"]`)

  await keptOn(page, '["rates"]')
  await first.end()
  await page.goto(`${first.address}/orders`)
  await page.getByText(/open orders/).waitFor()
  await page.getByText('On its own').waitFor()
  await page.goto(`${first.address}/rates`)
  await page.getByRole('heading', { name: 'The office does not answer' }).waitFor()
  await page.goto(`${first.address}/batches/${row!.id}`)
  await page.getByRole('button', { name: 'Record something else' }).click()
  await page.getByRole('menuitem', { name: 'Note' }).click()
  await page.getByLabel('Note', { exact: true }).fill('looked at without the office')
  await page.keyboard.press('Enter')
  await page.getByText('1 entry on this device, not yet at the office').waitFor()
  await page.goto(`${first.address}/batches/${other!.id}/count`)
  await page.getByRole('heading', { name: `Count batch ${other!.name}` }).waitFor()
  await page.keyboard.type('7')
  await page.keyboard.press('Enter')
  await page.getByText('2 entries on this device, not yet at the office').waitFor()

  const second = await startServer(BUILT, folder, '--port', new URL(first.address).port, '--today', TODAY)
  await page.getByText('2 entries on this device').waitFor({ state: 'detached', timeout: 30_000 })
  const notes = (await client.batch(row!.id)).entries.filter(({ says }) =>
    inEnglish(says).includes('without the office'),
  )
  expect(notes).toHaveLength(1)
  expect((await client.batch(other!.id)).counts).toHaveLength(countsBefore.length + 1)
  await context.close()
  await second.end()
})
