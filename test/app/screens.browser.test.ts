import type { AxeBuilder } from '@axe-core/playwright'
import type { AxeResults } from 'axe-core'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { rowsOf } from '../../src/api/index.ts'
import { MORE_DEEDS, NEAR_DEEDS, possible } from '../../src/app/screens/batch/batch-deed.ts'
import { entryOf } from '../served-nursery.ts'
import { axeOn } from './axe.ts'
import { beginsAtFirstField } from './hands.ts'
import { openScreen, type ServedApp, servePlannedApp } from './serve-app.ts'
import { localToday } from './small-nursery.ts'
import { wordsOverWords } from './words-over-words.ts'

let app: ServedApp
const known = { batch: '', order: '', mother: '', start: '', held: '', bench: '', protocol: '' }

beforeAll(async () => {
  app = await servePlannedApp()
  const [batch] = rowsOf(await app.client.batches({ state: 'alive' }))
  known.batch = batch!.id
  known.bench = batch!.benches[0]!
  known.protocol = batch!.protocol
  known.held = (await app.client.batch(batch!.id)).from.find(({ what }) => what === 'mother')!.id
  known.order = (await app.client.orders())[0]!.order.id
  known.mother = (await app.client.mothers())[0]!.mother.id
  known.start = (await app.client.seasonPlan()).starts[0]!.id
  const lineage = { what: 'lineage', of: { mother: known.held } }
  await app.client.pushEntries([
    entryOf({ kind: 'hold-placed/1', on: lineage, why: 'spotted leaves' }, localToday()),
  ])
})
afterAll(() => app.close())

/** None after another of the same path: from one to the next the page is not loaded anew. */
const screens = [
  '/work',
  '/season',
  '/orders',
  '/season?start={start}',
  '/orders?order={order}',
  '/batches',
  '/orders?order={order}&open=change',
  '/orders/new',
  '/batches/{batch}',
  '/batches/{batch}/count',
  '/batches/{batch}?open=lost',
  '/benches',
  '/benches/{bench}/count',
  '/rates?show=all',
  '/mothers?mother={mother}&open=observe',
  '/rates?view=kinds',
  '/species',
  '/rates?view=slumps',
  '/species/fig',
  '/which-tree?fruit=apple&area=600&rework=yes',
  '/protocols/{protocol}',
  '/which-tree?view=nursery',
  '/year',
  '/methods',
  '/methods/air_layer',
  '/checks',
  '/journal',
  '/import',
  '/nursery',
  '/settings',
  '/lineage/batch/{batch}',
  '/lineage/mother/{held}/affected',
  '/no-such-page',
  '/plant.html?fruit=lemon&pot=50',
]

type Look = readonly [theme: string, look: (axe: AxeBuilder) => AxeBuilder]

/** On paper all rules of axe. */
const onPaper: Look = [
  'light',
  axe => axe.withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']),
]

/**
 * What axe looks for in a window, elsewhere than on wide paper what may differ there. 640 is a window of 1280 at a zoom of
 * 200 %; narrower ones are phones.
 */
const windows: readonly (readonly [width: number, ...looks: readonly Look[]])[] = [
  [
    1280,
    onPaper,
    ['dark', axe => axe.withRules('color-contrast')],
    ['sunlight', axe => axe.withRules('color-contrast-enhanced')],
  ],
  [640],
  [390, ['light', axe => axe.withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])]],
  [320, ['light', axe => axe.withRules('target-size')]],
]

const titles = new Map<string, string>()

/**
 * What a hand would miss on a phone: less than 48 pixels wide or high. A link among other words is as tall as its line
 * (WCAG 2.2, 2.5.8 "Inline"), a field is as large as its label, a slider as its track; the marks of a drawing answer to
 * a touch beside them, which has tests of its own. Shown by the keyboard alone, or to a reader of screens: not touched.
 */
const tooSmall = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [
      ...document.querySelectorAll('a[href], button, input, select, textarea, summary, [role="button"]'),
    ].flatMap(found => {
      if (found.closest('.picture-ground svg, .unseen') !== null) return []
      const target = found.closest('.slider-track') ?? found.closest('label') ?? found
      const { width, height } = target.getBoundingClientRect()
      const hidden = getComputedStyle(found.parentElement!).clipPath !== 'none'
      if (width < 2 || hidden || (width >= 47.5 && height >= 47.5)) return []
      const around = target.parentElement!.textContent!.trim().length - target.textContent!.trim().length
      if (target.matches('a') && getComputedStyle(target).display === 'inline' && around > 3) return []
      return [`${target.outerHTML.slice(0, 120)}: ${Math.round(width)} by ${Math.round(height)}`]
    }),
  )

