import { afterAll, beforeAll, expect, test } from 'vitest'
import { rowsOf } from '../../src/api/index.ts'
import { weekAfter } from '../../src/app/text/format.ts'
import { inEnglish } from '../../src/trade/index.ts'
import { axeOn } from './axe.ts'
import { withKeys } from './hands.ts'
import { openScreen, type ServedApp, servePlannedApp } from './serve-app.ts'

let app: ServedApp
beforeAll(async () => {
  app = await servePlannedApp()
})
afterAll(() => app.close())

/** A batch that stands on its bench and helps to fill an order. */
async function countable() {
  for (const row of rowsOf(await app.client.batches({ state: 'alive' }))) {
    const view = await app.client.batch(row.id)
    if (row.standing > 20 && view.orders.length > 0) return view
  }
  throw new Error('The small nursery has no batch that stands and goes to an order.')
}

test('a poor count by keyboard alone is kept, planned again, and the screen says what it changed, in which axe finds no fault', async () => {
  const { row, orders } = await countable()
  const { page, problems } = app
  await page.goto(`${app.address}/batches/${row.id}/count`)
  await page.getByLabel(/^Taken/).waitFor()
  await page.keyboard.type('1')
  await page.keyboard.press('Tab')
  await page.keyboard.type(String(row.standing - 1))
  await page.keyboard.press('Enter')

  const after = page
    .getByRole('region')
    .or(page.locator('.after'))
    .filter({ hasText: 'What this count changed' })
  await expect.poll(() => after.textContent(), { timeout: 60_000 }).toMatch(/Chance of order/)
  expect(await after.textContent()).toContain(orders[0]!.order)
  const view = await app.client.batch(row.id)
  expect(view.counts.at(-1)).toMatchObject({ taken: 1, dead: row.standing - 1, undecided: 0 })
  expect(view.row.standing).toBe(1)
  const planned = await app.client.seasonPlan()
  for (const { order, chance } of orders)
    expect(planned.orders.find(one => one.order === order)!.chance).toBeLessThanOrEqual(chance)
  const { violations } = await (await axeOn(page)).include('.after').include('.done').analyze()
  expect(violations.map(({ id, nodes }) => `${id} at ${nodes[0]?.target}`)).toEqual([])
  // What the plan now does otherwise, and why, stands on the screen, and is true of the plan itself.
  const why = `since batch ${row.name} counted 1 where `
  expect(await after.textContent()).toContain(why)
  const changed = planned.changes.filter(({ batch, start }) => batch === row.id && start !== null)
  expect(changed.length + planned.changes.filter(({ order }) => order !== null).length).toBeGreaterThan(0)

  await page.getByRole('button', { name: 'Undo' }).click()
  await expect.poll(async () => (await app.client.batch(row.id)).row.standing).toBe(row.standing)
  await openScreen(page, app, '/season')
  await page.getByText(why).first().waitFor()
  expect(problems).toEqual([])
})

test('on the pad, those not yet to tell are the rest', async () => {
  const { row } = await countable()
  const { page, context } = await app.open({ viewport: { width: 390, height: 844 }, hasTouch: true })
  await page.goto(`${app.address}/batches/${row.id}/count`)
  await page.getByRole('button', { name: '7', exact: true }).tap()
  await page.getByRole('button', { name: 'next' }).tap()
  await page.getByRole('button', { name: '3', exact: true }).tap()
  await page.getByRole('button', { name: 'Keep this count' }).tap()
  await expect
    .poll(async () => (await app.client.batch(row.id)).counts.at(-1))
    .toMatchObject({ taken: 7, dead: 3, undecided: row.standing - 10 })
  await context.close()
})

test('a batch counted on its own page is not asked to be counted again this week; taken back, it is', async () => {
  const open = async () => {
    const { planned, done } = await app.client.work()
    const isDone = (id: string) => done.some(({ task }) => task === id)
    return rowsOf(planned.tasks).filter(({ kindOfTask, id }) => kindOfTask === 'count' && !isDone(id))
  }
  const [task] = await open()
  const { page, problems } = app
  await page.goto(`${app.address}/batches/${task!.batch}`)
  await page.getByRole('link', { name: 'Count', exact: true }).click()
  await page.getByLabel(/^Taken/).fill(String(task!.number))
  await page.getByRole('button', { name: 'Keep this count' }).click()
  const asked = async () => (await open()).some(({ id }) => id === task!.id)
  await expect.poll(asked).toBe(false)
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect.poll(asked).toBe(true)
  expect(problems).toEqual([])
})

