import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { buildApp, buildServer } from '../scripts/setup/build.js'
import type { BatchRow, PlanState, Table, WeekWork } from '../src/api/index.ts'
import { type AnyEntry, type Entry, foldEntries } from '../src/record/index.ts'
import { openLog } from '../src/store/index.ts'
import { EntryId } from '../src/trade/index.ts'
import { openBrowser } from '../test/browser.ts'
import { startServer } from '../test/real-server.ts'
import { root } from '../test/source-files.ts'
import { madeLog } from './made-log.ts'

/** Of the past ones a tenth still have plants under way, so that more than 5,000 live in all. */
const PAST = 54_300
const LIVE = 700
/** A phone of the middle class against this machine. */
const SLOWER = 4
const TODAY = '2026-01-05'

/** Ten years of batches: the last are still in their first step, and of the others all trees are sold. */
function logWithLiveBatches(): AnyEntry[] {
  const numberOf = (batch: string) => Number(/^b(\d+)/.exec(batch)?.[1] ?? Number.NaN)
  const started = new Set<number>()
  const entries = madeLog(PAST + LIVE).filter(({ body }) => {
    const number = 'batch' in body ? numberOf(String(body.batch)) : Number.NaN
    if (!(number >= PAST)) return true
    const isStart = body.kind === 'batch-started/1' && !started.has(number)
    if (isStart) started.add(number)
    return isStart
  })
  const sold = [...foldEntries(entries).batches.values()]
    .filter(({ id, finished }) => finished > 0 && numberOf(id) < PAST)
    .map(
      ({ id, finished }, at): Entry => ({
        id: EntryId.parse(`02a00000-0000-7000-8000-${at.toString(16).padStart(12, '0')}`),
        on: '2026-01-01',
        at: null,
        by: null,
        device: 'office',
        body: { kind: 'dispatched/1', batch: id, order: null, number: finished, to: 'a buyer' },
      }),
    )
  return [...entries, ...sold]
}

/** A page with nothing kept, as on a phone so much slower. */
async function slowPhone(browser: Awaited<ReturnType<typeof openBrowser>>) {
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    serviceWorkers: 'block',
  })
  const page = await context.newPage()
  const device = await context.newCDPSession(page)
  await device.send('Emulation.setCPUThrottlingRate', { rate: SLOWER })
  return { page, device }
}

/** Seconds until the living batches are shown by a server that has just started, and is still learning what takes. */
async function firstBatchesWhileLearning(address: string): Promise<number> {
  const browser = await openBrowser()
  try {
    const { page } = await slowPhone(browser)
    const began = performance.now()
    await page.goto(`${address}/batches`)
    await page.locator('.batch-line').first().waitFor({ timeout: 120_000 })
    return (performance.now() - began) / 1000
  } finally {
    await browser.close()
  }
}

/**
 * The app on a phone four times slower than this machine, on a nursery of 55,000 batches, over 5,000 of them living: the first
 * view with nothing kept on the device, a count from the tap until it is kept, a search from the key until it is shown.
 * Goals: under 2 s, under 100 ms, under 100 ms; the scripts of the first view under 300 kB compressed.
 */
