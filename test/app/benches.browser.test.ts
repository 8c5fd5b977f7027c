import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { entryOf } from '../served-nursery.ts'
import { type ServedApp, serveApp } from './serve-app.ts'
import { localToday } from './small-nursery.ts'

let app: ServedApp
beforeAll(async () => {
  app = await serveApp()
})
afterAll(() => app.close())

/** What stands on a bench, by batch. */
const standing = async (bench: string) =>
  (await app.client.benches())
    .find(view => view.bench === bench)!
    .stands.filter(({ stepId }) => stepId !== null)
    .map(({ batch, number }) => `${number} of ${batch}`)
    .sort()

/** A bench with a growing batch on it, drawn, and another one. */
async function twoBenches() {
  const views = await app.client.benches()
  const from = views.find(({ stands }) => stands.some(({ stepId }) => stepId !== null))!
  const stand = from.stands.find(({ stepId }) => stepId !== null)!
  const to = views.find(({ bench, stands }) => bench !== from.bench && stands.length > 0)!
  return { from: from.bench as string, to: to.bench as string, stand }
}

const blockOf = (page: Page, name: string) => page.getByRole('button', { name: new RegExp(`^${name}: `) })

test('a batch is dragged from its bench onto another one of the plan: how it fits is said on the way, it stands there, and undo puts it back', async () => {
  const { from, to, stand } = await twoBenches()
  const before = { from: await standing(from), to: await standing(to) }
  const { page, problems } = app
  await page.setViewportSize({ width: 1280, height: 1800 })
  await page.goto(`${app.address}/benches?bench=${from}`)
  const block = (await blockOf(page, stand.name).first().boundingBox())!
  const target = (await page.locator(`[data-bench="${to}"] .site-bench`).boundingBox())!
  await page.mouse.move(block.x + block.width / 2, block.y + block.height / 2)
  await page.mouse.down()
  await page.mouse.move(target.x + 5, target.y + 5, { steps: 6 })
  await page.getByText(/it fits|too much\.$/).waitFor()
  expect(await standing(to)).toEqual(before.to)
  await page.mouse.up()
  await page.getByText(/stand on .* now\.$/).waitFor()
  await expect.poll(() => standing(to)).toContain(`${stand.number} of ${stand.batch}`)
  expect(new URL(page.url()).pathname).toBe('/benches')
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect.poll(() => standing(from)).toEqual(before.from)
  expect(problems).toEqual([])
})

test('by finger a long press lifts a batch, which then follows it onto another bench while the page stays; a swipe without one scrolls, and a press that lets go leaves it in hand for a touch', async () => {
  const { from, to, stand } = await twoBenches()
  const before = await standing(to)
  const { page, context, problems } = await app.open({
    hasTouch: true,
    isMobile: true,
    viewport: { width: 390, height: 844 },
  })
  await page.goto(`${app.address}/benches?bench=${from}`)
  const touches = await context.newCDPSession(page)
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', at?: { x: number; y: number }) =>
    touches.send('Input.dispatchTouchEvent', { type, touchPoints: at === undefined ? [] : [at] })
  const drag = async (start: { x: number; y: number }, end: { x: number; y: number }) => {
    for (let step = 1; step <= 8; step++)
      await touch('touchMove', {
        x: start.x + ((end.x - start.x) * step) / 8,
        y: start.y + ((end.y - start.y) * step) / 8,
      })
  }
  const block = blockOf(page, stand.name).first()
  const target = page.locator(`[data-bench="${to}"]`)
  const middle = async (what: typeof block) => {
    const { x, y, width, height } = (await what.boundingBox())!
    return { x: x + width / 2, y: y + height / 2 }
  }
  const scrolled = () => page.evaluate(() => window.scrollY)
  const inHand = page.getByText(/^In hand:/)
  /** Both the batch and the plan in sight. */
  const look = async () => {
    await target.evaluate(bench => window.scrollBy(0, bench.getBoundingClientRect().top - 100))
    await block.waitFor()
  }

  await look()
  const still = await scrolled()
  const at = await middle(block)
  await touch('touchStart', at)
  await drag(at, { x: at.x, y: at.y - 200 })
  await touch('touchEnd')
  await expect.poll(scrolled).toBeGreaterThan(still)
  expect(await inHand.count()).toBe(0)

  await look()
  const lifted = await middle(block)
  await touch('touchStart', lifted)
  await inHand.waitFor()
  const held = await scrolled()
  await drag(await middle(block), await middle(target))
  await page.getByText(/it fits|too much\.$/).waitFor()
  expect(await scrolled()).toBe(held)
  expect(await standing(to)).toEqual(before)
  await touch('touchEnd')
  await expect.poll(() => standing(to)).toContain(`${stand.number} of ${stand.batch}`)
  expect(new URL(page.url()).pathname).toBe('/benches')
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect.poll(() => standing(to)).toEqual(before)

  await look()
  await touch('touchStart', await middle(block))
  await inHand.waitFor()
  await touch('touchEnd')
  await target.tap()
  await expect.poll(() => standing(to)).toContain(`${stand.number} of ${stand.batch}`)
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect.poll(() => standing(to)).toEqual(before)
  await context.close()
  expect(problems).toEqual([])
})

test('by keys alone a batch is taken with M and put down with Enter; Escape leaves it where it stands', async () => {
  const { from, to, stand } = await twoBenches()
  const { page, problems } = app
  await page.goto(`${app.address}/benches?bench=${from}`)
  const before = await standing(from)
  const take = async () => {
    await blockOf(page, stand.name).first().focus()
    await page.keyboard.press('m')
    await page.getByText(/^In hand:/).waitFor()
  }
  await take()
  await page.keyboard.press('Escape')
  await page.getByText(/^In hand:/).waitFor({ state: 'detached' })
  expect(await standing(from)).toEqual(before)

  await take()
  const isThere = () =>
    page.evaluate(bench => document.activeElement?.getAttribute('data-bench') === bench, to)
  for (let tabs = 0; tabs < 30 && !(await isThere()); tabs++) await page.keyboard.press('Tab')
  await page.keyboard.press('Enter')
  await expect.poll(() => standing(to)).toContain(`${stand.number} of ${stand.batch}`)
  expect(problems).toEqual([])
})

test('what does not fit on a bench is told beside it, and hides nothing that stands there', async () => {
  const { from } = await twoBenches()
  const bench = (await app.client.nursery()).benches.find(({ id }) => id === from)!
  const small = { ...bench, areaSquareMetres: 1, lengthMetres: 2, widthMetres: 0.5 }
  await app.client.pushEntries([entryOf({ kind: 'bench-set/1', bench: small }, localToday())])
  const { page, problems } = app
  for (const width of [1280, 390]) {
    await page.setViewportSize({ width, height: 900 })
    await page.goto(`${app.address}/benches?bench=${from}`)
    const told = (await page.locator('svg.bench .too-much').boundingBox())!
    const edge = (await page.locator('svg.bench .bench-edge').boundingBox())!
    const drawing = (await page.locator('svg.bench').boundingBox())!
    expect(told.y).toBeGreaterThanOrEqual(edge.y + edge.height - 1)
    expect(told.y + told.height).toBeLessThanOrEqual(drawing.y + drawing.height)
  }
  expect(problems).toEqual([])
})
