import { afterAll, beforeAll, expect, test } from 'vitest'
import { type ServedApp, serveApp } from './serve-app.ts'

let app: ServedApp
beforeAll(async () => {
  app = await serveApp()
})
afterAll(() => app.close())

test('orders pasted from a spreadsheet are shown before they are kept, and the bad row is named', async () => {
  const before = (await app.client.orders()).length
  const { page, problems } = await app.open()
  await page.goto(`${app.address}/orders/new`)
  await page
    .getByLabel(/^Paste rows here/)
    .fill('kind;number;due;buyer\nFig ‘Green Purse’;1,200;2028-05-31;Hill Farm\npear;5;2028-05-31;Nobody\n')
  await page.getByText('Row 3: no kind is called “pear”').waitFor()
  await page.getByRole('button', { name: 'Keep 1 order' }).click()
  await expect.poll(async () => (await app.client.orders()).length).toBe(before + 1)
  const order = (await app.client.orders()).find(row => row.order.buyer === 'Hill Farm')!
  expect(order.order).toMatchObject({ number: 1200, due: '2028-05-31', earliest: '2028-05-17', sure: 0.9 })
  expect(problems).toEqual([])
})

test('by keyboard alone: find a batch, open it, and go back to where one was', async () => {
  const [row] = await app.client.batches({ state: 'alive' })
  const { page, problems } = await app.open()
  await page.goto(`${app.address}/orders`)
  await page.getByRole('heading', { name: 'Orders' }).waitFor()
  await page.keyboard.press('/')
  await page.getByPlaceholder('A screen, batch, order').waitFor()
  await page.keyboard.type(row!.name)
  await page.getByRole('menuitem').first().waitFor()
  await page.keyboard.press('Enter')
  await page.getByRole('heading', { name: `Batch ${row!.name}` }).waitFor()
  await page.goBack()
  await page.getByRole('heading', { name: 'Orders' }).waitFor()
  await page.keyboard.press('Tab')
  expect(await page.evaluate(() => document.activeElement !== document.body)).toBe(true)
  expect(problems).toEqual([])
})
