import { afterAll, beforeAll, expect, test } from 'vitest'
import { openScreen, type ServedApp, serveApp } from './serve-app.ts'

let app: ServedApp

beforeAll(async () => {
  app = await serveApp()
})
afterAll(() => app.close())

test('a figure stated with a reason stands beside the built-in one, moves which tree, and is struck again', async () => {
  const { page, problems } = app
  const tree = await app.context.newPage()
  const address = `${app.address}/which-tree?fruit=apricot&night=-3&cold=4&warm=25`
  await tree.goto(address)
  const years = async () =>
    Number.parseFloat(
      (await tree.locator('.ways-table tbody tr').last().locator('td').first().textContent()) ?? '',
    )
  await expect.poll(years).toBeLessThan(5)

  await openScreen(page, app, '/species')
  await page.getByRole('link', { name: /^Apricot/ }).click()
  const row = page.getByRole('row', { name: /first fruit of a worked or layered tree/ })
  await row.getByRole('button', { name: /State your own/ }).click()
  const leaf = page.getByRole('dialog')
  await leaf.getByLabel(/^Low/).fill('7')
  await leaf.getByLabel(/^Typical/).fill('8')
  await leaf.getByLabel(/^High/).fill('9')
  await leaf.getByRole('button', { name: 'Keep' }).click()
  await leaf.getByText('Three numbers that rise, and a reason.').waitFor()
  await leaf.getByLabel('Why').fill('cold clay here')
  await leaf.getByRole('button', { name: 'Keep' }).click()
  await row.getByText('8 (7–9) years').waitFor()
  await row.getByText(/cold clay here/).waitFor()

  await tree.reload()
  await expect.poll(years).toBeGreaterThan(6)

  await row.getByRole('button', { name: /Strike yours/ }).click()
  await row.getByRole('button', { name: /State your own/ }).waitFor()
  await tree.reload()
  await expect.poll(years).toBeLessThan(5)
  await tree.close()
  expect(problems).toEqual([])
})

test('a window stated for a method moves the protocols that still had the built-in one, on the year wheel too', async () => {
  const { page, problems } = app
  await openScreen(page, app, '/year?species=fig')
  const line = page
    .getByRole('listitem')
    .filter({ hasText: /Fig.*cutting/i })
    .first()
  const before = await line.textContent()
  await openScreen(page, app, '/species/fig')
  await page
    .getByRole('region', { name: 'hardwood_cutting' })
    .getByRole('row', { name: /when it may begin/ })
    .getByRole('button', { name: /State your own/ })
    .click()
  const leaf = page.getByRole('dialog')
  const on = leaf.locator('.months [data-selected]')
  while ((await on.count()) > 0) await on.first().click()
  await leaf.getByRole('button', { name: 'Oct', exact: true }).click()
  await leaf.getByLabel('Condition of plant or weather').fill('leaves are off')
  await leaf.getByLabel('Why').fill('our house is warm')
  await leaf.getByRole('button', { name: 'Keep' }).click()
  await page.getByText('Oct: leaves are off').waitFor()
  await openScreen(page, app, '/year?species=fig')
  await page.getByText('leaves are off').first().waitFor()
  expect(before).not.toContain('leaves are off')
  expect(problems).toEqual([])
})

test('a fruit that is missing is added from one that is like it, can be asked about at once, and undone', async () => {
  const { page, problems } = app
  await openScreen(page, app, '/species')
  await page.getByRole('button', { name: 'Add a fruit' }).click()
  const leaf = page.getByRole('dialog')
  await leaf.getByLabel('Common name').fill('Medlar')
  await leaf.getByLabel('Botanical name').fill('Mespilus germanica')
  await leaf.getByLabel('Begin from').selectOption('pear')
  await leaf.getByLabel('Why').fill('asked for each autumn')
  await leaf.getByRole('button', { name: 'Add it' }).click()
  await page.getByRole('link', { name: /Medlar.*added by you/ }).click()
  await page.getByText('as of Pear').first().waitFor()
  await page.getByRole('button', { name: 'Write a protocol from this' }).first().click()
  await page
    .getByRole('link', { name: /^Medlar: / })
    .first()
    .waitFor()
  await page.getByRole('link', { name: 'Which tree of it' }).click()
  await page.locator('.ways-table tbody tr').nth(1).waitFor()
  await expect.poll(() => page.locator('.share textarea').inputValue()).toContain('like=pear')
  await openScreen(page, app, '/species/medlar')
  await page.getByRole('button', { name: 'Strike this fruit' }).click()
  await page.getByRole('heading', { name: 'No such fruit is known here.' }).waitFor()
  expect(problems).toEqual([])
})
