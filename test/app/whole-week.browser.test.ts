import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { buildApp, buildServer } from '../../scripts/setup/build.js'
import { createClient, rowsOf } from '../../src/api/index.ts'
import { sharedBrowser } from '../browser.ts'
import { BUILT, type RealServer, startServer } from '../real-server.ts'
import { discard, newFolder } from '../served-nursery.ts'
import { root } from '../source-files.ts'
import { type Hands, withKeys, withMouse } from './hands.ts'
import { BAD, GOOD, SENT, STUCK, workbook } from './week-workbook.ts'

const DAYS = ['2027-02-15', '2027-02-16', '2027-02-17', '2027-02-18', '2027-02-19'] as const
const PLAN_MS = 60_000

let browser: Browser
const opened: { folder: string; server: RealServer }[] = []
beforeAll(async () => {
  await Promise.all([buildServer(root), buildApp(root)])
  browser = await sharedBrowser()
})
afterAll(async () => {
  for (const { server, folder } of opened) {
    await server.end()
    discard(folder)
  }
})

/** A nursery whose days are turned by starting the program anew in the morning, as most do. */
const openNursery = async () => {
  const folder = newFolder()
  const at = { folder, server: await startServer(BUILT, folder, '--empty', '--today', DAYS[0]) }
  opened.push(at)
  const { address } = at.server
  return {
    address,
    client: createClient(address),
    turnTo: async (day: string) => {
      await at.server.end()
      at.server = await startServer(BUILT, folder, '--port', new URL(address).port, '--today', day)
    },
  }
}

/** One piece of a day's work, if any is left: ticked with the number that really happened, or counted. */
const doNext = async (
  page: Page,
  hands: Hands,
  client: ReturnType<typeof createClient>,
  day: string,
): Promise<string | null> => {
  const weekday = new Date(day).toLocaleDateString('en-GB', { weekday: 'long', timeZone: 'UTC' })
  const all = page.locator(`section.day.today[aria-label="${weekday}"] li .task[data-state="open"]`)
  const office = async () => {
    const { planned, done } = await client.work()
    const tasks = rowsOf(planned.tasks)
    return tasks.filter(task => task.day === day && !done.some(({ task: id }) => id === task.id)).length
  }
  await expect.poll(async () => (await client.plan()).job?.state, { timeout: PLAN_MS }).not.toBe('running')
  const left = await office()
  await expect.poll(() => all.count()).toBe(left)
  if (left === 0) return null
  const open = all.first()
  const label = (await open.locator('.task-what .strong').first().textContent()) ?? ''
  const count = open.getByRole('link', { name: 'Count' })
  if ((await count.count()) === 0) {
    await hands.press(open.getByRole('button', { name: /^Done/ }))
    if (/stick/.test(label)) await hands.write(page.getByLabel('How many really?'), String(STUCK))
    await hands.press(page.getByRole('button', { name: 'Keep', exact: true }))
    await expect.poll(() => all.count()).toBe(left - 1)
    await expect.poll(office).toBe(left - 1)
    return label
  }
  const { name, taken, dead } = (await open.textContent())!.includes(GOOD.name) ? GOOD : BAD
  await hands.press(count)
  await hands.write(page.getByLabel(/^Taken/), String(taken))
  await hands.write(page.getByLabel(/^Dead/), String(dead))
  await hands.press(page.getByRole('button', { name: 'Keep this count' }))
  const after = page.locator('.after')
  await after
    .getByText(/^Chance of order/)
    .first()
    .waitFor({ timeout: PLAN_MS })
  if (name === BAD.name)
    expect(await after.textContent()).toContain(`since batch ${name} counted ${taken} where`)
  await hands.goTo('This week')
  await page.getByRole('heading', { name: /^Work of week/ }).waitFor()
  return `Count ${name}`
}

