import { AxeBuilder } from '@axe-core/playwright'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type OpenedPage, planSeason, type ServedApp, serveApp } from './serve-app.ts'

let app: ServedApp
let opened: OpenedPage
const known = { batch: '', order: '', mother: '' }

beforeAll(async () => {
  app = await serveApp()
  await planSeason(app)
  known.batch = (await app.client.batches({ state: 'alive' }))[0]!.id
  known.order = (await app.client.orders())[0]!.order.id
  known.mother = (await app.client.mothers())[0]!.mother.id
  opened = await app.open({ reducedMotion: 'reduce' })
})
afterAll(() => app.close())

const screens = [
  '/work',
  '/season',
  '/orders',
  '/orders?order={order}',
  '/orders/new',
  '/batches',
  '/batches/{batch}',
  '/batches/{batch}/count',
  '/benches',
  '/mothers?mother={mother}',
  '/rates?show=all',
  '/year',
  '/methods',
  '/methods/air_layer',
  '/which-tree?fruit=apple&area=600&rework=yes',
  '/which-tree?view=nursery',
  '/plant.html?fruit=lemon&pot=50',
  '/checks',
  '/import',
  '/settings',
  '/lineage/batch/{batch}',
  '/no-such-page',
]

/** What axe looks for: on paper all its rules, elsewhere what may differ there. */
const looks: readonly (readonly [theme: string, width: number, look: (axe: AxeBuilder) => AxeBuilder])[] = [
  [
    'light',
    1280,
    axe => axe.withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']),
  ],
  ['dark', 1280, axe => axe.withRules('color-contrast')],
  ['sunlight', 1280, axe => axe.withRules('color-contrast-enhanced')],
  ['light', 320, axe => axe.withRules('target-size')],
]

/**
 * axe (axe-core, rules after WCAG 2.2) reads each screen in place: opened once, then turned dark, to the sun, and
 * narrow, as the theme's switch and a smaller window do. Without frames in our pages it needs no second page to sum up.
 */
test.for(screens)(
  'axe finds no fault in %s on paper, no contrast below AA in the dark or AAA in the sun; on 320 pixels its targets are large enough; nothing runs over the side',
  async screen => {
    const { page, problems } = opened
    const path = screen.replace(/\{(\w+)\}/, (_, what: keyof typeof known) => known[what])
    await page.setViewportSize({ width: 1280, height: 800 })
    await page.goto(app.address + path)
    await page.locator('h1').first().waitFor({ state: 'attached' })
    await page.locator('[data-fetching]').waitFor({ state: 'detached' })
    const faults: string[] = []
    for (const [theme, width, look] of looks) {
      await page.setViewportSize({ width, height: 800 })
      await page.evaluate(shown => {
        document.documentElement.dataset.theme = shown
      }, theme)
      const { violations } = await look(new AxeBuilder({ page }).setLegacyMode()).analyze()
      for (const { id, nodes } of violations)
        faults.push(`${theme}, ${width} pixels: ${id} at ${nodes[0]?.target}: ${nodes[0]?.any[0]?.message}`)
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
      if (over > 0) faults.push(`${theme}: ${over} pixels wider than the window of ${width}`)
    }
    expect([...faults, ...problems]).toEqual([])
  },
)