export default async () => {
  await Promise.all([buildServer(root), buildApp(root)])
  const folder = mkdtempSync(join(tmpdir(), 'app-'))
  const log = await openLog(folder, { write: true })
  log.append(logWithLiveBatches(), '2026-01-01T00:00:00Z')
  log.close()
  const server = await startServer(['dist/server/main.js'], folder, '--today', TODAY)
  const answered = async (path: string): Promise<number> => {
    const began = performance.now()
    await (await fetch(server.address + path)).arrayBuffer()
    return (performance.now() - began) / 1000
  }
  const secondsToFoldAfterAKill = await answered('/api/nursery')
  const secondsToOneBatchWhileLearning = await answered('/api/batches/b54321')
  const whileLearning = await firstBatchesWhileLearning(server.address)
  const secondsToLearnRates =
    secondsToOneBatchWhileLearning + whileLearning + (await answered('/api/batches/b54321/expected'))
  const living = (await (
    await fetch(`${server.address}/api/batches?state=alive&limit=100000`)
  ).json()) as Table<BatchRow>
  // With a plan, the week has its work: every living batch is to be counted or moved on.
  await fetch(`${server.address}/api/plan`, { method: 'POST' })
  const isPlanning = async () =>
    ((await (await fetch(`${server.address}/api/plan`)).json()) as PlanState).job?.state === 'running'
  while (await isPlanning()) await new Promise(later => setTimeout(later, 1000))
  const work = (await (await fetch(`${server.address}/api/work`)).json()) as WeekWork
  // The server keeps its state once the log has been quiet for half a minute: not while the app is measured.
  await new Promise(quiet => setTimeout(quiet, 45_000))
  await answered('/api/nursery')
  const browser = await openBrowser()
  try {
    const { page, device } = await slowPhone(browser)
    await device.send('Performance.enable')
    /** Seconds that the page's thread has worked, slowed down: less than the clock where the machine is busy with others. */
    const worked = async (what: 'ScriptDuration' | 'TaskDuration') =>
      (await device.send('Performance.getMetrics')).metrics.find(({ name }) => name === what)?.value ?? 0
    const scripts = new Set<string>()
    page.on('request', asked => {
      if (asked.url().endsWith('.js')) scripts.add(new URL(asked.url()).pathname)
    })

    const firstView = async (path: string, shown: string): Promise<number> => {
      const began = performance.now()
      await page.goto(server.address + path)
      await page.locator(shown).first().waitFor({ timeout: 120_000 })
      return (performance.now() - began) / 1000
    }
    const secondsToBatches = await firstView('/batches', '.batch-line')
    const secondsOfScripts = await worked('ScriptDuration')
    const secondsOfPage = await worked('TaskDuration')
    const kilobytesOfFirstView =
      [...scripts].reduce(
        (sum, path) => sum + gzipSync(readFileSync(join(root, 'dist/app', path))).length,
        0,
      ) / 1000

    /** From the event in the page until what it should show is painted. */
    const untilShown = (act: string, shown: string): Promise<number> =>
      page.evaluate<number>(`new Promise(done => {
        const began = performance.now()
        const look = () => requestAnimationFrame(() => (${shown} ? done(performance.now() - began) : look()));
        ${act}
        look()
      })`)
    const millisecondsToFind = await untilShown(
      `const field = document.querySelector('.find-field input');
       Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set.call(field, 'b54321');
       field.dispatchEvent(new Event('input', { bubbles: true }))`,
      `document.querySelectorAll('.batch-line').length === 1`,
    )

    const secondsToWork = await firstView('/work', '.task')
    const secondsToOneBatch = await firstView('/batches/b54321/count', 'form.count')
    await page.getByRole('button', { name: '7', exact: true }).tap()
    const millisecondsToKeepACount = await untilShown(
      `[...document.querySelectorAll('button')].find(one => one.textContent === 'Keep this count').click()`,
      `document.querySelector('.done-line') !== null`,
    )
    const { metrics } = await device.send('Performance.getMetrics')
    const heap = metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? 0
    return {
      figures: {
        livingBatches: living.rows,
        pastBatches: PAST + LIVE - living.rows,
        secondsToFoldAfterAKill,
        secondsToAnswerOneBatchWhileLearning: secondsToOneBatchWhileLearning,
        secondsToFirstViewOfBatchesWhileLearning: whileLearning,
        secondsToLearnRates,
        secondsToFirstViewOfBatches: secondsToBatches,
        ofWhichThePageWorked: secondsOfPage,
        ofWhichInScripts: secondsOfScripts,
        secondsToOneBatch,
        tasksOfThisWeek: work.planned.tasks.rows,
        secondsToThisWeek: secondsToWork,
        millisecondsFromKeyToFound: millisecondsToFind,
        millisecondsFromTapToKept: millisecondsToKeepACount,
        kilobytesOfScriptsOfFirstView: kilobytesOfFirstView,
        megabytesHeap: heap / 1e6,
      },
      rivals: {},
      notes: [
        `processor slowed ${SLOWER} times; goals: 2 s, 100 ms, 300 kB`,
        'a count is kept when it is on the disk of the device',
      ],
    }
  } finally {
    await browser.close()
    await server.end()
    rmSync(folder, { recursive: true, force: true })
  }
}
