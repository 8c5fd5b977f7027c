import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
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
  ['orders', '/orders'],
  ['batches', '/batches'],
  ['batch', '/batches/26-100'],
  ['benches', '/benches'],
  ['mothers', '/mothers'],
  ['rates', '/rates'],
  ['year', '/year'],
  ['methods', '/methods'],
  ['method', '/methods/top_wedge_graft'],
  ['fruits', '/species'],
  ['fruit', '/species/lychee'],
  ['which-tree', '/which-tree?fruit=apple&area=600'],
  ['which-way', '/which-tree?fruit=apple&view=nursery'],
  ['plant', '/plant.html?fruit=lemon&pot=50&winter=moved+inside'],
  ['checks', '/checks'],
  ['settings', '/settings'],
]
const themes = ['light', 'dark', 'sunlight'] as const
const sizes = { wide: { width: 1440, height: 900 }, phone: { width: 390, height: 844 } } as const

const into = process.argv[2] ?? join(root, '.cache/pictures')
mkdirSync(into, { recursive: true })
const data = mkdtempSync(join(tmpdir(), 'budstick-pictures-'))
const server = await startServer(['dist/server/main.js'], data, '--today', '2026-11-25')
const browser = await openBrowser()
try {
  let isPlanned = false
  while (!isPlanned) {
    const state = (await (await fetch(`${server.address}/api/plan`)).json()) as { plan: unknown }
    isPlanned = state.plan !== null
    if (!isPlanned) await new Promise(resolve => setTimeout(resolve, 1_000))
  }
  for (const theme of themes)
    for (const [size, viewport] of Object.entries(sizes)) {
      const context = await browser.newContext({ viewport })
      await context.addInitScript(kept => localStorage.setItem('budstick.theme', kept), theme)
      const page = await context.newPage()
      for (const [name, path] of screens) {
        await page.goto(server.address + path)
        await page.getByRole('heading', { level: 1 }).waitFor()
        await page.waitForTimeout(400)
        await page.screenshot({ path: join(into, `${name}-${size}-${theme}.png`) })
        process.stderr.write(`${name}, ${size}, ${theme}\n`)
      }
      await context.close()
    }
} finally {
  await browser.close()
  await server.end()
  rmSync(data, { recursive: true, force: true })
}
