/** The built program on a small nursery, served for real, and a page of it in a real browser. */
import { type ChildProcess, spawn } from 'node:child_process'
import { cpSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { createClient } from '../../src/api/index.ts'
import { sharedBrowser } from '../browser.ts'
import { BUILT } from '../real-server.ts'
import { root } from '../source-files.ts'
import { plannedNursery } from './plan-nursery.ts'
import { localToday, smallNursery } from './small-nursery.ts'

export interface OpenedPage {
  readonly page: Page
  readonly context: BrowserContext
  readonly problems: readonly string[]
}

/**
 * A nursery that is served, and its page, empty at first: the tests of a file go on with it one after another, for a page
 * opened anew reads in all the scripts again.
 */
export interface ServedApp extends OpenedPage {
  readonly address: string
  readonly client: ReturnType<typeof createClient>
  /** One more page, with a fresh profile, as another device has it; whatever goes wrong in it is collected. */
  open(options?: Parameters<Browser['newContext']>[0]): Promise<OpenedPage>
  close(): Promise<void>
}

const listening = (child: ChildProcess): Promise<string> =>
  new Promise((done, fail) => {
    let said = ''
    const hear = (chunk: Buffer) => {
      said += chunk
      const address = /http:\/\/localhost:\d+/.exec(said)?.[0]
      if (address !== undefined) done(address)
    }
    child.stdout?.on('data', hear)
    child.stderr?.on('data', hear)
    child.on('close', code => fail(new Error(`The program ended with ${code}: ${said}`)))
  })

/** @param nursery what the nursery's record holds at the start */
export async function serveApp(
  nursery = smallNursery(localToday()),
  ...flags: readonly string[]
): Promise<ServedApp> {
  const app = await serve(mkdtempSync(join(tmpdir(), 'small-nursery-')), flags)
  if (nursery.length > 0) await app.client.pushEntries(nursery)
  return app
}

/** The small nursery with its season planned: a copy of the one that is planned once for all. */
export async function servePlannedApp(): Promise<ServedApp> {
  const data = mkdtempSync(join(tmpdir(), 'planned-nursery-'))
  cpSync(await plannedNursery(), data, { recursive: true })
  return serve(data, [])
}

async function serve(data: string, flags: readonly string[]): Promise<ServedApp> {
  const args = ['serve', '--no-open', '--empty', '--port', '0', '--data', data, ...flags]
  const child = spawn(process.execPath, [...BUILT, ...args], { cwd: root })
  const address = await listening(child)
  const client = createClient(address)
  const browser = await sharedBrowser()
  const contexts: BrowserContext[] = []

  const open: ServedApp['open'] = async options => {
    const context = await browser.newContext({
      locale: 'en-GB',
      serviceWorkers: 'block',
      viewport: { width: 1280, height: 900 },
      reducedMotion: 'reduce',
      ...options,
    })
    contexts.push(context)
    const page = await context.newPage()
    const problems: string[] = []
    page.on('pageerror', error => problems.push(error.message))
    return { page, context, problems }
  }

  return {
    address,
    client,
    ...(await open()),
    open,
    close: async () => {
      await Promise.all(contexts.map(context => context.close()))
      child.removeAllListeners('close')
      const ended = new Promise(done => child.once('close', done))
      child.kill()
      await ended
      rmSync(data, { recursive: true })
    },
  }
}

/**
 * Opens a screen and waits until it shows what it is about: from another screen as a link within the app leads there,
 * with nothing loaded anew; on a page that stands elsewhere, or on this very screen, by its address.
 */
export async function openScreen(page: Page, { address }: ServedApp, path: string): Promise<void> {
  const [from, to] = [new URL(page.url()), new URL(path, address)]
  const within = from.origin === to.origin && !`${from.pathname} ${to.pathname}`.includes('.html')
  if (within && from.pathname !== to.pathname) {
    const title = await page.title()
    await page.evaluate(path => {
      history.pushState(null, '', path)
      dispatchEvent(new PopStateEvent('popstate'))
    }, path)
    // Each screen has a title of its own.
    await page.waitForFunction(before => document.title !== before, title)
  } else await page.goto(to.href)
  await page.locator('h1').first().waitFor({ state: 'attached' })
  await page.locator('[data-fetching]').waitFor({ state: 'detached' })
}
