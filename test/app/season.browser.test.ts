import { afterAll, beforeAll, expect, test } from 'vitest'
import { Entry } from '../../src/record/index.ts'
import { openScreen, type ServedApp, serveApp } from './serve-app.ts'
import { localToday, planSeason, smallNursery } from './small-nursery.ts'

/** A start that was set by hand, in the next third week of a year that is not begun yet. */
const SET = { week: `${Number(localToday().slice(0, 4)) + 1}-W03`, number: 41 }
const startSet = () =>
  Entry.parse({
    id: '019f0000-0000-7000-8000-000000000001',
    on: localToday(),
    at: null,
    by: null,
    device: 'office',
    body: {
      kind: 'start-set/1',
      kindOfTree: 'fig-green-purse',
      protocol: 'fig-hardwood-cutting',
      ...SET,
      insteadOf: null,
    },
  }) as Entry

let app: ServedApp
beforeAll(async () => {
  app = await serveApp([...smallNursery(localToday()), startSet()])
  await planSeason(app.client)
})
afterAll(() => app.close())

test('a start is tried in another week by drag and by keys, and with another number: the screen says what the orders make of it, and nothing is kept', async () => {
  const before = await app.client.seasonPlan()
  const start = before.starts.find(({ orders }) => orders.length > 0)!
  const { page, problems } = app
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
  await asked.getByText('Room, hands and wood suffice for it.').waitFor()
  await asked.getByLabel('How many').fill('90000')
  await asked
    .getByText(/^What stands in the way: .+\.$/)
    .first()
    .waitFor()
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

test('a start tried with another number can be kept: it is entered in the place of the one that was planned; one that was set says so on the strip, and is left to the planner again', async () => {
  const { starts } = await app.client.seasonPlan()
  const tried = starts.find(({ orders, set }) => orders.length > 0 && set === null)!
  const { page, problems } = app
  const open = (start: string) => page.goto(`${app.address}/season?start=${encodeURIComponent(start)}`)
  const lastEntry = async () => (await app.client.journal({})).entries[0]!
  await open(tried.id)
  // An answer that takes long is stopped, and asked for again.
  const held = '**/api/what-if/start*'
  await page.route(held, () => undefined)
  await page.locator('.what-if').getByLabel('How many').fill('333')
  await page.getByRole('progressbar').waitFor()
  await page.getByRole('button', { name: 'Stop' }).click()
  await page.unroute(held)
  await page.locator('.what-if').getByRole('button', { name: 'Try again' }).click()
  await page.getByRole('button', { name: 'Keep it so' }).click()
  await page.getByText('The start is set.').waitFor()
  await expect.poll(async () => (await lastEntry()).says.says).toContain('Start set')

  const set = starts.find(start => start.set !== null)!
  expect(set).toMatchObject({ number: SET.number, week: SET.week })
  await open(set.id)
  // The strip is drawn once the season has come.
  await page.locator('.strip-set').waitFor({ state: 'attached' })
  expect(await page.locator('.strip-set').count()).toBe(1)
  await page.getByRole('button', { name: 'Leave it to the planner' }).click()
  await page.getByText('The start is left to the planner.').waitFor()
  await expect.poll(async () => (await lastEntry()).kind).toBe('struck/1')
  expect((await lastEntry()).of?.says).toContain('Start set')
  expect(problems).toEqual([])
})

test('the cost of the season stands in its parts, which add up, beside what is planted, bought in and worked over', async () => {
  const plan = await app.client.seasonPlan()
  const { page, problems } = app
  // What this nursery does not need, another does.
  await page.route('**/api/plan/season', async route => {
    const response = await route.fetch()
    const week = plan.firstWeek
    await route.fulfill({
      response,
      json: {
        ...(await response.json()),
        bought: [{ kind: plan.starts[0]!.kind, week, number: 40 }],
        overtime: [{ people: ['nobody known'], week, hours: 2.5 }],
      },
    })
  })
  await page.goto(`${app.address}/season`)
  await page.getByRole('heading', { name: 'What it costs' }).waitFor()
  const amounts = await page.locator('.season-cost tbody td').allTextContents()
  const number = (text: string) => Number(text.replace(/[^0-9]/g, ''))
  expect(amounts.length).toBeGreaterThan(2)
  expect(Math.abs(amounts.reduce((sum, text) => sum + number(text), 0) - plan.cost)).toBeLessThan(
    amounts.length,
  )
  await page.getByText(/^40 .* bought in, to come in week \d+ of \d{4}\.$/).waitFor()
  await page.getByText(/^nobody known: 2 h 30 over their hours in week \d+ of \d{4}\.$/).waitFor()
  await page.unrouteAll()
  expect(problems).toEqual([])
})

test('the line of what a bench can carry is dragged, moved by keys and typed, and an order is made surer: what it costs, whom it touches and what moves is said; made so, it is entered', async () => {
  const before = await app.client.nursery()
  const { page, problems } = app
  await page.goto(`${app.address}/season`)
  // The hot bed is one bench, so that without it nothing stands there.
  const asked = page.locator('.suppose')
  const grip = page.getByRole('slider', { name: /^Hot bed/ })
  const value = async () => Number(await grip.getAttribute('aria-valuenow'))
  const was = await value()
  await grip.focus()
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('ArrowDown')
  expect(await value()).toBeLessThan(was)
  expect(await grip.getAttribute('aria-valuetext')).toContain('m²')
  await page.locator('.load-tried').waitFor({ state: 'attached' })
  await asked.getByText(/^The season would cost/).waitFor()

  const box = (await grip.locator('.load-grip').boundingBox())!
  const byKeys = await value()
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2)
  await page.mouse.down()
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2 - 30, { steps: 5 })
  await page.mouse.up()
  expect(await value()).toBeGreaterThan(byKeys)
  // The grip has gone with the line.
  expect((await grip.locator('.load-grip').boundingBox())!.y).toBeLessThan(box.y)
  await asked.getByText(/^The season would cost/).waitFor()
  await asked.getByRole('textbox').fill('0')
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
  await openScreen(page, app, `/orders?order=${order}`)
  await page.getByRole('button', { name: 'What if…', exact: true }).click()
  await page.getByRole('main').getByRole('slider').focus()
  await page.keyboard.press('End')
  await page
    .locator('.suppose-answer')
    .getByText(/^The season would cost/)
    .waitFor()
  expect(problems).toEqual([])
})

