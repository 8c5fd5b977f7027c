import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { rowsOf } from '../../src/api/index.ts'
import { en } from '../../src/app/text/en.ts'
import { es } from '../../src/app/text/es.ts'
import type { Tree } from '../../src/app/text/plural-forms.ts'
import { axeOn } from './axe.ts'
import { withKeys } from './hands.ts'
import { openScreen, type ServedApp, servePlannedApp } from './serve-app.ts'

let app: ServedApp
/** What the nursery itself has written, in whatever language. */
const own = new Set<string>()
const known = { batch: '', order: '', mother: '' }
beforeAll(async () => {
  app = await servePlannedApp()
  known.batch = rowsOf(await app.client.batches({ state: 'alive' })).find(({ standing }) => standing > 20)!.id
  known.order = (await app.client.orders())[0]!.order.id
  known.mother = (await app.client.mothers())[0]!.mother.id
  const { benches, mothers } = {
    benches: (await app.client.nursery()).benches,
    mothers: await app.client.mothers(),
  }
  for (const { name } of benches) own.add(name)
  for (const { mother } of mothers) own.add(mother.provenance)
})
afterAll(() => app.close())

const textsOf = (tree: Tree): string[] =>
  Object.values(tree).flatMap(said => (typeof said === 'string' ? [said] : textsOf(said)))
const bare = (said: string) => said.replace(/\{\{\w+\}\}/g, '')
const spanish = new Set(textsOf(es))
/** What only the English catalogue says, a short part in each place. Of little but places nothing can be told. */
const LEAST_LETTERS = 4
const english = textsOf(en)
  .filter(said => (bare(said).match(/\p{L}/gu)?.length ?? 0) >= LEAST_LETTERS && !spanish.has(said))
  .map(
    said => new RegExp(`^${said.replace(/[.*+?^$()|[\]\\]/g, '\\$&').replace(/\{\{\w+\}\}/g, '.{1,30}')}$`),
  )

/** All that is said on the page, in sight or to a reader, but for what is marked as English. */
const saidOn = (page: Page) =>
  page.evaluate(() => {
    const said: string[] = []
    const walk = (element: Element): void => {
      if (element.getAttribute('lang') === 'en' || ['SCRIPT', 'STYLE'].includes(element.tagName)) return
      for (const name of ['aria-label', 'placeholder', 'title', 'alt']) {
        const value = element.getAttribute(name)
        if (value) said.push(value)
      }
      for (const node of element.childNodes) {
        if (node.nodeType === Node.TEXT_NODE && node.textContent?.trim()) said.push(node.textContent.trim())
        if (node instanceof Element) walk(node)
      }
    }
    walk(document.body)
    return said
  })

test('Spanish is chosen by keyboard, stays after the page is loaded again, and the document says so', async () => {
  const { page } = app
  await openScreen(page, app, '/settings')
  expect(await page.evaluate(() => document.documentElement.lang)).toBe('en')
  const system = page.getByRole('radio', { name: /^As the system/ })
  await withKeys(page).press(system)
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('Space')
  await page.getByRole('heading', { name: 'Ajustes', level: 1 }).waitFor()
  await page.reload()
  await page.getByRole('heading', { name: 'Ajustes', level: 1 }).waitFor()
  expect(await page.evaluate(() => [document.documentElement.lang, document.documentElement.dir])).toEqual([
    'es',
    'ltr',
  ])
})

