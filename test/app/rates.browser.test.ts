import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { makeDemoEntries } from '../../src/demo/index.ts'
import { axeOn } from './axe.ts'
import { type ServedApp, serveApp } from './serve-app.ts'

/** In the invented nursery, a day in the half-year after grafts that took badly. */
const TODAY = '2026-06-10'

let app: ServedApp
beforeAll(async () => {
  app = await serveApp(makeDemoEntries({ seed: 1, today: TODAY }), '--today', TODAY)
})
afterAll(() => app.close())

test('on a wide screen and on a phone the name of each step is read whole, what several stand under once over them, and each is told apart from the others', async () => {
  const { page, problems } = app
  const rates = await app.client.rates()
  const several = rates.find(({ kind, protocol }) =>
    rates.some(other => other.kind === kind && other.protocol !== protocol),
  )!
  await page.goto(`${app.address}/rates?show=all&find=${encodeURIComponent(several.kindName!)}`)
  const pictures = page.locator('figure.picture:has(svg.points)')
  for (const width of [1024, 390, 1280]) {
    await page.setViewportSize({ width, height: 900 })
    await pictures.first().waitFor()
    expect((await pictures.locator('svg text').allTextContents()).filter(text => /…/.test(text))).toEqual([])
    const picture = pictures.filter({
      has: page.getByRole('heading', { name: several.kindName!, exact: true }),
    })
    const words = await picture.locator('svg text').allTextContents()
    expect(words.filter(text => text === several.protocolName)).toHaveLength(1)
    const lanes = await picture
      .getByRole('button', { name: /%/ })
      .evaluateAll(all => all.map(one => one.getAttribute('aria-label')!.split(':').slice(0, 2).join()))
    expect(new Set(lanes).size).toBe(rates.filter(({ kind }) => kind === several.kind).length)
  }
  expect(problems).toEqual([])
})

test('what takes is seen by rootstock, each on its range and with the batches behind it', async () => {
  const { rootstocks } = await app.client.ratesCompared()
  const { page, problems } = app
  await page.goto(`${app.address}/rates`)
  await page.getByRole('radio', { name: 'Rootstocks' }).click()
  await page.waitForURL(/view=rootstocks/)
  const picture = page.locator('figure.picture:has(svg.points)').first()
  await picture.waitFor()
  const { members } = rootstocks[0]!
  expect(members.length).toBeGreaterThan(1)
  for (const { name, batches } of members)
    await picture.getByRole('img', { name: new RegExp(`^${name}: .*${batches} batch`) }).waitFor()
  expect(problems).toEqual([])
})

test('the funnel marks and names exactly those who stand outside the limits, in the picture and in its table', async () => {
  const { people, kinds } = await app.client.ratesCompared()
  for (const [view, groups] of [
    ['people', people],
    ['kinds', kinds],
  ] as const) {
    const { members } = groups.find(group => group.members.length >= 3)!
    const outside = members.filter(({ seen }) => seen.standing !== 'within')
    const { page, problems } = app
    await page.goto(`${app.address}/rates?view=${view}`)
    const picture = page.locator('figure.picture:has(svg.funnel)').first()
    await picture.waitFor()
    await picture.getByText('Few counted, wide limits').waitFor()
    expect(await picture.locator('svg.funnel [role=img]').count()).toBe(members.length)
    expect(await picture.locator('.funnel-point:not(circle)').count()).toBe(outside.length)
    expect(await picture.locator('svg.funnel text.strong').count()).toBe(outside.length)
    await page
      .getByRole('button', { name: /^Table: .* stands out$/ })
      .first()
      .click()
    for (const { name, entered, seen } of members) {
      const row = page
        .getByRole('row')
        .filter({ hasText: name })
        .filter({ hasText: seen.standing.replace('-', ' ') })
      await row
        .filter({ hasText: entered.toLocaleString('en-GB') })
        .first()
        .waitFor()
    }
    expect(problems).toEqual([])
  }
})