test('another rate is tried from the rates and from a step of an order’s count-back: the answer stands before the reason, and with a reason it overrules', async () => {
  const { page, problems } = app
  const forms = page.getByRole('dialog', { name: 'What if another number took?' })
  const slider = forms.getByRole('slider')
  await page.goto(`${app.address}/rates?show=all`)
  await page.locator('.pressed').first().click()
  await slider.focus()
  for (let steps = 0; steps < 3; steps++) await page.keyboard.press('PageDown')
  await forms.getByText(/^The season would cost .* more/).waitFor()
  expect(Number(await forms.getByLabel('Typical, %').inputValue())).toBe(Number(await slider.inputValue()))
  await page.keyboard.press('Escape')
  await forms.waitFor({ state: 'detached' })

  const [planned] = (await app.client.seasonPlan()).starts.flatMap(({ orders }) => orders)
  await openScreen(page, app, `/orders?order=${planned!.order}`)
  const rung = page.getByRole('button', { name: /What if…$/ }).last()
  await rung.focus()
  await page.keyboard.press('Enter')
  await forms.getByLabel('Typical, %').fill('40')
  await forms.getByLabel('Low, %').fill('30')
  await forms.getByLabel('High, %').fill('50')
  await forms.getByText(/^The season would cost/).waitFor()
  await forms.getByRole('button', { name: 'Overrule with this' }).click()
  await forms.getByRole('alert').waitFor()
  expect((await app.client.rates()).filter(({ from }) => from === 'set by the nursery')).toEqual([])
  await forms.getByLabel('Why').fill('A weak year for wood')
  await forms.getByRole('button', { name: 'Overrule with this' }).click()
  await forms.waitFor({ state: 'detached' })
  await expect
    .poll(async () => (await app.client.rates()).filter(({ from }) => from === 'set by the nursery'))
    .toMatchObject([{ basis: expect.stringContaining('A weak year for wood'), mean: expect.closeTo(0.4, 1) }])
  expect(problems).toEqual([])
})

