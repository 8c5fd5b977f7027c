import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { type Browser, chromium } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { flags, openBrowser, packedBrowser } from './browser.ts'

const page = '<!doctype html><title>Bench 3</title><label>Taken <input></label><output></output>'
const script =
  '<script>document.querySelector("input").oninput = e => document.querySelector("output").textContent = e.target.value * 2</script>'

const server = createServer((_, answer) => answer.setHeader('content-type', 'text/html').end(page + script))

beforeAll(() => new Promise<void>(listening => server.listen(0, '127.0.0.1', listening)))
afterAll(() => new Promise(closed => server.close(closed)))

async function typeIntoPage(browser: Browser) {
  try {
    const tab = await browser.newPage()
    await tab.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`)
    await tab.getByLabel('Taken').fill('19')
    const picture = await tab.screenshot()
    return {
      title: await tab.title(),
      shown: await tab.locator('output').textContent(),
      serviceWorkers: await tab.evaluate(() => 'serviceWorker' in navigator),
      widthOfPng: picture.readUInt32BE(16),
    }
  } finally {
    await browser.close()
  }
}

const works = { title: 'Bench 3', shown: '38', serviceWorkers: true, widthOfPng: 1280 }

test('a browser of this machine, or the packed one, opens a page of ours, runs its script and draws it', async () => {
  expect(await typeIntoPage(await openBrowser())).toEqual(works)
})

test.runIf(process.platform === 'linux' && process.arch === 'x64')(
  'the packed browser works, so a machine without any browser can run the tests',
  async () => {
    expect(await typeIntoPage(await chromium.launch({ args: flags, ...(await packedBrowser()) }))).toEqual(
      works,
    )
  },
)

test('a browser that does not start is named in the message, with what to do', async () => {
  const before = process.env.CHROMIUM_PATH
  process.env.CHROMIUM_PATH = '/no/such/browser'
  try {
    await expect(openBrowser()).rejects.toThrow(
      /CHROMIUM_PATH \(\/no\/such\/browser\)[\s\S]*Install Chromium, Chrome or Edge/,
    )
  } finally {
    if (before === undefined) delete process.env.CHROMIUM_PATH
    else process.env.CHROMIUM_PATH = before
  }
})
