import { afterAll, beforeAll, expect, test } from 'vitest'
import { allGuides } from '../../src/trade/guides/index.ts'
import { openScreen, type ServedApp, serveApp } from './serve-app.ts'

let app: ServedApp

beforeAll(async () => {
  app = await serveApp()
})
afterAll(() => app.close())

const pagesOf = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g)?.length

test('the card of every method is one page of A4, and on A5 a front and a back', async () => {
  const { page, problems } = app
  await page.addInitScript(() => {
    window.print = () => undefined
  })
  for (const { method } of allGuides()) {
    await openScreen(page, app, `/methods/${method}`)
    await page.getByRole('button', { name: 'On A5, both sides' }).waitFor()
    expect(pagesOf(await page.pdf({ preferCSSPageSize: true })), `${method} on A4`).toBe(1)
    await page.getByRole('button', { name: 'On A5, both sides' }).click()
    const small = await page.pdf({ preferCSSPageSize: true })
    expect(pagesOf(small), `${method} on A5`).toBe(2)
    // A5 is 148 by 210 mm (ISO 216): about 420 by 595 points.
    expect(small.toString('latin1')).toMatch(/\/MediaBox\s*\[\s*0\s+0\s+(419|420)(\.\d+)?\s+59[45]/)
  }
  expect(problems).toEqual([])
})

test('any screen is printed in black on white, in the dark theme too, without what only a hand on a screen can use', async () => {
  const { page } = app
  await openScreen(page, app, '/orders')
  const enter = page.getByRole('link', { name: 'Enter orders' })
  const wear = (theme: string) =>
    page.locator('html').evaluate((root, name) => root.setAttribute('data-theme', name), theme)
  await wear('dark')
  const inkOf = (element: Element) => getComputedStyle(element).color
  expect(await page.locator('h1').evaluate(inkOf)).not.toBe('rgb(0, 0, 0)')
  await page.emulateMedia({ media: 'print' })
  expect(await page.locator('h1').evaluate(inkOf)).toBe('rgb(0, 0, 0)')
  expect(await enter.isVisible()).toBe(false)
  expect(await page.getByRole('navigation').first().isVisible()).toBe(false)
  expect(await page.getByRole('searchbox').first().isVisible()).toBe(false)
  await page.emulateMedia({ media: null })
  expect(await enter.isVisible()).toBe(true)
  await wear('light')
})