/** How far the page, read in a direction, reaches over the side of its window. */
const overTheSide = (page: Page, read: 'ltr' | 'rtl'): Promise<number> =>
  page.evaluate(async way => {
    document.documentElement.dir = way
    const over = () => document.documentElement.scrollWidth - innerWidth
    // Drawings follow the window a few frames later.
    for (let frames = 0; frames < 60 && (frames < 2 || over() > 0); frames++)
      await new Promise(requestAnimationFrame)
    return over()
  }, read)

const turn = (page: Page, to: string): Promise<unknown> =>
  page.evaluate(theme => {
    document.documentElement.dataset.theme = theme
  }, to)

/**
 * axe (axe-core, rules after WCAG 2.2) reads each screen in place: opened once, then turned dark, to the sun, and
 * narrow, as the theme's switch and a smaller window do. Without frames in our pages it needs no second page to sum up.
 */
test.for(screens)(
  'axe finds no fault in %s on paper, wide or on a phone, no contrast below AA in the dark or AAA in the sun; on 320 pixels its targets are large enough, on 390 those of 48 pixels that a hand needs; at a zoom of 200 % and on phones nothing runs over the side, read from the left or from the right, and no words lie over others; and its window is called as no other is',
  async screen => {
    const { page, problems } = app
    const path = screen.replace(/\{(\w+)\}/, (_, what: keyof typeof known) => encodeURIComponent(known[what]))
    await page.setViewportSize({ width: 1280, height: 800 })
    await openScreen(page, app, path)
    const faults: string[] = []
    const title = await page.title()
    const same = titles.get(title)
    // A form stands on the page that it belongs to.
    if (same !== undefined && !screen.includes('open=')) faults.push(`called “${title}” as ${same} is`)
    titles.set(title, screen)
    for (const [width, ...looks] of windows) {
      await page.setViewportSize({ width, height: 800 })
      for (const [theme, look] of looks) {
        await turn(page, theme)
        const { violations } = await look(await axeOn(page)).analyze()
        for (const { id, nodes } of violations)
          faults.push(`${theme}, ${width} pixels: ${id} at ${nodes[0]?.target}: ${nodes[0]?.any[0]?.message}`)
      }
      if (width === 1280) {
        await turn(page, 'light')
        continue
      }
      if (width === 390)
        for (const target of await tooSmall(page)) faults.push(`smaller than a hand needs: ${target}`)
      for (const way of ['rtl', 'ltr'] as const) {
        const over = await overTheSide(page, way)
        if (over > 0) faults.push(`${way}: ${over} pixels wider than the window of ${width}`)
      }
      for (const over of await wordsOverWords(page)) faults.push(`${width} pixels: ${over}`)
    }
    expect([...faults, ...problems]).toEqual([])
  },
)

/** Forms that lie over a page: the page, and the button that opens each. */
const forms: readonly (readonly [path: string, button: string, open: string])[] = [
  ['/batches/{batch}', 'Lost some', 'lost'],
  ['/orders?order={order}', 'Change', 'change'],
  ['/mothers?mother={mother}', 'Observe', 'observe'],
  ['/benches?bench={bench}', 'Put on hold', 'hold'],
  ['/species', 'Add a fruit', 'add'],
  ['/nursery', 'Add a place', 'bench new'],
  ['/orders?order={order}', 'What was said of it: show the entries behind it', 'behind said'],
  ['/nursery', 'Change what things cost', 'prices'],
]

/** The smallest picture there is: a PNG of one pixel. */
const ONE_PIXEL =
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=='

/** What lies over a page: by its address, or by what is done on the page. */
const lyingOver = async (): Promise<
  readonly (readonly [path: string, lays?: (page: Page) => Promise<unknown>])[]
