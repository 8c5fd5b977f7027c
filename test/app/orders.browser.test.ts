import { afterAll, beforeAll, expect, test } from 'vitest'
import { rowsOf } from '../../src/api/index.ts'
import { axeOn } from './axe.ts'
import { withKeys } from './hands.ts'
import { type ServedApp, serveApp } from './serve-app.ts'

let app: ServedApp
beforeAll(async () => {
  app = await serveApp()
})
afterAll(() => app.close())

test('orders pasted from a spreadsheet are shown before they are kept, and the bad row is named', async () => {
  const before = (await app.client.orders()).length
  const { page, problems } = app
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

test('an order that lacks something is kept once that is mended: the first field that is wrong has the focus, and what is mended is not called wrong any longer; once it is kept the next one can be typed', async () => {
  const { page, problems } = app
  const hands = withKeys(page)
  await page.goto(`${app.address}/orders/new`)
  const before = (await app.client.orders()).length
  // While the list of kinds is open, the rest of the page has no roles.
  const form = page.locator('form[aria-labelledby="one-order"]')
  const kind = form.getByLabel('Kind')
  const keep = form.locator('button', { hasText: 'Keep this order' })
  await hands.press(keep)
  for (const lacks of ['Choose a kind from the list.', 'A whole number from 1.', 'A day, not before today.'])
    await form.getByText(lacks).waitFor()
  expect(await kind.evaluate(field => field === document.activeElement)).toBe(true)
  await hands.write(kind, 'Fig')
  await expect.poll(() => page.getByRole('option').allTextContents()).toEqual(['Fig ‘Green Purse’'])
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('Enter')
  await form.getByText('Choose a kind from the list.').waitFor({ state: 'detached' })
  await hands.write(form.getByLabel('How many trees'), '40')
  await form.getByText('A whole number from 1.').waitFor({ state: 'detached' })
  await form.getByLabel('Due').fill('2028-05-31')
  await hands.press(keep)
  await expect.poll(async () => (await app.client.orders()).length).toBe(before + 1)
  await expect.poll(() => kind.evaluate(field => field === document.activeElement)).toBe(true)
  expect(await kind.inputValue()).toBe('')
  expect(problems).toEqual([])
})

test('the finder reaches what is over and what is to be done too, and its list is scrolled by keys', async () => {
  const [past] = rowsOf(await app.client.batches({ state: 'past' }))
  const { page, problems } = app
  await page.goto(`${app.address}/orders`)
  const finder = page.getByPlaceholder('A screen, batch, order')
  await page.getByRole('heading', { name: 'Orders' }).waitFor()
  const found = (name: RegExp) => page.getByRole('menuitem', { name }).first()
  await page.keyboard.press('/')
  await finder.fill(past!.name)
  await found(/past/).waitFor()
  await finder.fill('')
  await found(/^This week/).waitFor()
  const { violations } = await (await axeOn(page)).include('.finder').analyze()
  expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.target}`)).toEqual([])
  for (const deed of ['Accept the plan', 'Bring spreadsheets', 'Save a backup', 'Language']) {
    await finder.fill(deed)
    await found(new RegExp(`^${deed}`)).waitFor()
  }
  await finder.fill('What could be promised')
  await found(/^What could/).waitFor()
  await page.keyboard.press('Enter')
  await page.locator('summary:focus', { hasText: 'What could be promised' }).waitFor()
  await page.getByRole('combobox', { name: /^Kind/ }).first().waitFor()
  expect(problems).toEqual([])
})

test('by keyboard alone: find a batch, open it, and go back to where one was', async () => {
  const [row] = rowsOf(await app.client.batches({ state: 'alive' }))
  const { page, problems } = app
  await page.goto(`${app.address}/orders`)
  await page.getByRole('heading', { name: 'Orders' }).waitFor()
  await page.keyboard.press('/')
  await page.getByPlaceholder('A screen, batch, order').waitFor()
  await page.keyboard.type(row!.name)
  await page.getByRole('menuitem').first().filter({ hasText: row!.name }).waitFor()
  await page.keyboard.press('Enter')
  await page.getByRole('heading', { name: `Batch ${row!.name}` }).waitFor()
  await page.locator('h1:focus').waitFor()
  await page.goBack()
  await page.getByRole('heading', { name: 'Orders' }).waitFor()
  await page.keyboard.press('Tab')
  expect(await page.evaluate(() => document.activeElement !== document.body)).toBe(true)
  expect(problems).toEqual([])
})