test('the funnel turns into its table with the key T and back, is saved as a drawing that stands alone and as an image, and axe finds no fault in it on paper, on a phone, in the dark or in the sun', async () => {
  const { page, problems } = app
  await page.goto(`${app.address}/rates?view=kinds`)
  const picture = page.locator('figure.picture:has(svg.funnel)').first()
  await picture.waitFor()
  const saved = async (as: string) => {
    const download = page.waitForEvent('download')
    await picture.getByRole('button', { name: /^Save/ }).click()
    await page.getByRole('menuitem', { name: as }).click()
    return readFileSync(await (await download).path())
  }
  const drawing = (await saved('Drawing (SVG)')).toString()
  expect(drawing).toContain('<svg')
  expect(drawing).not.toMatch(/ class=/)
  // PNG specification (W3C, third edition): the signature.
  expect([...(await saved('Image (PNG)')).subarray(0, 4)]).toEqual([137, 80, 78, 71])

  const faults: string[] = []
  for (const [theme, width, contrast] of [
    ['light', 1280, 'color-contrast'],
    ['dark', 1280, 'color-contrast'],
    ['sunlight', 1280, 'color-contrast-enhanced'],
    ['light', 390, 'color-contrast'],
  ] as const) {
    await page.setViewportSize({ width, height: 800 })
    await page.evaluate(shown => {
      document.documentElement.dataset.theme = shown
    }, theme)
    const axe = await axeOn(page)
    const { violations } = await (theme === 'light'
      ? axe.withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
      : axe.withRules(contrast)
    ).analyze()
    for (const { id, nodes } of violations) faults.push(`${theme}, ${width}: ${id} at ${nodes[0]?.target}`)
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    )
  }
  expect(faults).toEqual([])

  const at = await page
    .locator('figure.picture')
    .evaluateAll(all => all.findIndex(one => one.querySelector('svg.funnel') !== null))
  const framed = page.locator('figure.picture').nth(at)
  await framed.getByRole('button', { name: /^Table/ }).focus()
  await page.keyboard.press('t')
  await framed.getByRole('table').waitFor()
  await page.keyboard.press('t')
  await framed.locator('svg.funnel').waitFor()
  expect(problems).toEqual([])
})

test('takes that do worse than before are named in every view of the rates, with whose they are, since when and by what, and each batch that says so opens', async () => {
  const { slumps } = await app.client.needsLook()
  expect(slumps.length).toBeGreaterThan(0)
  const { page, problems } = app
  await page.goto(`${app.address}/rates`)
  const says = page.locator('.page-head p')
  const said = new Set<string | null>()
  for (const view of ['Steps', 'Kinds', 'Rootstocks', 'Months', 'People']) {
    await page.getByRole('radio', { name: view }).click()
    await page.waitForURL(new RegExp(`view=${view.toLowerCase()}`))
    await page.getByRole('link', { name: /before/ }).waitFor()
    said.add(await says.textContent())
  }
  await page.getByRole('link', { name: /before/ }).click()
  await page.waitForURL(/view=slumps/)
  said.add(await says.textContent())
  expect(said.size).toBe(6)

  const pictures = page.locator('figure.picture:has(svg.points)')
  await pictures.first().waitFor()
  expect(await pictures.count()).toBe(slumps.length)
  for (const [at, { since, batches, entered, survived, steps }] of slumps.entries()) {
    const picture = pictures.nth(at)
    const day = new Date(since).toLocaleDateString('en-GB', {
      ...{ day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' },
    })
    const of = [survived, entered].map(number => number.toLocaleString('en-GB')).join(' of ')
    await picture.getByText(`Since ${day}, ${batches} batch`).and(picture.getByText(of)).first().waitFor()
    expect(await picture.getByRole('button', { name: /; \d+ of \d+, expected \d/ }).count()).toBe(
      steps.length,
    )
  }
  const { name } = slumps[0]!.steps[0]!
  await pictures
    .first()
    .getByRole('button', { name: new RegExp(`^${name}, `) })
    .first()
    .press('Enter')
  await page.getByRole('heading', { level: 1, name }).waitFor()
  await page.goBack()
  await page.waitForURL(/view=slumps/)
  expect(problems).toEqual([])
})
