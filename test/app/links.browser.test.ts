import { afterAll, beforeAll, expect, test } from 'vitest'
import { rowsOf } from '../../src/api/index.ts'
import { openScreen, type ServedApp, servePlannedApp } from './serve-app.ts'

let app: ServedApp

beforeAll(async () => {
  app = await servePlannedApp()
})
afterAll(() => app.close())

test('what could be promised, what is tried of a bench and the entries behind a number of a batch are opened again by a link', async () => {
  const { page, problems } = app
  const { kinds, benches } = await app.client.nursery()
  const kind = kinds.find(({ form }) => form !== 'rootstock')!
  await page.goto(`${app.address}/orders?promise=${kind.id}&number=40&sure=80`)
  await page.locator('.promise figure.picture').waitFor()
  expect(await page.locator('.promise').getByLabel('How many trees').inputValue()).toBe('40')

  await openScreen(page, app, '/season')
  const grip = page.getByRole('slider', { name: /^Hot bed/ })
  await grip.focus()
  await page.keyboard.press('ArrowDown')
  await expect.poll(() => new URL(page.url()).searchParams.get('suppose')).toMatch(/^hot%20bed\//)
  const value = await grip.getAttribute('aria-valuenow')
  await page.reload()
  await page.locator('.suppose').waitFor()
  expect(await grip.getAttribute('aria-valuenow')).toBe(value)
  expect(benches.some(({ areaSquareMetres }) => areaSquareMetres === Number(value))).toBe(false)

  const [batch] = rowsOf(await app.client.batches({ state: 'alive' }))
  await openScreen(page, app, `/batches/${batch!.id}`)
  await page.locator('.drill').first().click()
  await expect.poll(() => new URL(page.url()).searchParams.get('behind')).not.toBeNull()
  const shown = await page.locator('#entries li').count()
  await page.reload()
  await page.getByRole('heading', { name: 'Behind “this number”' }).waitFor()
  expect(await page.locator('#entries li').count()).toBe(shown)
  await page
    .locator('#entries')
    .getByRole('button', { name: /^Strike/ })
    .first()
    .click()
  expect(new URL(page.url()).searchParams.get('open')).toMatch(/^strike /)
  await page.reload()
  await page.getByRole('dialog').waitFor()
  expect(problems).toEqual([])
})

test('what is tried of an order, and of a rate on the rates and in a count-back, is opened again by a link, and closed it is gone', async () => {
  const { page, problems } = app
  const tries = () => new URL(page.url()).searchParams.get('tries')
  const [planned] = (await app.client.seasonPlan()).starts.flatMap(({ orders }) => orders)
  await page.goto(`${app.address}/orders?order=${planned!.order}`)
  await page.getByRole('button', { name: 'What if…', exact: true }).click()
  const order = page.locator('.suppose-order')
  await order.getByLabel('How many').fill('77')
  await expect.poll(tries).toMatch(/^77\//)
  await page.reload()
  await expect.poll(() => order.getByLabel('How many').inputValue()).toBe('77')
  await page.getByRole('button', { name: 'As it is', exact: true }).click()
  await order.waitFor({ state: 'detached' })
  expect(tries()).toBeNull()

  for (const path of [`/orders?order=${planned!.order}`, '/rates?show=all']) {
    await openScreen(page, app, path)
    await page.locator('.pressed').first().click()
    const rate = page.getByRole('dialog')
    await rate.getByLabel('Typical').fill('41')
    await expect.poll(tries).toMatch(/\/41\//)
    await page.reload()
    await expect.poll(() => rate.getByLabel('Typical').inputValue()).toBe('41')
    await page.goBack()
    await rate.waitFor({ state: 'detached' })
    expect(tries()).toBeNull()
  }
  expect(problems).toEqual([])
})

test('words that a list is narrowed by are followed at once and stand in the address once typing rests, not letter by letter', async () => {
  const { page, problems } = app
  await page.goto(`${app.address}/batches`)
  const lines = page.locator('.batch-line')
  await lines.first().waitFor()
  const name = await lines.first().locator('b').first().textContent()
  const before = await page.evaluate(() => history.length)
  // Key by key, with a blink between them.
  await page.locator('.find-field input').evaluate(async (field: HTMLInputElement, said) => {
    const write = history.replaceState
    const written: string[] = []
    Object.assign(window, { written })
    history.replaceState = (...to) => {
      written.push(String(to[2]))
      write.apply(history, to)
    }
    const type = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!
    for (let letters = 1; letters <= said.length; letters++) {
      type.call(field, said.slice(0, letters))
      field.dispatchEvent(new Event('input', { bubbles: true }))
      await new Promise(blink => setTimeout(blink, 50))
    }
  }, name!)
  await expect.poll(() => lines.count()).toBe(1)
  await expect.poll(() => new URL(page.url()).searchParams.get('find')).toBe(name)
  const written = await page.evaluate(() => (window as never as { written: string[] }).written)
  // A busy machine may take a blink for a rest; letter by letter there are as many as letters.
  expect(new Set(written.filter(address => address.includes('find='))).size).toBeLessThan(name!.length / 2)
  expect(await page.evaluate(() => history.length)).toBe(before)
  await page.reload()
  await expect.poll(() => lines.count()).toBe(1)
  expect(problems).toEqual([])
})
