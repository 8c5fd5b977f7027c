import { readFileSync } from 'node:fs'
import type { Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { rowsOf } from '../../src/api/index.ts'
import { weekAfter } from '../../src/app/text/format.ts'
import { openScreen, type ServedApp, servePlannedApp } from './serve-app.ts'

let app: ServedApp
const known = { batch: '', order: '', mother: '', kind: '' }
beforeAll(async () => {
  app = await servePlannedApp()
  known.batch = rowsOf(await app.client.batches({ state: 'alive' }))[0]!.id
  known.mother = (await app.client.mothers())[0]!.mother.id
  known.order = (await app.client.seasonPlan()).starts.flatMap(({ orders }) => orders)[0]!.order
})
afterAll(() => app.close())

const screens: readonly (readonly [path: string, classes: readonly string[]])[] = [
  ['/season', ['strip', 'load']],
  ['/orders?order={order}', ['ladder']],
  ['/batches/{batch}', ['life', 'band']],
  ['/benches', ['site', 'bench']],
  ['/mothers?mother={mother}', ['block']],
  ['/rates?show=all', ['points']],
  ['/lineage/batch/{batch}', ['family']],
  ['/year?species=fig', ['wheel']],
  ['/which-tree?fruit=apple&area=600', ['crop']],
]

/** What was saved under a name of the menu. */
async function saved(page: Page, picture: Locator, as: string): Promise<{ name: string; bytes: Buffer }> {
  const download = page.waitForEvent('download')
  await picture.getByRole('button', { name: /^Save/ }).click()
  await page.getByRole('menuitem', { name: as }).click()
  const file = await download
  return { name: file.suggestedFilename(), bytes: readFileSync(await file.path()) }
}

test.for(screens)(
  'each picture of %s turns into a table with the key T and back, and is saved as a drawing that stands alone, as an image of twice its size, and as a table',
  async ([path, classes]) => {
    const { page, problems } = app
    await openScreen(
      page,
      app,
      path.replace(/\{(\w+)\}/, (_, what: keyof typeof known) => known[what]),
    )
    const pictures = page.locator('figure.picture')
    await pictures.first().waitFor()
    await page.locator('[data-fetching]').waitFor({ state: 'detached' })
    // A drawing outside such a frame would be one that cannot be saved; small signs have no words in them.
    expect(await page.locator('main svg:has(text)').count()).toBe(
      await pictures.locator('.picture-ground svg:has(text)').count(),
    )
    for (const of of classes) {
      // Counted, since the drawing that it is known by gives way to the table.
      const at = await pictures.evaluateAll(
        (all, name) => all.findIndex(one => one.querySelector(`svg.${name}`) !== null),
        of,
      )
      const picture = pictures.nth(at)
      const drawing = (await picture.locator(`svg.${of}`).boundingBox())!

      const svg = await saved(page, picture, 'Drawing (SVG)')
      expect(svg.name).toMatch(/\.svg$/)
      const alone = await page.evaluate(text => {
        const { documentElement } = new DOMParser().parseFromString(text, 'image/svg+xml')
        return {
          root: documentElement.localName,
          words: documentElement.querySelectorAll('text').length,
          classes: documentElement.querySelectorAll('[class]').length,
          filled: [...documentElement.querySelectorAll('text')].every(word => word.hasAttribute('fill')),
        }
      }, svg.bytes.toString())
      expect(alone).toMatchObject({ root: 'svg', classes: 0, filled: true })
      expect(alone.words).toBeGreaterThan(0)

      const png = await saved(page, picture, 'Image (PNG)')
      // PNG specification (W3C, third edition): the signature, then IHDR with width and height at bytes 16 and 20.
      expect([...png.bytes.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10])
      expect(Math.abs(png.bytes.readUInt32BE(16) - 2 * drawing.width)).toBeLessThanOrEqual(2)
      expect(Math.abs(png.bytes.readUInt32BE(20) - 2 * drawing.height)).toBeLessThanOrEqual(2)

      const csv = await saved(page, picture, 'Table (CSV)')
      const table = picture.getByRole('table')
      await picture.getByRole('button', { name: /^Table/ }).focus()
      await page.keyboard.press('t')
      await table.waitFor()
      const rows = await table.getByRole('row').count()
      expect(rows).toBeGreaterThan(1)
      expect(csv.bytes.toString().split('\r\n')).toHaveLength(rows)
      await page.keyboard.press('t')
      await table.waitFor({ state: 'detached' })
    }
    expect(problems).toEqual([])
  },
)

test('a finger that touches beside a small mark of a drawing presses the one that is nearest', async () => {
  const { page, context, problems } = await app.open({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
  })
  await page.goto(`${app.address}/season`)
  await page.locator('[data-start]').first().waitFor()
  await page.locator('[data-fetching]').waitFor({ state: 'detached' })
  // 20 pixels to the left of the middle of the first disc of its row, which is 22 pixels wide.
  const aim = await page.locator('.strip').evaluate(strip => {
    const discs = [...strip.querySelectorAll('[data-start]')].map(disc => {
      const { x, y, width, height } = disc.querySelector('circle')!.getBoundingClientRect()
      return { id: disc.getAttribute('data-start')!, x: x + width / 2, y: y + height / 2 }
    })
    const first = discs.find(
      one =>
        one.x > 40 &&
        discs.every(other => other === one || Math.abs(other.y - one.y) > 25 || other.x > one.x),
    )!
    return { ...first, x: first.x - 20 }
  })
  await page.evaluate(y => window.scrollTo(0, y - 400), aim.y)
  const scrolled = await page.evaluate(() => window.scrollY)
  await page.touchscreen.tap(aim.x, aim.y - scrolled)
  await expect.poll(() => new URL(page.url()).searchParams.get('start')).toBe(aim.id)
  await context.close()
  expect(problems).toEqual([])
})

test('the ruler of the year picks a week by keys at once, and is a picture with its table; the cuts of a method are saved as drawings', async () => {
  const { page, problems } = app
  await openScreen(page, app, '/work')
  const ruler = page.getByRole('slider', { name: 'The coming year' })
  await ruler.focus()
  const first = await ruler.getAttribute('aria-valuetext')
  for (const key of ['PageUp', 'PageUp', 'ArrowRight', 'ArrowLeft']) await page.keyboard.press(key)
  expect(await ruler.getAttribute('aria-valuenow')).toBe('8')
  expect(await ruler.getAttribute('aria-valuetext')).not.toBe(first)
  await page.keyboard.press('Enter')
  const { week } = await app.client.nursery()
  await expect.poll(() => new URL(page.url()).searchParams.get('week')).toBe(weekAfter(week, 8))

  await page.getByRole('button', { name: /^The coming year/ }).click()
  const ahead = page.getByRole('dialog').locator('figure.picture')
  const svg = await saved(page, ahead, 'Drawing (SVG)')
  expect(svg.bytes.toString()).toContain('<svg')
  await ahead.getByRole('button', { name: /^Table/ }).click()
  expect(await ahead.getByRole('row').count()).toBe(53)
  await page.keyboard.press('Escape')

  await openScreen(page, app, '/methods/top_wedge_graft')
  const cut = page.locator('.step-cut').first()
  expect((await saved(page, cut, 'Drawing (SVG)')).bytes.toString()).toContain('<path')
  const { width } = (await cut.locator('svg').boundingBox())!
  expect((await saved(page, cut, 'Image (PNG)')).bytes.readUInt32BE(16)).toBeGreaterThan(5 * width)
  expect(problems).toEqual([])
})