> => {
  const { client } = app
  const view = await client.batch(known.batch)
  const { benches, people, kinds, cultivars } = await client.nursery()
  const deeds = [...NEAR_DEEDS, ...MORE_DEEDS].filter(kind => possible(view, kind))
  const press = (name: string | RegExp) => (page: Page) => page.getByRole('button', { name }).first().click()
  /** A form that opens once a file is chosen. */
  const choose = (name: string, file: string, bytes: string) => async (page: Page) => {
    const choosing = page.waitForEvent('filechooser')
    await press(name)(page)
    await (await choosing).setFiles({ name: file, mimeType: '', buffer: Buffer.from(bytes, 'base64') })
  }
  return [
    ...deeds.map(deed => [`/batches/${known.batch}?open=${deed}`] as const),
    [`/batches/${known.batch}?open=strike+${view.entries[0]!.id}`],
    [`/batches/${known.batch}`, page => page.locator('.batch-head [aria-haspopup="true"]').first().click()],
    [`/orders?order=${known.order}&open=change`],
    [`/orders?order=${known.order}&open=behind+said`],
    ...['observe', 'hold', 'retire', 'lab', 'wood', 'change', 'gives'].map(
      doing => [`/mothers?mother=${known.mother}&open=${doing}`] as const,
    ),
    [`/benches?bench=${known.bench}&open=hold`],
    ...[
      ...['site', 'prices', 'mother', 'batch', 'kind+new', 'bench+new', 'person+new'],
      ...[`kind+${kinds[0]!.id}`, `bench+${benches[0]!.id}`, `person+${people[0]!.id}`],
      ...[`cultivar+${cultivars[0]!.id}`, `retire+bench+${benches[0]!.id}`],
    ].map(form => [`/nursery?open=${form}`] as const),
    ['/nursery?open=person+new', press('Add days away')],
    ['/nursery?open=bench+new', press('Add closed days')],
    [
      `/nursery?open=kind+${kinds.find(({ form }) => form !== 'rootstock')!.id}`,
      async page => {
        await page.getByText('Several cultivars on one tree').click()
        await press('Add a cultivar')(page)
      },
    ],
    ['/species?open=add'],
    ['/species/fig?open=add'],
    [`/lineage/mother/${known.held}/affected?open=hold`],
    [`/lineage/batch/${known.batch}?open=hold`],
    ['/rates?show=all', page => page.locator('.pressed').first().click()],
    ['/checks', press('Release')],
    ['/work', page => page.keyboard.press('Control+K')],
    ['/work', press(/^The coming year/)],
    [
      '/work',
      page =>
        page
          .getByRole('button', { name: /^Done: / })
          .first()
          .click(),
    ],
    ['/year', press(/^Save/)],
    [`/batches/${known.batch}`, choose('Add a photo', 'photo.png', ONE_PIXEL)],
    ['/settings', choose('Put a backup back', 'nursery.budstick', '')],
    [`/orders?promise=${kinds[0]!.id}`, page => page.locator('.promise input').first().press('ArrowDown')],
  ]
}

/** What axe, which is on the page, says of colours in the dark and in the sun, both at one asking. */
const contrastsIn = async (over: string) => {
  const { axe } = window as never as { axe: { run(...asked: unknown[]): Promise<AxeResults> } }
  const found: AxeResults['violations'] = []
  for (const [theme, rule] of [
    ['dark', 'color-contrast'],
    ['sunlight', 'color-contrast-enhanced'],
  ] as const) {
    document.documentElement.dataset.theme = theme
    // With the rule named alone, one that is off by itself is on.
    const { violations } = await axe.run(
      { include: [[over]] },
      { runOnly: [rule], resultTypes: ['violations'] },
    )
    found.push(...violations.map(one => ({ ...one, id: `${theme}: ${one.id}` })))
  }
  return found
}

const over = '[role="dialog"], .pop, form.tick'

/** What axe says of a part of the page: on paper, and of its colours in the dark and in the sun where they are not known. */
const faultsIn = async (part: string, isOfKnownColours = false): Promise<readonly string[]> => {
  const { page } = app
  const [paper, look] = onPaper
  await turn(page, paper)
  const { violations } = await look(await axeOn(page))
    .include(part)
    .analyze()
  const contrasts = isOfKnownColours ? [] : await page.evaluate(contrastsIn, part)
  return [...violations, ...contrasts].map(
    ({ id, nodes }) => `${id} at ${nodes[0]?.target}: ${nodes[0]?.any[0]?.message}`,
  )
}

/**
 * What comes of keeping a form as it stands: what it lacks is said in it, and read by axe; or it is told that it was kept,
 * the focus is somewhere, and it is taken back again. What is told is the same line for all: axe reads the first. So are the
 * colours in which a form says what it lacks.
 */
