import { afterAll, beforeAll, expect, test } from 'vitest'
import { type Body, type Entry, finishedStep } from '../../src/record/index.ts'
import { BatchId, EntryId, inEnglish, KindId, MaterialLotId, OrderId } from '../../src/trade/index.ts'
import { openScreen, type ServedApp, serveApp } from './serve-app.ts'
import { localToday, smallNursery } from './small-nursery.ts'

const today = localToday()
const registers = smallNursery(today).filter(({ body }) => body.kind.includes('-set/'))
const figs = registers.flatMap(({ body }) => (body.kind === 'kind-set/1' ? [body.kindOfTree] : []))[0]!
const other = registers.flatMap(({ body }) => (body.kind === 'kind-set/1' ? [body.kindOfTree] : []))[1]!
const protocol = registers.flatMap(({ body }) =>
  body.kind === 'protocol-set/1' && body.protocol.id === figs.ways[0]!.protocol ? [body.protocol] : [],
)[0]!
const [first, second] = protocol.steps
const mother = registers.flatMap(({ body }) =>
  body.kind === 'mother-set/1' && other.cultivars.includes(body.mother.cultivar) ? [body.mother] : [],
)[0]!

const said = (at: number, body: Body): Entry => ({
  id: EntryId.parse(`019a0000-0000-7000-8000-${String(at).padStart(12, '0')}`),
  on: '2026-03-02',
  at: null,
  by: null,
  device: 'office',
  body,
})
const start = (id: string, number: number, rest: object = {}): Body => ({
  kind: 'batch-started/1',
  batch: BatchId.parse(id),
  name: id,
  kindOfTree: KindId.parse(figs.id),
  protocol: protocol.id,
  number,
  sources: [],
  bench: null,
  workedBy: [],
  candidates: [],
  ...rest,
})
const order: Extract<Body, { readonly kind: 'order-placed/1' }> = {
  kind: 'order-placed/1',
  order: {
    id: OrderId.parse('O-7'),
    buyer: 'A grower',
    kind: figs.id,
    number: 5,
    earliest: today,
    due: today,
    latest: today,
    sure: 0.9,
    price: null,
    instead: [],
    note: '',
    placed: today,
  },
}

let app: ServedApp
beforeAll(async () => {
  app = await serveApp([
    ...registers,
    said(1, start('A', 100)),
    said(2, start('B', 10)),
    said(3, start('R', 12, { takenOver: { step: finishedStep, since: '2026-03-02' } })),
    said(4, order),
    said(5, start('N', 8, { candidates: [...figs.cultivars, ...other.cultivars] })),
  ])
  await app.page.goto(`${app.address}/batches/A`)
})
afterAll(() => app.close())

/** Opens a form from the menu of a batch with the keyboard alone. */
const record = async (what: string) => {
  const { page } = app
  await page.getByRole('button', { name: 'Record something else' }).focus()
  await page.keyboard.press('Enter')
  const item = page.getByRole('menuitem', { name: what })
  await item.focus()
  await page.keyboard.press('Enter')
  await page.getByRole('dialog').waitFor()
}
const keep = async () => {
  await app.page.keyboard.press('Enter')
  await app.page.getByRole('dialog').waitFor({ state: 'detached' })
}
const fill = async (label: string | RegExp, value: string) => {
  const field = app.page.getByRole('dialog').getByLabel(label)
  await field.fill(value)
  await field.focus()
}
const batch = (id: string) => app.client.batch(id)
const open = async (id: string) => {
  await openScreen(app.page, app, `/batches/${id}`)
  await app.page.getByRole('button', { name: 'Record something else' }).waitFor()
}
const eventually = <T>(ask: () => Promise<T>) => expect.poll(ask)