/** The first thing to tick that says more than that it is done, and the week that asks for it. */
async function tickable() {
  const { plan } = await app.client.plan()
  if (plan === null) throw new Error('There is no plan.')
  let { week } = await app.client.work()
  for (let weeks = 0; weeks < 52; weeks++) {
    const { planned, stopped } = await app.client.work(week)
    const tasks = rowsOf(planned.tasks)
    const task = tasks.find(
      ({ id, kindOfTask }) => ['start', 'finish', 'dispatch'].includes(kindOfTask) && !stopped.includes(id),
    )
    if (task !== undefined) return { week, task }
    week = weekAfter(week, 1)
  }
  throw new Error('The plan of the small nursery asks for nothing.')
}

/** The deeds that the page's device holds ready, as text. */
const keptDeeds = () =>
  new Promise<string>((tell, fail) => {
    const opening = indexedDB.open('budstick')
    opening.onerror = () => fail(opening.error)
    opening.onsuccess = () => {
      const asked = opening.result.transaction('answers').objectStore('answers').get('["deeds"]')
      asked.onsuccess = () => tell(asked.result?.json ?? '')
      opening.result.close()
    }
  })

test('a start done to fewer than planned says so on its line, and after another deed and a reload it is taken back whole there, which has the focus then, and a form opened from a list gives it back to the button of the list; also where no server answers, and any entry in the journal, with its reason: by keyboard', async () => {
  const { week, task } = await tickable()
  const { page, problems } = app
  const hands = withKeys(page)
  const address = `${app.address}/work?week=${week}`
  await page.goto(address)
  const named = (what: string) =>
    page.getByRole('button', { name: `${what}: ${inEnglish(task.task)}` }).first()
  const { throughSeq } = await app.client.nursery()
  const deed = async () => (await app.client.entriesAfter(throughSeq, 2)).entries
  await hands.press(named('Done'))
  await page.getByLabel('How many really?').waitFor()
  const really = Math.round(task.number) - 1
  await page.keyboard.type(`${really}`)
  await page.keyboard.press('Enter')
  await expect.poll(async () => (await deed()).map(({ kind }) => kind).at(-1)).toBe('task-done/2')
  const told = page.getByText(`${really}of ${really + 1} planned`)
  await told.waitFor()
  expect(await deed()).toHaveLength(2)

  const { row } = await countable()
  await openScreen(page, app, `/batches/${row.id}`)
  const more = page.getByRole('button', { name: 'Record something else' })
  await hands.press(more)
  await page.getByRole('menuitem', { name: 'Note' }).press('Enter')
  await page.getByLabel('Note', { exact: true }).waitFor()
  await page.keyboard.type('meant for another batch')
  await page.keyboard.press('Enter')
  await page.getByRole('dialog').waitFor({ state: 'detached' })
  await expect.poll(() => more.evaluate(button => button === document.activeElement)).toBe(true)
  await expect.poll(async () => (await app.client.journal({})).entries[0]?.kind).toBe('noted/1')

  await page.goto(address)
  await named('Not done after all').waitFor()
  await told.waitFor()
  // What was said when it was done is held ready once nobody has touched the page for a while; then no server is needed.
  await expect.poll(() => page.evaluate(keptDeeds), { timeout: 30_000 }).toContain(task.id)
  await page.context().setOffline(true)
  await hands.press(named('Not done after all'))
  await page.getByText('not yet at the office').first().waitFor()
  await page.context().setOffline(false)
  await expect
    .poll(async () => (await deed()).map(({ struck }) => struck?.why))
    .toEqual(Array(2).fill('Not done after all'))
  await named('Done').waitFor()
  expect(await named('Done').evaluate(again => again === document.activeElement)).toBe(true)
  expect((await app.client.work(week)).done).toEqual([])

  await hands.goTo('Journal')
  await hands.press(page.getByRole('button', { name: 'Strike: meant for another batch' }))
  await hands.write(page.getByLabel('Why it is wrong'), 'wrong label')
  await page.keyboard.press('Enter')
  await page.getByText(/wrong label. It counts no more/).waitFor()
  const noteNow = async () =>
    (await app.client.batch(row.id)).entries.find(({ says }) => inEnglish(says) === 'meant for another batch')
  await expect.poll(async () => (await noteNow())?.struck?.why).toBe('wrong label')
  expect(problems).toEqual([])
})
