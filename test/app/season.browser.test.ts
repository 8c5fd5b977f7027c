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

test('a bench is tried smaller by keys and by typing, and an order surer: what it costs, whom it touches and what moves is said; made so, it is entered', async () => {
  const before = await app.client.nursery()
  const { page, problems } = await app.open({ reducedMotion: 'reduce' })
  await page.goto(`${app.address}/season`)
  // The hot bed is one bench, so that without it nothing stands there.
  await page.getByRole('button', { name: 'What if…' }).nth(1).click()
  const asked = page.locator('.suppose')
  const slider = asked.getByRole('slider')
  const was = Number(await slider.inputValue())
  await slider.focus()
  await page.keyboard.press('ArrowLeft')
  await page.keyboard.press('ArrowLeft')
  expect(Number(await slider.inputValue())).toBeLessThan(was)
  await page.locator('.load-tried').waitFor({ state: 'attached' })
  await asked.getByText(/^The season would cost/).waitFor()
  const typed = asked.getByRole('textbox')
  await typed.fill('0')
  await typed.press('Enter')
  await asked.getByText(/^The season would cost .* more/).waitFor()
  expect((await app.client.nursery()).benches).toEqual(before.benches)
  await asked.getByRole('button', { name: 'Make it so' }).click()
  await page.getByText(/is changed\.$/).waitFor()
  await expect
    .poll(
      async () =>
        (await app.client.nursery()).benches.filter(({ areaSquareMetres }) => areaSquareMetres === 0).length,
    )
    .toBe(1)
  await page.getByRole('button', { name: 'Undo' }).click()
  const sizes = ({ benches }: typeof before) =>
    new Map(benches.map(({ id, areaSquareMetres }) => [id, areaSquareMetres]))
  await expect.poll(async () => sizes(await app.client.nursery())).toEqual(sizes(before))

  const { starts } = await app.client.seasonPlan()
  const { order } = starts.flatMap(({ orders }) => orders)[0]!
  await page.goto(`${app.address}/orders?order=${order}`)
  await page.getByRole('button', { name: 'What if…' }).click()
  await page.getByRole('slider').focus()
  await page.keyboard.press('End')
  await page
    .locator('.suppose-answer')
    .getByText(/^The season would cost/)
    .waitFor()
  expect(problems).toEqual([])
})