test('on a batch, each form of the menu keeps its entry, by keyboard alone; undo strikes it', async () => {
  const { page, problems } = app

  await page.getByRole('button', { name: 'Move on' }).click()
  await fill('How many', '80')
  await keep()
  await eventually(async () => (await batch('A')).portions.map(({ number }) => number)).toEqual([20, 80])

  await record('Split off some')
  await fill('How many', '30')
  await fill('Name of the new batch', 'A-weak')
  await keep()
  await eventually(async () => (await batch('A')).sums.splitOff).toBe(30)
  await page.getByRole('button', { name: 'Undo' }).click()
  await eventually(async () => (await batch('A')).sums.splitOff).toBe(0)

  await record('Put with another batch')
  await page.getByLabel('In which step').selectOption(first!.id)
  await fill('How many', '5')
  await fill('Put with which batch', 'B')
  await keep()
  await eventually(async () => [
    (await batch('A')).sums.joinedAway,
    (await batch('B')).sums.joinedIn,
  ]).toEqual([5, 5])

  await record('Pot on')
  await fill('Pot size in litres', '1,5')
  await keep()
  await record('Measure stems')
  await fill('Stem diameters in mm', '6,5 7 7,5')
  await page.getByText('3 stems, mean 7').waitFor()
  await keep()
  await record('Grade')
  await page.getByLabel('In which step').selectOption(second!.id)
  await fill('Number in grade 1', '50')
  await fill('Number in grade 2', '30')
  await keep()
  await eventually(async () =>
    (await batch('A')).sizes.map(({ says }) => inEnglish(says).split(':').at(-1)),
  ).toEqual(expect.arrayContaining([' mean 7 mm', ' 50 1, 30 2']))
  expect((await batch('A')).sizes.some(({ says }) => inEnglish(says).includes('potted on to 1.5 l'))).toBe(
    true,
  )
  expect(problems).toEqual([])
})

test('a living tree in part worked over to another cultivar becomes a batch of its own, with its new parent', async () => {
  const { page } = app
  await record('Work over to another cultivar')
  await fill('How many', '4')
  const kind = page.getByRole('dialog').getByRole('combobox', { name: /./ }).last()
  await kind.fill(other.name)
  await page.getByRole('option', { name: other.name }).click()
  await page.getByLabel('With wood from').selectOption({ label: `${mother.name}: budwood cut now` })
  await fill('How many sticks or buds', '4')
  await keep()
  await eventually(async () => (await batch('A')).sums.splitOff).toBe(4)
  const { into } = await batch('A')
  const worked = await batch(into.find(({ number }) => number === 4)!.batch)
  expect(worked.row).toMatchObject({ name: 'Aa', kind: other.id, standing: 4 })
  expect(worked.from).toContainEqual(expect.objectContaining({ what: 'mother', id: mother.id, number: 4 }))
})

test('finished trees go out for an order and come back; a name in doubt is settled', async () => {
  const { page } = app
  await open('R')
  await record('Send out')
  await page.getByLabel('For which order').selectOption('O-7')
  await page.getByLabel('How many').focus()
  expect(await page.getByLabel('How many').inputValue()).toBe('5')
  await keep()
  await eventually(async () => (await batch('R')).sums).toMatchObject({ sent: 5, finished: 7 })
  await page.getByRole('button', { name: '5 sent out: show' }).waitFor()

  await record('Came back')
  await page.getByLabel('For which order').selectOption('O-7')
  await fill('How many', '2')
  await fill('Why they came back', 'one too many ordered')
  await keep()
  await eventually(async () => (await batch('R')).sums).toMatchObject({ returned: 2, finished: 9 })

  await open('N')
  await record('Settle the name')
  await fill('How it was found out', 'by its fruit')
  await keep()
  await eventually(async () => (await batch('N')).candidates).toEqual([])
})

test('a number shows the entries behind it; a late one says so, a struck one says who, when and why', async () => {
  const { page } = app
  await open('B')
  await page.getByRole('button', { name: 'Lost some' }).click()
  await fill('How many', '3')
  await fill('What happened', 'mice')
  await fill('When it happened', '2026-03-09')
  await keep()
  const entries = page.locator('#entries')
  await page
    .getByRole('button', { name: /^3 lost: show the entries/ })
    .first()
    .click()
  await entries.getByRole('heading', { name: 'Behind “3 lost”' }).waitFor()
  expect(await entries.getByRole('listitem').count()).toBe(1)
  expect(await entries.getByRole('listitem').textContent()).toMatch(
    /mice.*9 March 2026.*entered \d+ days later/,
  )

  await entries.getByRole('button', { name: /^Strike/ }).click()
  await fill('Why it is wrong', 'it was another batch')
  await keep()
  await eventually(() => entries.getByRole('listitem').last().textContent()).toMatch(
    /Struck .*: it was another batch. It counts no more./,
  )
  expect((await batch('B')).sums).toMatchObject({ lost: 0, standing: 15 })
})

