import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { rowsOf } from '../../src/api/index.ts'
import { placesLacking } from '../../src/app/screens/nursery/places-lacking.ts'
import { daysBetween, mondayOf } from '../../src/app/text/format.ts'
import { entryOf } from '../served-nursery.ts'
import { axeOn } from './axe.ts'
import { withKeys } from './hands.ts'
import { openScreen, type ServedApp, serveApp } from './serve-app.ts'
import { localToday, planSeason } from './small-nursery.ts'

let app: ServedApp
beforeAll(async () => {
  app = await serveApp([])
})
afterAll(() => app.close())

const nextYear = Number(localToday().slice(0, 4)) + 2

/** A form that lies over a page, opened and kept by keys. */
function formsByKeys(page: Page) {
  const hands = withKeys(page)
  const dialog = page.getByRole('dialog')
  return {
    hands,
    dialog,
    press: (name: string) => hands.press(page.getByRole('button', { name, exact: true })),
    keep: async () => {
      await hands.press(dialog.getByRole('button', { name: 'Keep', exact: true }))
      await dialog.waitFor({ state: 'detached' })
    },
  }
}

test('the invented nursery is opened to look around in, and put aside for one of one’s own: that is empty, and what was put aside is kept', async () => {
  const { page, problems } = app
  await page.goto(`${app.address}/work`)
  const explore = page.getByRole('button', { name: 'Open the invented nursery' })
  await explore.waitFor()
  for (const [theme, rules] of [
    ['light', ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']],
    ['dark', ['wcag2aa']],
    ['sunlight', ['wcag2aaa']],
  ] as const) {
    await page.evaluate(shown => {
      document.documentElement.dataset.theme = shown
    }, theme)
    const axe = (await axeOn(page)).withTags([...rules])
    expect((await axe.analyze()).violations.map(({ id }) => id)).toEqual([])
  }
  await explore.click()
  await page.getByText('This is the invented nursery.').waitFor()
  expect((await app.client.nursery()).isInvented).toBe(true)
  expect((await app.client.orders()).length).toBeGreaterThan(10)
  const kept = (await app.client.kept()).length

  await page.getByRole('button', { name: 'Begin my own' }).click()
  const leaf = page.getByRole('dialog', { name: 'Begin my own' })
  await Promise.all([page.waitForEvent('load'), leaf.getByRole('button', { name: 'Begin my own' }).click()])
  await page.getByRole('heading', { name: 'An empty nursery' }).waitFor()
  expect(await app.client.orders()).toEqual([])
  expect(await app.client.nursery()).toMatchObject({ isInvented: false, counts: { batches: 0, mothers: 0 } })
  expect((await app.client.plan()).plan).toBeNull()
  expect((await app.client.kept()).length).toBe(kept + 1)
  expect(problems).toEqual([])
})

test('an empty nursery becomes one with a plan by typing alone, by keyboard: where, what is grown, places, people, an order, the plan', async () => {
  const { page, problems } = app
  const hands = withKeys(page)
  const button = (name: string) => page.getByRole('button', { name, exact: true })
  const field = (name: string | RegExp) => page.getByRole('dialog').getByLabel(name)
  const keep = async () => {
    await hands.press(page.getByRole('dialog').getByRole('button', { name: 'Keep', exact: true }))
    await page.getByRole('dialog').waitFor({ state: 'detached' })
  }

  await page.goto(`${app.address}/orders/new`)
  await page.getByText('An order names a kind that you grow').waitFor()
  await openScreen(page, app, '/work')
  await hands.press(page.getByRole('link', { name: 'Type it in' }))
  await page.getByRole('heading', { name: 'Your nursery' }).waitFor()

  await hands.press(button('Say where'))
  await hands.write(field('Name'), 'Low Wall')
  await hands.press(page.getByRole('dialog').getByRole('button', { name: 'Keep', exact: true }))
  await page.getByText('Latitude: it is empty.').waitFor()
  await hands.write(field(/^Latitude/), '38')
  await keep()

  await hands.press(button('Add what you grow'))
  await hands.write(field('Fruit'), 'Fig')
  await hands.write(field('Cultivar'), 'Green Purse')
  await hands.write(field('Price of one'), '9')
  await keep()
  await page.getByText('Fig ‘Green Purse’', { exact: true }).waitFor()

  await expect.poll(async () => (await app.client.nursery()).kinds.length).toBe(1)
  const lacking = placesLacking(await app.client.nursery())
  expect(lacking.length).toBeGreaterThan(0)
  for (const place of lacking) {
    await hands.press(button('Add a place'))
    await hands.write(field('Name'), `The ${place}`)
    await hands.write(field('Kind of place'), place)
    await hands.write(field(/^Length/), '20')
    await hands.write(field(/^Width/), '5')
    await keep()
  }
  await expect.poll(async () => placesLacking(await app.client.nursery())).toEqual([])

  await hands.press(button('Add a person'))
  await hands.write(field('Name'), 'Ada')
  await hands.write(field(/^Hours a week/), '38')
  for (const skill of ['Cuttings', 'Potting']) await hands.write(field(skill), ' ')
  await keep()

  await hands.press(page.getByRole('main').getByRole('link', { name: 'Enter orders' }))
  await hands.find(page.getByRole('combobox', { name: 'Kind' }), 'Fig')
  await hands.write(page.getByLabel('How many trees'), '40')
  // The fifth of May, whichever comes first in the browser's own order.
  await hands.write(page.getByLabel('Due', { exact: true }), `0505${nextYear}`)
  await hands.press(page.getByRole('button', { name: 'Keep this order' }))
  await expect.poll(async () => (await app.client.orders()).length).toBe(1)

  await hands.goTo('Your nursery')
  await hands.press(button('Plan the season'))
  await expect
    .poll(async () => (await app.client.seasonPlan()).starts.length, { timeout: 60_000 })
    .toBeGreaterThan(0)
  const [start] = (await app.client.seasonPlan()).starts
  expect(start!.number).toBeGreaterThanOrEqual(40)
  expect((await app.client.nursery()).people).toMatchObject([
    { name: 'Ada', skills: ['cuttings', 'potting', 'general'], hoursPerWeek: 38 },
  ])
  expect(problems).toEqual([])
  // Each key of a whole first run is pressed: a machine under load takes longer than for another test.
}, 300_000)

test('what was typed is changed and retired, and comes back by undo', async () => {
  const { page, problems } = app
  await page.goto(`${app.address}/nursery`)
  const people = async () => (await app.client.nursery()).people
  const dialog = page.getByRole('dialog')
  await page.getByRole('button', { name: 'Change Ada' }).click()
  await dialog.getByLabel(/^Hours a week/).fill('many')
  await dialog.getByRole('button', { name: 'Keep', exact: true }).click()
  await dialog.getByText('A number, please.').waitFor()
  expect((await people())[0]!.hoursPerWeek).toBe(38)
  await dialog.getByLabel(/^Hours a week/).fill('20')
  await dialog.getByRole('button', { name: 'Keep', exact: true }).click()
  await expect.poll(async () => (await people())[0]?.hoursPerWeek).toBe(20)

  await page.getByRole('button', { name: 'Retire Ada' }).click()
  await dialog.getByRole('button', { name: 'Retire', exact: true }).click()
  await expect.poll(people).toEqual([])
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect.poll(async () => (await people()).map(({ name }) => name)).toEqual(['Ada'])

  await page.getByRole('button', { name: 'Enter a mother tree' }).click()
  await dialog.getByLabel(/^Of which cultivar/).selectOption({ label: 'Green Purse' })
  await dialog.getByRole('button', { name: 'Keep', exact: true }).click()
  await expect.poll(async () => (await app.client.mothers()).length).toBe(1)

  await page.getByRole('button', { name: 'Enter a batch' }).click()
  await dialog.getByLabel('Kind', { exact: true }).selectOption({ label: 'Fig ‘Green Purse’' })
  await dialog.getByLabel('Plants now').fill('25')
  await dialog.getByLabel('Begun on').fill('2026-03-02')
  await dialog.getByLabel('Stands in the step').selectOption({ label: 'Finished' })
  await dialog.getByRole('button', { name: 'Keep', exact: true }).click()
  await expect
    .poll(async () => rowsOf(await app.client.batches()).map(({ finished }) => finished))
    .toEqual([25])
  expect((await app.client.queries()).length).toBe(0)
  expect(problems).toEqual([])
})

test('closed days of a place and days away of a person are typed in, changed and left out by keyboard: the season has no room and no hands on them, and undo brings them back', async () => {
  const { page, problems } = app
  const { hands, dialog, press, keep } = formsByKeys(page)
  const ada = async () => (await app.client.nursery()).people[0]!
  const [bench] = (await app.client.nursery()).benches
  // The sixth of June to the seventh of July, whichever of day and month comes first in the browser's own order.
  const from = dialog.getByLabel('From', { exact: true })
  const to = dialog.getByLabel(/^To,/)
  const year = nextYear - 1
  const days = { from: `${year}-06-06`, to: `${year}-07-07` }
  await openScreen(page, app, '/nursery')

  await press('Change Ada')
  await hands.press(dialog.getByRole('button', { name: 'Add days away' }))
  expect(await from.evaluate(field => field === document.activeElement)).toBe(true)
  await hands.write(from, `0606${year}`)
  await hands.press(dialog.getByRole('button', { name: 'Keep', exact: true }))
  await dialog.getByText('Days away: a day is missing').waitFor()
  await hands.write(to, `0707${year}`)
  await keep()
  await page.getByText(`away 6 June – 7 July ${year}`).waitFor()
  await expect.poll(async () => (await ada()).away).toEqual([days])

  await press(`Change ${bench!.name}`)
  await hands.press(dialog.getByRole('button', { name: 'Add closed days' }))
  await hands.write(from, `0606${year}`)
  await hands.write(to, `0707${year}`)
  await hands.write(dialog.getByLabel('Why'), 'new pipes')
  await keep()
  await page.getByText(`closed 6 June – 7 July ${year} (new pipes)`).waitFor()
  const closed = async () => (await app.client.nursery()).benches.find(({ id }) => id === bench!.id)!.closed
  const whole = { areaSquareMetres: bench!.areaSquareMetres, why: 'new pipes' }
  await expect.poll(closed).toEqual([{ ...days, ...whole }])

  await planSeason(app.client)
  const { loads, firstWeek } = await app.client.seasonPlan()
  // Whole weeks of both, and one before.
  const carries = (what: 'place' | 'skill', id: string) =>
    [`${year}-05-20`, `${year}-06-23`].map(
      day =>
        loads.find(load => load.what === what && load.id === id)!.capacity[
          Math.floor(daysBetween(mondayOf(firstWeek), day) / 7)
        ],
    )
  expect(carries('place', bench!.place)).toEqual([bench!.areaSquareMetres, 0])
  expect(carries('skill', 'cuttings')).toEqual([20, 0])

  await press('Change Ada')
  await hands.write(to, `0808${year}`)
  await keep()
  await expect.poll(async () => (await ada()).away).toEqual([{ ...days, to: `${year}-08-08` }])
  const leaveOut = async () => {
    await press('Change Ada')
    await hands.press(dialog.getByRole('button', { name: /^Leave out: Days away/ }))
    await keep()
    await expect.poll(async () => (await ada()).away).toEqual([])
  }
  await leaveOut()
  await press('Undo')
  await expect.poll(async () => (await ada()).away).toEqual([{ ...days, to: `${year}-08-08` }])
  await leaveOut()
  await press(`Change ${bench!.name}`)
  await hands.press(dialog.getByRole('button', { name: /^Leave out: Closed days/ }))
  await keep()
  await expect.poll(closed).toEqual([])
  expect(problems).toEqual([])
}, 300_000)

test('what a mother tree gives is changed once it was counted, by keyboard: how much, in which months, another material; what is left of it follows, and undo takes it back', async () => {
  const { page, problems } = app
  const hands = withKeys(page)
  const [row] = await app.client.mothers()
  const { mother } = row!
  expect(mother.gives).toMatchObject([{ material: 'cuttings', perYear: 200, perWeek: null }])
  await page.goto(`${app.address}/mothers?mother=${mother.id}`)
  const dialog = page.getByRole('dialog')
  const keep = dialog.getByRole('button', { name: 'Keep', exact: true })
  await hands.press(page.getByRole('button', { name: 'Change what it may give' }))
  await hands.write(dialog.getByLabel('How many a year'), '120')
  await hands.write(dialog.getByLabel('At most in a week'), '30')
  await hands.press(dialog.getByRole('button', { name: 'Add what it may give' }))
  await hands.write(dialog.getByLabel('What').nth(1), 'scion sticks')
  await hands.write(dialog.getByLabel('How many a year').nth(1), '25')
  expect(await dialog.getByRole('button', { name: /^Leave out: / }).count()).toBe(2)
  // One stop of the Tab key for all the months; the arrows go from one to the next.
  await hands.press(dialog.getByRole('toolbar').nth(1).getByRole('button', { name: 'Jan' }))
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('Enter')
  await hands.press(keep)
  await dialog.waitFor({ state: 'detached' })
  const gives = async () => (await app.client.mothers())[0]!.mother.gives
  await expect.poll(gives).toEqual([
    { ...mother.gives[0]!, perYear: 120, perWeek: 30 },
    { material: 'scion sticks', perYear: 25, perWeek: null, months: [3, 4, 5, 6, 7, 8, 9, 10, 11, 12] },
  ])
  await page.getByText('0 of 120 cuttings taken').waitFor()
  await page.getByText(/^in .*, at most 30 a week$/).waitFor()
  await hands.press(page.getByRole('button', { name: 'Undo' }))
  await expect.poll(gives).toEqual(mother.gives)
  expect(problems).toEqual([])
})

test('a tree of two cultivars with an interstem is typed in by keyboard: the way is written for three unions, a batch tells the mother of each wood, and the plan takes a stick of each', async () => {
  const { page, problems } = app
  const { hands, dialog, press, keep } = formsByKeys(page)
  const apples = async () => (await app.client.nursery()).kinds.filter(({ form }) => /worked/.test(form))
  await openScreen(page, app, '/nursery')
  await press('Add what you grow')
  await hands.write(dialog.getByLabel('Fruit'), 'Apple')
  await hands.write(dialog.getByLabel('Cultivar', { exact: true }), 'Amber Russet')
  await hands.write(dialog.getByLabel('Price of one'), '25')
  await hands.press(dialog.getByText('Several cultivars on one tree, or an interstem'))
  await hands.press(dialog.getByRole('button', { name: 'Add a cultivar' }))
  await page.keyboard.type('Amber Russet')
  await hands.press(dialog.getByRole('button', { name: 'Keep', exact: true }))
  await dialog.getByText('Amber Russet is there twice').waitFor()
  await hands.write(dialog.getByLabel('Cultivar', { exact: true }).nth(1), 'Winter Lantern')
  await hands.write(dialog.getByLabel('Interstem', { exact: true }), 'Old Abbot')
  const graft = dialog.getByLabel(/whip and tongue graft, 2 cultivars on one tree, with an interstem/)
  if (!(await graft.isChecked())) await hands.write(graft, ' ')
  await keep()
  const NAME = 'Apple ‘Amber Russet’, ‘Winter Lantern’ on interstem ‘Old Abbot’'
  await expect.poll(async () => (await apples()).map(({ name }) => name)).toEqual([NAME])
  const [tree] = await apples()
  expect(tree).toMatchObject({ form: 'multi-worked', interstem: 'apple-old-abbot' })
  expect(tree!.cultivars).toEqual(['apple-amber-russet', 'apple-winter-lantern'])
  const { protocols } = await app.client.nursery()
  expect(
    protocols
      .find(({ id }) => tree!.ways.some(({ protocol }) => protocol === id))!
      .takes.flatMap(one => (one.what === 'material' ? [one.part] : [])),
  ).toEqual(['scion', 'interstem'])

  const three = ['Amber Russet', 'Winter Lantern', 'Old Abbot']
  for (const cultivar of three) {
    await press('Enter a mother tree')
    await hands.write(dialog.getByLabel(/^Of which cultivar/), cultivar)
    await dialog.getByLabel('How many a year').waitFor()
    await keep()
  }
  const ofTree = async () =>
    (await app.client.mothers()).filter(({ cultivarName }) => three.includes(cultivarName))
  await expect.poll(async () => (await ofTree()).length).toBe(3)
  const givers = (await ofTree()).map(({ mother }) => mother.id).sort()

  await press('Enter a batch')
  // The rootstock that came along with the tree stands before it.
  await hands.write(dialog.getByLabel('Kind', { exact: true }), 'Apple')
  await page.keyboard.press('ArrowDown')
  await hands.write(dialog.getByLabel('Plants now'), '10')
  for (const [label, cultivar] of [
    ['Wood of Amber Russet from', 'Amber Russet'],
    ['Wood of Winter Lantern from', 'Winter Lantern'],
    ['Wood of Old Abbot for the interstem from', 'Old Abbot'],
  ] as const)
    await hands.write(dialog.getByLabel(label), cultivar)
  await keep()
  const batch = async () => rowsOf(await app.client.batches()).find(({ kind }) => kind === tree!.id)
  await expect.poll(batch).toBeDefined()
  const { from } = await app.client.batch((await batch())!.id)
  expect(from.map(({ id }) => id).sort()).toEqual(givers)
  expect(await app.client.queries()).toEqual([])

  const order = {
    ...(await app.client.orders())[0]!.order,
    id: 'O-apples',
    kind: tree!.id,
    number: 20,
    earliest: `${nextYear - 1}-11-01`,
    due: `${nextYear}-02-01`,
    latest: `${nextYear}-06-01`,
  }
  // Ada does not graft.
  const person = { id: 'bo', name: 'Bo', skills: ['grafting', 'general'], hoursPerWeek: 38 }
  const said = [
    { kind: 'order-placed/1', order },
    { kind: 'person-set/1', person },
  ]
  await app.client.pushEntries(said.map(body => entryOf(body, localToday())))
  await planSeason(app.client)
  const start = (await app.client.seasonPlan()).starts.find(({ kind }) => kind === tree!.id)!
  expect(start.mothers.map(({ mother }) => mother).sort()).toEqual(givers)
  for (const { number } of start.mothers) expect(number).toBe(start.number)

  await press(`Change ${NAME}`)
  await hands.press(dialog.getByRole('button', { name: 'Leave out: Winter Lantern' }))
  await hands.write(dialog.getByLabel('Interstem', { exact: true }), ' ')
  await keep()
  await expect
    .poll(apples)
    .toMatchObject([
      { name: 'Apple ‘Amber Russet’', form: 'worked', interstem: null, cultivars: ['apple-amber-russet'] },
    ])
  await press('Undo')
  await expect.poll(apples).toEqual([tree])
  expect(problems).toEqual([])
}, 300_000)