test.for([
  '/work',
  '/season',
  '/orders?order={order}',
  '/orders/new',
  '/batches',
  '/batches/{batch}',
  '/batches/{batch}/count',
  '/benches',
  '/mothers?mother={mother}',
  '/rates?show=all',
  '/rates?view=kinds',
  '/rates?view=slumps',
  '/year',
  '/methods',
  '/methods/air_layer',
  '/species',
  '/species/fig',
  '/which-tree?fruit=apple&area=600&rework=yes',
  '/which-tree?view=nursery',
  '/plant.html?fruit=lemon&pot=50&language=es',
  '/checks',
  '/import',
  '/settings',
  '/lineage/batch/{batch}',
])(
  'in Spanish, %s says nothing of the English catalogue, axe finds no fault, and nothing runs over the side of a phone',
  async screen => {
    const { page, problems } = app
    await page.setViewportSize({ width: 1280, height: 800 })
    await openScreen(
      page,
      app,
      screen.replace(/\{(\w+)\}/, (_, what: keyof typeof known) => encodeURIComponent(known[what])),
    )
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('es')
    const said = [...new Set(await saidOn(page))]
    expect(said.length).toBeGreaterThan(5)
    expect(said.filter(text => !own.has(text) && english.some(pattern => pattern.test(text)))).toEqual([])
    const { violations } = await (await axeOn(page))
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
      // The colours are those of every language, looked at on each screen in each theme.
      .disableRules('color-contrast')
      .analyze()
    expect(violations.map(({ id, nodes }) => `${id} at ${nodes[0]?.target}`)).toEqual([])
    for (const width of [390, 320]) {
      await page.setViewportSize({ width, height: 800 })
      const over = await page.evaluate(async () => {
        const wide = () => document.documentElement.scrollWidth - innerWidth
        for (let frames = 0; frames < 60 && (frames < 2 || wide() > 0); frames++)
          await new Promise(requestAnimationFrame)
        return wide()
      })
      expect(over, `pixels wider than ${width}`).toBeLessThanOrEqual(0)
    }
    expect(problems).toEqual([])
  },
)

test('the table of a picture writes numbers as the language chosen does, not as the browser does', async () => {
  const { page } = app
  await page.setViewportSize({ width: 1280, height: 800 })
  await openScreen(page, app, '/rates?show=all')
  expect(await page.evaluate(() => (0.5).toLocaleString())).toBe('0.5')
  await page
    .getByRole('button', { name: /^Tabla/ })
    .first()
    .click()
  const cells = await page.locator('.numbers-scroll td.number').allTextContents()
  expect(cells.some(cell => /^\d+,\d+$/.test(cell))).toBe(true)
  expect(cells.filter(cell => cell.includes('.'))).toEqual([])
})

test('a week is worked and a batch counted in Spanish', async () => {
  const { page, problems } = app
  await page.setViewportSize({ width: 1280, height: 800 })
  await openScreen(page, app, '/work')
  const before = (await app.client.work(undefined)).done.length
  await page
    .getByRole('button', { name: /^Hecho: / })
    .first()
    .click()
  await page.getByRole('button', { name: 'Guardar', exact: true }).first().click()
  await page.getByRole('button', { name: 'Deshacer' }).waitFor()
  await expect.poll(async () => (await app.client.work(undefined)).done.length).toBeGreaterThan(before)

  const standing = (await app.client.batch(known.batch)).row.standing
  await openScreen(page, app, `/batches/${known.batch}/count`)
  await page.getByLabel(/^Prendidas/).fill('3')
  await page.keyboard.press('Tab')
  await page.keyboard.type(String(standing - 3))
  await page.keyboard.press('Enter')
  await expect
    .poll(async () => (await app.client.batch(known.batch)).counts.at(-1))
    .toMatchObject({ taken: 3, dead: standing - 3 })
  await page.getByText('Lo que cambió este recuento').waitFor()
  await page
    .getByText(/^Contado en .*: 3 prendidas/)
    .first()
    .waitFor()
  expect(problems).toEqual([])
})

test('a refusal of the server is said in Spanish by its code; one of a code not known here stays English, and is marked so', async () => {
  const { page } = app
  await page.goto(`${app.address}/batches/none`)
  const refused = page.getByRole('alert')
  await refused.getByRole('heading', { name: 'No hay tal lote' }).waitFor()
  expect(await refused.locator('p').first().textContent()).toBe(
    'Lote none. Búsquelo por su nombre en la lista de lotes.',
  )
  expect(await refused.getAttribute('lang')).toBeNull()
  await page.route('**/api/batches/later', route =>
    route.fulfill({
      status: 404,
      json: { code: 'of-a-later-server', of: {}, what: 'Gone fishing', where: 'pond', mend: 'Wait.' },
    }),
  )
  await page.goto(`${app.address}/batches/later`)
  await refused.getByRole('heading', { name: 'Gone fishing' }).waitFor()
  expect(await refused.getAttribute('lang')).toBe('en')
})