test.for([
  ['by mouse', withMouse],
  ['by keyboard alone', withKeys],
] as const)(
  'a whole week %s: spreadsheet in, plan, accept, Monday to Friday, counts good and bad, planned again with the reason, promised, sent out, traced',
  { timeout: 300_000 },
  async ([, handsFor]) => {
    const nursery = await openNursery()
    const { client } = nursery
    const context = await browser.newContext({
      locale: 'en-GB',
      serviceWorkers: 'block',
      reducedMotion: 'reduce',
      viewport: { width: 1280, height: 4000 },
    })
    context.setDefaultTimeout(20_000)
    const page = await context.newPage()
    const problems: string[] = []
    page.on('pageerror', ({ message }) => problems.push(message))
    const hands = handsFor(page)

    await page.goto(nursery.address)
    await hands.press(page.getByRole('link', { name: 'Bring spreadsheets' }))
    const chooser = await hands.chooseFiles(page.getByRole('button', { name: 'Choose files' }))
    const type = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet'
    await chooser.setFiles({ name: 'nursery.xlsx', mimeType: type, buffer: await workbook() })
    await page.getByText('3 orders placed').waitFor()
    await hands.press(page.getByRole('button', { name: 'Write all of it' }))
    await hands.press(page.getByRole('link', { name: 'Plan the season' }))
    await hands.press(page.getByRole('button', { name: 'Plan the season' }))
    const accept = page.getByRole('button', { name: 'Accept this plan' })
    await accept.waitFor({ timeout: PLAN_MS })
    await hands.press(accept)
    await page.getByText('The plan is accepted').first().waitFor()
    const accepted = (await client.plan()).plan!

    const did: string[] = []
    for (const day of DAYS) {
      if (day !== DAYS[0]) {
        await nursery.turnTo(day)
        await page.reload()
      } else await hands.goTo('This week')
      await page.locator('section.day').first().waitFor()
      for (;;) {
        const label = await doNext(page, hands, client, day)
        if (label === null) break
        did.push(label)
      }
    }
    expect(did.filter(label => /stick/.test(label)).length).toBeGreaterThan(0)
    expect(did).toEqual(
      expect.arrayContaining([`Count ${GOOD.name}`, `Count ${BAD.name}`, expect.stringMatching(/^Dispatch/)]),
    )
    const { planned, done } = await client.work()
    const tasks = rowsOf(planned.tasks)
    expect(tasks.filter(({ id, day }) => day !== null && !done.some(({ task }) => task === id))).toEqual([])

    const batches = rowsOf(await client.batches({ state: 'alive' }))
    const now = (name: string) => batches.find(row => row.name === name)!
    expect(now(GOOD.name).lost).toBe(GOOD.dead)
    expect(now(BAD.name).lost).toBeGreaterThanOrEqual(BAD.dead)
    const begun = batches.filter(({ startedOn }) => (DAYS as readonly string[]).includes(startedOn))
    expect(begun.map(({ number }) => number)).toEqual(begun.map(() => STUCK))
    expect(begun.length).toBeGreaterThan(0)
    expect((await client.orders()).find(({ order }) => order.id === 'O-1')?.dispatched).toBe(SENT)
    expect((await client.plan()).plan!.id).not.toBe(accepted.id)

    await hands.goTo('Orders')
    await hands.press(page.locator('summary', { hasText: 'What could be promised' }))
    await hands.find(page.getByRole('combobox', { name: /^Kind/ }).first(), 'Fig')
    await page
      .getByText(/beside all orders|does not leave/)
      .last()
      .waitFor()

    await hands.goTo('Mother trees')
    await hands.press(page.getByRole('button', { name: /M07/ }).first())
    await hands.press(page.getByRole('link', { name: 'Where it may have got to' }).first())
    await page.getByRole('heading', { name: /may have got to$/, level: 1 }).waitFor()
    await page.getByText(`has ${SENT} trees, sent last on`).first().waitFor()
    await hands.press(page.getByRole('link', { name: 'See the family drawn' }))
    await page.getByRole('heading', { name: /^Family of /, level: 1 }).waitFor()
    await page
      .getByRole('button', { name: /26-012/ })
      .first()
      .waitFor()
    expect(problems).toEqual([])
    await context.close()
  },
)