test('a plan that was accepted can be undone: it is not the accepted one any more, and can be accepted again', async () => {
  const { page, problems } = app
  await page.goto(`${app.address}/season`)
  const accept = page.getByRole('button', { name: 'Accept this plan' })
  const { plan } = await app.client.plan()
  const accepted = async () => (await app.client.plan()).accepted
  await accept.click()
  await expect.poll(accepted).toBe(plan!.id)
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect.poll(accepted).toBeNull()
  await accept.waitFor()
  expect(problems).toEqual([])
})

test('by keyboard alone the focus is never lost: where a number is none it is in its field, and the number typed then is kept; after a task is kept it is on the next open one, left alone on its own; from week to week it stays on its button; where a button can be pressed no more, on the page’s heading; a start that is closed gives it back to its disc, and Back opens it again', async () => {
  const { page, problems } = app
  await page.setViewportSize({ width: 1280, height: 4000 })
  await page.goto(`${app.address}/work`)
  const open = page.locator('.task[data-state="open"]', {
    has: page.getByRole('button', { name: /^Done: / }),
  })
  const focused = page.locator('.task-tick:focus')
  await open.first().locator('.task-tick').press('Enter')
  await page.getByLabel('How many really?').press('Escape')
  await focused.waitFor()
  await page.keyboard.press('Enter')
  const left = page.locator('.task[data-state="open"]')
  const before = await left.count()
  const really = page.getByLabel('How many really?')
  const planned = await really.inputValue()
  await really.fill('all')
  await really.press('Enter')
  await page.getByText('A whole number, 0 or more.').waitFor()
  expect(await really.evaluate(field => field === document.activeElement)).toBe(true)
  await page.keyboard.type(planned)
  await page.keyboard.press('Enter')
  await expect.poll(() => left.count()).toBe(before - 1)
  await focused.waitFor()
  expect(await focused.evaluate(button => button.closest('.task')!.getAttribute('data-state'))).toBe('open')

  const later = page.getByRole('button', { name: 'Later', exact: true })
  const title = await page.locator('h1').textContent()
  await later.press('Enter')
  await expect.poll(() => page.locator('h1').textContent()).not.toBe(title)
  expect(await later.evaluate(button => button === document.activeElement)).toBe(true)

  await openScreen(page, app, '/season')
  for (let presses = 0; presses < 20 && (await later.isEnabled()); presses++) await later.press('Enter')
  await page.locator('h1:focus').waitFor()
  await page.goto(`${app.address}/season`)
  const disc = page.locator('[data-start]').first()
  const start = await disc.getAttribute('data-start')
  await disc.press('Enter')
  const detail = page.locator('.start-detail')
  await detail.getByRole('button', { name: 'Close' }).press('Enter')
  await detail.waitFor({ state: 'detached' })
  expect(await page.evaluate(() => document.activeElement!.getAttribute('data-start'))).toBe(start)
  await page.goBack()
  await detail.waitFor()
  await page.goBack()
  await detail.waitFor({ state: 'detached' })
  expect(new URL(page.url()).pathname).toBe('/season')
  expect(problems).toEqual([])
})

