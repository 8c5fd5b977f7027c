import { afterAll, beforeAll, expect, test } from 'vitest'
import { planSeason, type ServedApp, serveApp } from './serve-app.ts'

let app: ServedApp
beforeAll(async () => {
  app = await serveApp()
  await planSeason(app)
})
afterAll(() => app.close())

test('a start is tried in another week by drag and by keys, and with another number: the screen says what the orders make of it, and nothing is kept', async () => {
  const before = await app.client.seasonPlan()
  const start = before.starts.find(({ orders }) => orders.length > 0)!
  const { page, problems } = await app.open({ reducedMotion: 'reduce' })
  await page.goto(`${app.address}/season?start=${encodeURIComponent(start.id)}`)
  await page.getByRole('heading', { name: 'What if it were begun otherwise?' }).waitFor()
  const asked = page.locator('.what-if')

  await asked.getByLabel('How many').fill('1')
  await asked
    .getByText(/^Chance of order/)
    .first()
    .waitFor()
  const worse = await app.client.startMoved({ start: start.id, week: start.week, number: 1 })
  const said = (await asked.locator('li').allTextContents()).join('\n')
  for (const { order, before: was, after } of worse.orders)
    expect(said.includes(order)).toBe(Math.abs(after - was) >= 0.005)
  await asked.getByRole('button', { name: 'As planned' }).click()
  await asked.getByText('Drag its disc on the strip').waitFor()

  const disc = page.locator(`[data-start="${start.id}"]`)
  await disc.focus()
  await page.keyboard.press('Shift+ArrowRight')
  await page.keyboard.press('Shift+ArrowRight')
  await expect.poll(() => new URL(page.url()).searchParams.get('tried')).not.toBeNull()
  await page.locator('.strip-tried').waitFor({ state: 'attached' })
  await asked
    .getByText(/Chance of order|No order’s chance changes|may not begin/)
    .first()
    .waitFor()
  await asked.getByRole('button', { name: 'As planned' }).click()
  await asked.getByText('Drag its disc on the strip').waitFor()

  const box = (await disc.locator('.strip-touch').boundingBox())!
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2)
  await page.mouse.down()
  await page.mouse.move(box.x + box.width / 2 + 120, box.y + 3, { steps: 4 })
  await page.mouse.up()
  await expect.poll(() => new URL(page.url()).searchParams.get('tried')).toMatch(/^\d{4}-W\d{2}$/)
  expect(new URL(page.url()).searchParams.get('tried')! > start.week).toBe(true)
  await asked
    .getByText(/Chance of order|No order’s chance changes|may not begin/)
    .first()
    .waitFor()

  expect((await app.client.seasonPlan()).starts).toEqual(before.starts)
  expect(problems).toEqual([])
})