const faultsOfKeeping = async (told: Set<string>): Promise<readonly string[]> => {
  const { page } = app
  const keep = page.locator(over).locator('button[type="submit"]:enabled')
  if ((await keep.count()) === 0) return []
  const lacks = page.locator(over).locator('[role="alert"], [aria-invalid="true"]')
  const line = page.locator('.done-line')
  await keep.first().click()
  await lacks.or(line).first().waitFor()
  if (await lacks.first().isVisible()) {
    const faults = await faultsIn(over, told.has('lacks'))
    told.add('lacks')
    return faults
  }
  const faults: string[] = told.has('kept') ? [] : [...(await faultsIn('.done'))]
  told.add('kept')
  await expect.poll(() => page.locator(over).count()).toBe(0)
  await page
    .waitForFunction(() => document.activeElement !== document.body, null, { timeout: 20_000 })
    .catch(() => faults.push('kept, the focus is lost'))
  const undo = line.getByRole('button', { name: 'Undo' })
  if ((await undo.count()) > 0) await undo.click()
  await line.getByRole('button', { name: 'Close' }).click()
  return faults
}

test('axe finds no fault in any form, list or sheet that lies over a page, nor in the finder, nor in what a form lacks or in what is told once it is kept, on paper; no contrast below AA in the dark or AAA in the sun; a form opens with the focus on its first field, and once it was kept leaves it on the page', async () => {
  const { page, problems } = app
  const faults: string[] = []
  const told = new Set<string>()
  await page.goto(`${app.address}/work`)
  for (const [path, lays] of await lyingOver()) {
    // Within the app, as a link in it does: nothing is read in again.
    await page.keyboard.press('Escape')
    await page.evaluate(to => history.pushState({}, '', to), path)
    await expect.poll(() => page.locator(over).count()).toBeLessThan(2)
    await lays?.(page)
    const found = await page
      .locator(over)
      .first()
      .waitFor({ timeout: 20_000 })
      .then(
        () => true,
        () => false,
      )
    if (!found) {
      faults.push(`${path}: nothing lies over the page`)
      continue
    }
    if (lays === undefined)
      await page
        .waitForFunction(beginsAtFirstField, null, { timeout: 5_000 })
        .catch(() => faults.push(`${path}: the focus is not on the first field`))
    for (const fault of [...(await faultsIn(over)), ...(await faultsOfKeeping(told))])
      faults.push(`${path}: ${fault}`)
  }
  expect([...faults, ...problems]).toEqual([])
  expect([...told].sort()).toEqual(['kept', 'lacks'])
})

test('on a phone the finder stands whole in the window', async () => {
  const { page, problems } = await app.open({
    viewport: { width: 320, height: 700 },
  })
  await page.goto(`${app.address}/settings`)
  await page.locator('h1').first().waitFor()
  await page.keyboard.press('Control+K')
  const { x, width } = (await page.getByRole('dialog').getByRole('searchbox').boundingBox())!
  expect([x >= 0, x + width <= 320]).toEqual([true, true])
  expect(problems).toEqual([])
})

test('an open form has an address that opens it again; going back closes it, and closing it gives the focus back to what opened it and leaves the page once in the history', async () => {
  const { page, problems } = app
  await page.setViewportSize({ width: 1280, height: 800 })
  for (const [path, button, open] of forms) {
    await openScreen(
      page,
      app,
      path.replace(/\{(\w+)\}/, (_, what: keyof typeof known) => known[what]),
    )
    const form = page.getByRole('dialog')
    const opens = page.getByRole('button', { name: button, exact: true }).first()
    await opens.click()
    await form.waitFor()
    expect(new URL(page.url()).searchParams.get('open')).toBe(open)
    await page.goBack()
    await form.waitFor({ state: 'detached' })
    const length = await page.evaluate(() => history.length)
    await opens.click()
    await form.getByRole('button', { name: 'Close', exact: true }).click()
    await form.waitFor({ state: 'detached' })
    expect(new URL(page.url()).searchParams.get('open')).toBeNull()
    expect(await page.evaluate(() => history.length)).toBe(length)
    await expect.poll(() => opens.evaluate(button => button === document.activeElement)).toBe(true)
    // From a link it opens again, and there is no page behind it to go back to.
    const address = new URL(page.url())
    address.searchParams.set('open', open)
    await page.goto(address.href)
    await form.waitFor()
    await form.getByRole('button', { name: 'Close', exact: true }).click()
    await form.waitFor({ state: 'detached' })
    expect(new URL(page.url()).pathname).toBe(address.pathname)
  }
  expect(problems).toEqual([])
})
