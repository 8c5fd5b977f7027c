import { AxeBuilder } from '@axe-core/playwright'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { planSeason, type ServedApp, serveApp } from './serve-app.ts'

let app: ServedApp
let batch: string
let order: string
let mother: string

beforeAll(async () => {
  app = await serveApp()
  await planSeason(app)
  batch = (await app.client.batches({ state: 'alive' }))[0]!.id
  order = (await app.client.orders())[0]!.order.id
  mother = (await app.client.mothers())[0]!.mother.id
})
afterAll(() => app.close())

const screens = () => [
  '/work',
  '/season',
  '/orders',
  `/orders?order=${order}`,
  '/orders/new',
  '/batches',
  `/batches/${batch}`,
  `/batches/${batch}/count`,
  '/benches',
  `/mothers?mother=${mother}`,
  '/rates?show=all',
  '/year',
  '/checks',
  '/import',
  '/settings',
  `/lineage/batch/${batch}`,
  '/no-such-page',
]

const wcag22AA = (axe: AxeBuilder) =>
  axe.withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])

/** What axe (axe-core, rules after WCAG 2.2) says of each screen, and how far it runs over the side. */
async function faultsOfScreens(
  theme: string,
  width: number,
  look: (axe: AxeBuilder) => AxeBuilder,
): Promise<string[]> {
  const { page, context, problems } = await app.open({ viewport: { width, height: 800 } })
  await page.addInitScript(kept => localStorage.setItem('budstick.theme', kept), theme)
  const faults: string[] = []
  for (const path of screens()) {
    await page.goto(app.address + path)
    await page.locator('h1').first().waitFor({ state: 'attached' })
    await page.locator('[data-fetching]').waitFor({ state: 'detached' })
    const { violations } = await look(new AxeBuilder({ page })).analyze()
    for (const { id, nodes } of violations) faults.push(`${path}: ${id} at ${nodes[0]?.target}`)
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
    if (over > 0) faults.push(`${path}: ${over} pixels wider than the window`)
  }
  await context.close()
  return [...faults, ...problems]
}

/** Many screens one after the other: a busy machine needs its time for them. */
const PATIENCE_MS = 300_000

test('every screen is free of faults that axe can find, on paper', { timeout: PATIENCE_MS }, async () => {
  expect(await faultsOfScreens('light', 1280, wcag22AA)).toEqual([])
})

test('in the dark its contrast is that of level AA', { timeout: PATIENCE_MS }, async () => {
  expect(await faultsOfScreens('dark', 1280, axe => axe.withRules('color-contrast'))).toEqual([])
})

test('in the sun its contrast is that of level AAA', { timeout: PATIENCE_MS }, async () => {
  expect(await faultsOfScreens('sunlight', 1280, axe => axe.withRules('color-contrast-enhanced'))).toEqual([])
})

test('on a window of 320 pixels nothing runs over the side, and the targets are large enough', {
  timeout: PATIENCE_MS,
}, async () => {
  expect(await faultsOfScreens('light', 320, axe => axe.withRules('target-size'))).toEqual([])
})