test('what a mother tree gave, and wood in hand, show the entries behind them', async () => {
  const { page } = app
  const { material } = mother.gives[0]!
  const lot = MaterialLotId.parse('L-1')
  await app.client.pushEntries([
    {
      ...said(8, {
        kind: 'material-collected/1',
        lot,
        mother: mother.id,
        material,
        number: 10,
        stored: 'cold',
        goodUntil: null,
      }),
      on: today,
    },
  ])
  await page.goto(`${app.address}/mothers?mother=${mother.id}`)
  await page.getByRole('button', { name: /^10 .* given: show the entries/ }).click()
  const behind = page.getByRole('dialog', { name: /^Behind “10 / })
  // Its address opens it again.
  await page.reload()
  await eventually(() => behind.getByRole('listitem').allTextContents()).toEqual([
    expect.stringContaining(`10 ${material} collected`),
  ])
  await behind.getByRole('button', { name: 'Close' }).click()
  await page.getByRole('button', { name: 'L-1: show the entries behind it' }).click()
  await page.getByRole('dialog', { name: 'Behind “L-1”' }).waitFor()
  await page.reload()
  await page.getByRole('dialog', { name: 'Behind “L-1”' }).waitFor()
  await page.keyboard.press('Escape')
})

test('what was sent for an order, and a link of a family, show the entries behind them', async () => {
  const { page } = app
  const id = OrderId.parse('O-9')
  const batch = BatchId.parse('Q')
  await app.client.pushEntries([
    said(91, { ...order, order: { ...order.order, id } }),
    said(
      92,
      start('Q', 6, { sources: [{ from: 'mother', mother: mother.id, material: 'cuttings', number: 6 }] }),
    ),
    said(93, { kind: 'finished/1', batch, number: 6, grade: '' }),
    said(94, { kind: 'dispatched/1', batch, order: id, number: 4, to: '' }),
    said(95, { kind: 'returned/1', batch, order: id, number: 1, why: 'broken' }),
  ])
  await page.goto(`${app.address}/orders?order=O-9`)
  await page.getByRole('button', { name: '3 trees sent: show the entries behind it' }).click()
  const leaf = page.getByRole('dialog', { name: 'Behind “3 trees sent”' })
  await eventually(() => leaf.getByRole('listitem').allTextContents()).toEqual([
    expect.stringMatching(/1 .*came back.*2 March 2026/),
    expect.stringMatching(/4 .*2 March 2026/),
  ])
  await page.keyboard.press('Escape')

  await openScreen(page, app, '/lineage/batch/Q')
  await page.getByText('Link by link').click()
  await page.getByRole('button', { name: '6 cuttings: show the entries behind it' }).click()
  const link = page.getByRole('dialog', { name: 'Behind “6 cuttings”' })
  await eventually(() => link.getByRole('listitem').count()).toBe(1)
  await page.keyboard.press('Escape')
})

test('on hold nothing goes out; on a phone the menu and its form are within reach', async () => {
  await app.client.pushEntries([
    {
      ...said(9, {
        kind: 'hold-placed/1',
        on: { what: 'batch', batch: BatchId.parse('R') },
        why: 'test due',
      }),
      on: today,
    },
  ])
  const { page, problems } = await app.open({ viewport: { width: 360, height: 740 }, hasTouch: true })
  await page.goto(`${app.address}/batches/R`)
  await page.getByRole('button', { name: 'Record something else' }).tap()
  await page.getByRole('menuitem', { name: 'Send out' }).tap()
  const button = page.getByRole('button', { name: 'Keep' })
  expect(await button.isDisabled()).toBe(true)
  await page.getByText('nothing of it goes out').waitFor()
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0)
  expect((await button.boundingBox())!.height).toBeGreaterThanOrEqual(48)
  expect(problems).toEqual([])
})
