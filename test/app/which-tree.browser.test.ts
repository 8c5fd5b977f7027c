import type { Request } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { newFruit } from '../../src/app/screens/species/new-fruit.ts'
import { speciesById } from '../../src/trade/facts/index.ts'
import { entryOf } from '../served-nursery.ts'
import { type ServedApp, serveApp } from './serve-app.ts'
import { localToday } from './small-nursery.ts'

let app: ServedApp

beforeAll(async () => {
  app = await serveApp()
})
afterAll(() => app.close())

test('changing an input changes the answer at once, and its address reopens the question', async () => {
  const { page, problems } = app
  await page.goto(`${app.address}/which-tree?fruit=lemon&night=3&cold=11&warm=25`)
  const lives = page.locator('.ways-table tbody tr').first().locator('td').nth(2)
  await expect.poll(() => lives.textContent()).toMatch(/^9\d%/)
  await page.getByLabel('Coldest night of a usual year').fill('-9')
  await expect.poll(() => lives.textContent()).toMatch(/^\d%/)
  await expect.poll(() => page.url()).toContain('night=-9')

  await page.getByRole('radio', { name: 'In a container' }).click()
  await page.getByLabel('Container, litres').fill('80')
  await expect.poll(() => page.url()).toContain('pot=80')
  const again = await app.context.newPage()
  await again.goto(page.url())
  await expect.poll(() => again.getByLabel('Container, litres').inputValue()).toBe('80')
  await expect.poll(() => again.getByLabel('Coldest night of a usual year').inputValue()).toBe('-9')
  await again.close()
  expect(problems).toEqual([])
})

test('a number that makes no sense is said to be wrong where it stands, and the last good answer stays', async () => {
  const { page } = app
  await page.goto(`${app.address}/which-tree?fruit=fig`)
  const rows = page.locator('.ways-table tbody tr')
  await expect.poll(() => rows.count()).toBeGreaterThan(2)
  await page.getByLabel('Looks ahead, years').fill('many')
  await expect.poll(() => page.getByText('A number, please.').count()).toBe(1)
  expect(await rows.count()).toBeGreaterThan(2)
})

test('the page for a web site asks the server for nothing but itself, and tells no price that its address does not', async () => {
  const { page, problems } = app
  const asked: string[] = []
  const hear = (request: Request) => asked.push(new URL(request.url()).pathname)
  // What the screen before still asks is not asked by this page.
  await page.goto('about:blank')
  page.on('request', hear)
  await page.goto(`${app.address}/plant.html?fruit=apple&area=500&rework=yes`)
  await page.locator('.ways-table').waitFor()
  expect(asked.filter(path => !/^\/(plant\.html|assets\/|budstick\.svg)/.test(path))).toEqual([])
  expect(await page.locator('form, .share').count()).toBe(0)
  page.off('request', hear)
  expect(problems).toEqual([])
})

test('the sheet for the buyer is one page of A4, of a fruit with seven ways too', async () => {
  const { page } = app
  for (const fruit of ['apple', 'lime']) {
    await page.goto(`${app.address}/which-tree?fruit=${fruit}&area=600&rework=yes`)
    await page.locator('.ways-table').waitFor()
    const pdf = await page.pdf({ format: 'A4', preferCSSPageSize: true })
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g), fruit).toHaveLength(1)
  }
})

test('a weather file gives the climate: the coldest nights, the months, and the answer that follows', async () => {
  const { page, problems } = app
  await page.goto(`${app.address}/which-tree?fruit=lemon&night=6&cold=13&warm=27`)
  const lives = page.locator('.ways-table tbody tr').first().locator('td').nth(2)
  await expect.poll(() => lives.textContent()).toMatch(/^9\d%/)
  // Six made years, with semicolons, decimal commas and days before months; the coldest night of each is below −10 °C.
  const lines = ['Datum;Tmin;Tmax']
  for (let year = 2010; year < 2016; year++)
    for (let month = 1; month <= 12; month++)
      for (let day = 1; day <= 28; day++)
        for (const again of day <= 3 ? [0, 28] : [0]) {
          if (day + again > 30 && [2, 4, 6, 9, 11].includes(month)) continue
          if (month === 2 && day + again > 28) continue
          const mean = 11 - 9 * Math.cos((2 * Math.PI * (month - 1)) / 12)
          const min = month === 1 && day === 10 ? -10.5 - (year % 3) : mean - 4
          const two = (value: number) => String(value).padStart(2, '0')
          const written = (value: number) => value.toFixed(1).replace('.', ',')
          lines.push(`${two(day + again)}.${two(month)}.${year};${written(min)};${written(mean + 4)}`)
        }
  await page.locator('input[type=file]').setInputFiles({
    name: 'station.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(`\uFEFF${lines.join('\r\n')}`),
  })
  await page.getByText(/^Read: \d whole winters/).waitFor()
  await expect.poll(() => page.getByLabel(/Coldest night of each year/).inputValue()).toContain('-12.5')
  await expect.poll(() => lives.textContent()).toMatch(/^\d%/)
  await expect.poll(() => page.url()).toContain('months=')
  expect(problems).toEqual([])
})

test('in a nursery with US units all is shown, typed and sent to the web site in them; a fruit of its own has its page', async () => {
  const { page, context, problems } = await app.open({ locale: 'en-US' })
  const settings = entryOf({ kind: 'settings-set/1', settings: { units: 'us' } }, localToday())
  const fruit = newFruit({
    commonName: 'Medlar',
    botanical: 'Crataegus germanica',
    family: '',
    like: speciesById('pear')!,
  })!
  const added = entryOf({ kind: 'species-set/1', species: fruit, why: 'we grow it' }, localToday())
  await app.client.pushEntries([settings, added])

  await page.goto(`${app.address}/which-tree?fruit=medlar&night=-10&cold=0&warm=20&area=1000`)
  // −10 °C is 14 °F; 1000 m² are 10,764 ft² (1 ft = 0.3048 m): NIST SP 811, appendix B.
  await expect.poll(() => page.getByLabel('Coldest night of a usual year, °F').inputValue()).toBe('14')
  await expect.poll(() => page.getByLabel('Area, ft²').inputValue()).toBe('10760')
  await page.getByLabel('Coldest night of a usual year, °F').fill('5')
  await expect.poll(() => page.url()).toContain('night=-15')
  const text = (await page.locator('main').textContent())!
  expect(text).toMatch(/\d lb/)
  expect(text).not.toMatch(/\d (kg|m²|m|°C|l)\b/)

  const shared = page.locator('.share textarea')
  await expect.poll(() => shared.inputValue()).toContain('night=-15')
  const code = await shared.inputValue()
  const address = /src="([^"]+)"/.exec(code)![1]!.replaceAll('&amp;', '&')
  const site = await context.newPage()
  await site.goto(address)
  await site.getByRole('heading', { name: 'Which tree: Medlar' }).waitFor()
  const cells = (of: typeof page) => of.locator('.ways-table tbody tr td:nth-of-type(4)').allTextContents()
  expect(await cells(site)).toEqual(await cells(page))
  await app.client.pushEntries([
    entryOf({ kind: 'struck/1', entry: settings.id, why: 'back to metric' }, localToday()),
  ])
  await context.close()
  expect(problems).toEqual([])
})
