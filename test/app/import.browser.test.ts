import { readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { root } from '../source-files.ts'
import { type ServedApp, serveApp } from './serve-app.ts'

let app: ServedApp
beforeAll(async () => {
  app = await serveApp([], '--today', '2026-11-24')
})
afterAll(() => app.close())

/** A sheet of the invented nursery as three countries write it, with rows of our own below. */
const sheet = (path: string, rows = '') => ({
  name: basename(path),
  mimeType: 'text/csv',
  buffer: Buffer.concat([readFileSync(join(root, 'src/exchange/fixtures', path)), Buffer.from(rows)]),
})

test('own spreadsheets, chosen in an empty nursery: bad cells shown, a day asked about, nothing written before it is confirmed, taken back and brought back by one press each, and then a plan', async () => {
  const { page, problems } = app
  await page.goto(`${app.address}/import`)
  const choose = async () => {
    const choosing = page.waitForEvent('filechooser')
    await page.getByRole('button', { name: 'Choose files' }).click()
    return choosing
  }
  // Files on their way are stopped, and nothing came of them.
  const held = '**/api/exchange/read'
  await page.route(held, () => undefined)
  await (await choose()).setFiles([sheet('german/Mitarbeiter.csv')])
  await page.getByRole('progressbar').waitFor()
  await page.getByRole('button', { name: 'Stop' }).click()
  await page.getByText('Stopped: nothing is written.').waitFor()
  await page.unroute(held)
  const chooser = await choose()
  await chooser.setFiles([
    sheet('american/orders-unclear.csv', '1005,Hill Farm,Fig - Brown Pilgrim,many,07/08/2028,9.5\r\n'),
    sheet('german/Stellflaechen.csv'),
    sheet('german/Mutterbaeume.csv'),
    sheet('german/Mitarbeiter.csv'),
  ])

  const bad = page.getByRole('row').filter({ hasText: 'many' })
  await bad.waitFor()
  expect(await bad.textContent()).toMatch(/orders-unclear\.csv.*row 4.*D.*Quantity.*the row is left out/)
  const write = page.getByRole('button', { name: 'Write all of it' })
  expect(await write.isDisabled()).toBe(true)
  await page
    .getByLabel(/Does the day or the month come first in "Date Required"/)
    .selectOption({ value: 'month first' })
  await expect.poll(() => write.isDisabled()).toBe(false)
  await page.getByText('2 orders placed').waitFor()
  expect(await app.client.orders()).toEqual([])
  expect(await app.client.benches()).toEqual([])

  await write.click()
  await page.getByText(/entries are written/).waitFor()
  const orders = await app.client.orders()
  expect(orders.map(({ order }) => [order.number, order.due]).sort()).toEqual([
    [50, '2028-03-04'],
    [60, '2028-05-06'],
  ])

  // Taken back by one press, and brought back by one more.
  const takeBack = page.getByRole('button', { name: /^Take it back: .*orders-unclear\.csv/ })
  await takeBack.click()
  await page.getByText(/^\d+ entries struck\.$/).waitFor()
  await expect.poll(() => app.client.orders()).toEqual([])
  await takeBack.waitFor({ state: 'detached' })
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect.poll(() => app.client.orders()).toHaveLength(orders.length)
  await takeBack.waitFor()

  await page.getByRole('link', { name: 'Plan the season' }).click()
  await page.getByRole('button', { name: 'Plan the season' }).click()
  await expect.poll(async () => (await app.client.plan()).job?.state, { timeout: 60_000 }).toBe('done')
  const plan = await app.client.seasonPlan()
  expect(plan.orders).toHaveLength(orders.length)
  expect(plan.starts.length).toBeGreaterThan(0)
  expect(problems).toEqual([])
})
