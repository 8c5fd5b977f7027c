import { afterAll, beforeAll, expect, test } from 'vitest'
import { makeDemoEntries } from '../../src/demo/index.ts'
import { localToday, type ServedApp, serveApp } from './serve-app.ts'

let app: ServedApp
beforeAll(async () => {
  app = await serveApp(makeDemoEntries({ seed: 1, today: localToday() }))
})
afterAll(() => app.close())

test('what takes is seen by rootstock, each on its range and with the batches behind it', async () => {
  const { rootstocks } = await app.client.ratesCompared()
  const { page, problems } = await app.open({ reducedMotion: 'reduce' })
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
    const { page, problems } = await app.open({ reducedMotion: 'reduce' })
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
