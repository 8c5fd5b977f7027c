import { afterAll, beforeAll, expect, test } from 'vitest'
import { rowsOf } from '../../src/api/index.ts'
import { inEnglish } from '../../src/trade/index.ts'
import { type ServedApp, serveApp } from './serve-app.ts'

let app: ServedApp
beforeAll(async () => {
  app = await serveApp()
})
afterAll(() => app.close())

test('50 notes made without the server wait in sight, outlive a reload, and go in order, once each', async () => {
  const [row] = rowsOf(await app.client.batches({ state: 'alive' }))
  const before = (await app.client.batch(row!.id)).entries.length
  const { page, context } = app
  await page.goto(`${app.address}/batches/${row!.id}`)
  await page.getByRole('button', { name: 'Record something else' }).waitFor()
  await context.route('**/api/**', route => route.abort())
  const numbers = Array.from({ length: 50 }, (_, index) => index + 1)
  for (const number of numbers) {
    await page.getByRole('button', { name: 'Record something else' }).click()
    await page.getByRole('menuitem', { name: 'Note' }).click()
    await page.getByLabel('Note', { exact: true }).fill(`note ${number}`)
    await page.keyboard.press('Enter')
    await page.getByRole('dialog').waitFor({ state: 'detached' })
  }
  await page.getByText('50 entries on this device, not yet at the office').waitFor()
  await page.reload()
  await page.getByText('50 entries on this device, not yet at the office').waitFor()
  expect((await app.client.batch(row!.id)).entries).toHaveLength(before)

  await context.unroute('**/api/**')
  await page.getByText('50 entries on this device').waitFor({ state: 'detached', timeout: 30_000 })
  const notes = (await app.client.batch(row!.id)).entries.filter(({ kind }) => kind === 'noted/1')
  const said = notes.map(({ says }) => Number(/note (\d+)/.exec(inEnglish(says))?.[1]))
  expect(said.filter(number => numbers.includes(number))).toEqual(numbers)
})