test('on a wide screen a start that is chosen stays in sight above what is told of it, the next one by an arrow key too, and Escape puts that away', async () => {
  const { page, problems } = app
  await page.setViewportSize({ width: 1280, height: 800 })
  await page.goto(`${app.address}/season`)
  const discs = page.locator('[data-start]')
  const detail = page.locator('.start-detail')
  const stand = async () => {
    const [disc, told] = [await page.locator('[data-start]:focus').boundingBox(), await detail.boundingBox()]
    return disc!.y > 0 && disc!.y + disc!.height < told!.y && told!.y + told!.height <= 800
  }
  await discs.first().focus()
  await page.keyboard.press('Enter')
  await detail.waitFor()
  await expect.poll(stand).toBe(true)
  for (let rows = await discs.count(); rows > 0; rows--) await page.keyboard.press('ArrowDown')
  await expect.poll(stand).toBe(true)
  await page.keyboard.press('Tab')
  await page.keyboard.press('Escape')
  await detail.waitFor({ state: 'detached' })
  expect(problems).toEqual([])
})

test('arrow keys go from row to row of a list and from tree to tree of a block; what is told of the one that is chosen has the focus, and Escape gives it back', async () => {
  const { page, problems } = app
  const focused = () => page.evaluate(() => document.activeElement!.textContent)
  const label = () => page.evaluate(() => document.activeElement!.getAttribute('aria-label'))
  await page.setViewportSize({ width: 1280, height: 900 })
  await page.goto(`${app.address}/orders`)
  const rows = page.locator('.order-row')
  await rows.first().focus()
  const second = await rows.nth(1).textContent()
  await page.keyboard.press('ArrowDown')
  expect(await focused()).toBe(second)
  await page.keyboard.press('Enter')
  await page.locator('.orders-detail h2:focus').waitFor()
  await page.keyboard.press('Escape')
  expect(await focused()).toBe(second)
  await page.keyboard.press('ArrowUp')
  expect(await focused()).toBe(await rows.first().textContent())

  await openScreen(page, app, '/mothers')
  const trees = page.locator('.block-tree')
  await trees.first().focus()
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('ArrowDown')
  const chosen = await label()
  expect(chosen).not.toBe(await trees.first().getAttribute('aria-label'))
  await page.keyboard.press('Enter')
  await page.locator('.mother-detail h2:focus').waitFor()
  expect(chosen).toContain(await focused())
  await page.keyboard.press('Escape')
  expect(await label()).toBe(chosen)
  expect(problems).toEqual([])
})

test('on a phone what is chosen comes into sight: a start of the season below its strip, a mother tree below the blocks', async () => {
  const { page, problems } = await app.open({ viewport: { width: 390, height: 844 }, hasTouch: true })
  const top = async (name: RegExp) =>
    (await page.getByRole('heading', { name }).first().boundingBox())?.y ?? -1
  const inSight = async (name: RegExp) => (await top(name)) >= 0 && (await top(name)) < 600

  await page.goto(`${app.address}/season`)
  await page.locator('[data-start]').first().press('Enter')
  await expect.poll(() => inSight(/^What if it were begun otherwise|^[\d,]+ /)).toBe(true)

  await page.goto(`${app.address}/mothers`)
  const { mother } = (await app.client.mothers())[0]!
  await page.getByRole('button', { name: mother.name }).first().press('Enter')
  await expect.poll(() => inSight(new RegExp(`^${mother.name}`))).toBe(true)

  // Back undoes a choice, and puts the sheet of further screens away.
  await page.getByRole('button', { name: 'More' }).tap()
  const more = page.getByRole('dialog')
  await more.waitFor()
  await page.goBack()
  await more.waitFor({ state: 'detached' })
  expect(new URL(page.url()).searchParams.get('mother')).toBe(mother.id)
  await page.goBack()
  await expect.poll(() => new URL(page.url()).searchParams.get('mother')).toBeNull()
  await page.getByRole('button', { name: 'More' }).tap()
  await more.getByRole('link', { name: 'Rates' }).tap()
  await page.getByRole('heading', { name: 'Rates', level: 1 }).waitFor()
  await more.waitFor({ state: 'detached' })
  expect(problems).toEqual([])
})
