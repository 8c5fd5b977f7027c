import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createClient } from '../src/api/index.ts'
import { openBrowser } from '../test/browser.ts'
import { startServer } from '../test/real-server.ts'
import { root } from '../test/source-files.ts'

/**
 * `npm run pictures [-- FOLDER]`: every screen of the invented nursery, wide and on a phone, in every theme, as PNG.
 * Build first (`npm test` or `npm start` does).
 */
const screens: readonly (readonly [name: string, path: string])[] = [
  ['work', '/work'],
  ['season', '/season'],
  ['start', '/season?start={start}'],
  ['orders', '/orders'],
  ['order', '/orders?order={order}'],
  ['new-orders', '/orders/new'],
  ['batches', '/batches'],
  ['batch', '/batches/26-100'],
  ['count', '/batches/26-100/count'],
  ['family', '/lineage/batch/26-100'],
  ['benches', '/benches'],
  ['bench-count', '/benches/{bench}/count'],
  ['mothers', '/mothers'],
  ['mother', '/mothers?mother={mother}'],
  ['affected', '/lineage/mother/{mother}/affected'],
  ['rates', '/rates'],
  ['rates-kinds', '/rates?view=kinds'],
  ['rates-people', '/rates?view=people'],
  ['slumps', '/rates?view=slumps'],
  ['mother-family', '/lineage/mother/{mother}'],
  ['year', '/year'],
  ['methods', '/methods'],
  ['method', '/methods/top_wedge_graft'],
  ['fruits', '/species'],
  ['fruit', '/species/lychee'],
  ['which-tree', '/which-tree?fruit=apple&area=600'],
  ['which-way', '/which-tree?fruit=apple&view=nursery'],
  ['plant', '/plant.html?fruit=lemon&pot=50&winter=moved+inside'],
  ['checks', '/checks'],
  ['journal', '/journal'],
  ['protocol', '/protocols/{protocol}'],
  ['import', '/import'],
  ['nursery', '/nursery'],
  ['settings', '/settings'],
]
const themes = ['light', 'dark', 'sunlight'] as const
const sizes = { wide: { width: 1440, height: 900 }, phone: { width: 390, height: 844 } } as const

/** What stands in the addresses above, of this nursery. */
const knownTo = async (client: ReturnType<typeof createClient>) => {
  const batch = await client.batch('26-100')
  return {
    start: (await client.seasonPlan()).starts[0]!.id,
    order: (await client.orders())[0]!.order.id,
    bench: batch.row.benches[0]!,
    protocol: batch.row.protocol,
    mother: batch.from.find(({ what }) => what === 'mother')!.id,
  }
}

const into = process.argv[2] ?? join(root, '.cache/pictures')
mkdirSync(into, { recursive: true })
const data = mkdtempSync(join(tmpdir(), 'budstick-pictures-'))
const nothing = mkdtempSync(join(tmpdir(), 'budstick-pictures-'))
const server = await startServer(['dist/server/main.js'], data, '--today', '2026-11-25')
/** A nursery in which nothing is entered. */
const empty = await startServer(['dist/server/main.js'], nothing, '--empty', '--today', '2026-11-25')
const browser = await openBrowser()
try {
  let isPlanned = false
  while (!isPlanned) {
    const state = (await (await fetch(`${server.address}/api/plan`)).json()) as { plan: unknown }
    isPlanned = state.plan !== null
    if (!isPlanned) await new Promise(resolve => setTimeout(resolve, 1_000))
  }
  const known = await knownTo(createClient(server.address))
  for (const theme of themes)
    for (const [size, viewport] of Object.entries(sizes)) {
      const context = await browser.newContext({ viewport })
      await context.addInitScript(kept => localStorage.setItem('budstick.theme', kept), theme)
      const page = await context.newPage()
      const open = async (address: string): Promise<void> => {
        await page.goto(address)
        await page.getByRole('heading', { level: 1 }).waitFor()
        await page.waitForFunction(() => document.querySelector('[data-fetching]') === null)
      }
      const take = async (name: string): Promise<void> => {
        await page.waitForTimeout(400)
        await page.screenshot({ path: join(into, `${name}-${size}-${theme}.png`) })
        process.stderr.write(`${name}, ${size}, ${theme}\n`)
      }
      for (const [name, path] of screens) {
        await open(
          server.address +
            path.replace(/\{(\w+)\}/, (_, what: keyof typeof known) => encodeURIComponent(known[what])),
        )
        await take(name)
      }
      await page.keyboard.press('Control+K')
      await page.getByRole('dialog').waitFor()
      await take('finder')
      await open(`${empty.address}/work`)
      await take('first-run')
      await context.close()
    }
} finally {
  await browser.close()
  for (const served of [server, empty]) await served.end()
  for (const folder of [data, nothing]) rmSync(folder, { recursive: true, force: true })
}
