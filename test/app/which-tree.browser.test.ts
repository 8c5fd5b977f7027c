import { afterAll, beforeAll, expect, test } from 'vitest'
import { type ServedApp, serveApp } from './serve-app.ts'

let app: ServedApp

beforeAll(async () => {
  app = await serveApp()
})
afterAll(() => app.close())

test('changing an input changes the answer at once, and its address reopens the question', async () => {
  const { page, context, problems } = await app.open()
  await page.goto(`${app.address}/which-tree?fruit=lemon&night=3&cold=11&warm=25`)
  const lives = page.locator('.ways-table tbody tr').first().locator('td').nth(2)
  await expect.poll(() => lives.textContent()).toMatch(/^9\d%/)
  await page.getByLabel('Coldest night of a usual year').fill('-9')
  await expect.poll(() => lives.textContent()).toMatch(/^\d%/)
  await expect.poll(() => page.url()).toContain('night=-9')

  await page.getByRole('radio', { name: 'In a container' }).click()
  await page.getByLabel('Container, litres').fill('80')
  await expect.poll(() => page.url()).toContain('pot=80')
  const again = await context.newPage()
  await again.goto(page.url())
  await expect.poll(() => again.getByLabel('Container, litres').inputValue()).toBe('80')
  await expect.poll(() => again.getByLabel('Coldest night of a usual year').inputValue()).toBe('-9')
  await context.close()
  expect(problems).toEqual([])
})

test('a number that makes no sense is said to be wrong where it stands, and the last good answer stays', async () => {
  const { page, context } = await app.open()
  await page.goto(`${app.address}/which-tree?fruit=fig`)
  const rows = page.locator('.ways-table tbody tr')
  await expect.poll(() => rows.count()).toBeGreaterThan(2)
  await page.getByLabel('Looks ahead, years').fill('many')
  await expect.poll(() => page.getByText('A number, please.').count()).toBe(1)
  expect(await rows.count()).toBeGreaterThan(2)
  await context.close()
})

test('the page for a web site asks the server for nothing but itself, and tells no price that its address does not', async () => {
  const { page, context, problems } = await app.open()
  const asked: string[] = []
  page.on('request', request => asked.push(new URL(request.url()).pathname))
  await page.goto(`${app.address}/plant.html?fruit=apple&area=500&rework=yes`)
  await page.locator('.ways-table').waitFor()
  expect(asked.filter(path => !/^\/(plant\.html|assets\/|budstick\.svg)/.test(path))).toEqual([])
  expect(await page.locator('form, .share').count()).toBe(0)
  await context.close()
  expect(problems).toEqual([])
})

test('the sheet for the buyer is one page of A4', async () => {
  const { page, context } = await app.open()
  await page.goto(`${app.address}/which-tree?fruit=apple&area=600&rework=yes`)
  await page.locator('.ways-table').waitFor()
  const pdf = await page.pdf({ format: 'A4', preferCSSPageSize: true })
  expect(pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g)).toHaveLength(1)
  await context.close()
})

test('a weather file gives the climate: the coldest nights, the months, and the answer that follows', async () => {
  const { page, context, problems } = await app.open()
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
  await context.close()
  expect(problems).toEqual([])
})
