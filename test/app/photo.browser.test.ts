import { afterAll, beforeAll, expect, test } from 'vitest'
import { rowsOf } from '../../src/api/index.ts'
import { type ServedApp, serveApp } from './serve-app.ts'

let app: ServedApp
beforeAll(async () => {
  app = await serveApp()
})
afterAll(() => app.close())

/** A photograph as a phone takes it: large, a picture of the page itself drawn by the browser. */
const photograph = async (width: number, height: number): Promise<Buffer> => {
  const data = await app.page.evaluate(
    async ([wide, high]) => {
      const canvas = document.createElement('canvas')
      canvas.width = wide!
      canvas.height = high!
      const draw = canvas.getContext('2d')!
      draw.fillStyle = '#2f6b3c'
      draw.fillRect(0, 0, wide!, high! / 2)
      return canvas.toDataURL('image/png').split(',')[1]!
    },
    [width, height],
  )
  return Buffer.from(data, 'base64')
}

test('a photo of a batch is made smaller, waits while the server is away, and then stands among what was said of it', async () => {
  const { page, context, problems } = app
  const [row] = rowsOf(await app.client.batches({ state: 'alive' }))
  await page.goto(`${app.address}/batches/${row!.id}`)
  await page.getByRole('button', { name: 'Add a photo' }).waitFor()
  const png = await photograph(4000, 3000)

  await context.route('**/api/**', route => route.abort())
  const choosing = page.waitForEvent('filechooser')
  await page.getByRole('button', { name: 'Add a photo' }).click()
  await (await choosing).setFiles({ name: 'IMG_1.png', mimeType: 'image/png', buffer: png })
  await page.getByLabel('What it shows').fill('callus at the base')
  await page.getByRole('button', { name: 'Keep', exact: true }).click()
  await page.getByText('1 entry on this device, not yet at the office').waitFor()

  await context.unroute('**/api/**')
  const shown = page.getByRole('img', { name: /callus at the base/ })
  await shown.waitFor({ timeout: 30_000 })
  await shown.scrollIntoViewIfNeeded()
  const size = () =>
    shown.evaluate(image => {
      const { naturalWidth, naturalHeight } = image as HTMLImageElement
      return [naturalWidth, naturalHeight]
    })
  await expect.poll(size).toEqual([1600, 1200])
  const { entries } = await app.client.batch(row!.id)
  expect(entries.filter(({ picture }) => picture !== null)).toHaveLength(1)
  expect(problems).toEqual([])
})

test('a file that is no picture is said to be none, and nothing is kept', async () => {
  const { page } = app
  const before = (await app.client.nursery()).throughSeq
  const choosing = page.waitForEvent('filechooser')
  await page.getByRole('button', { name: 'Add a photo' }).click()
  await (await choosing).setFiles({ name: 'a.png', mimeType: 'image/png', buffer: Buffer.from('a letter') })
  await page.getByText('This file is no picture').waitFor()
  expect((await app.client.nursery()).throughSeq).toBe(before)
})
