import { expect, test } from 'vitest'
import { foldEntries } from '../record/index.ts'
import { emptySheet, emptySheetForms } from './empty-sheets.ts'
import { readNursery } from './reading/read-nursery.ts'

const read = async (...names: string[]) => {
  const files = await Promise.all(names.map(async name => ({ name, bytes: (await emptySheet(name))!.bytes })))
  return readNursery({ files, said: {}, remembered: {}, nursery: foldEntries([]), today: '2026-11-24' })
}

test('every empty sheet, as CSV and as a workbook, reads back as the sheet that it is, its example good', async () => {
  for (const ending of ['csv', 'xlsx'])
    for (const { kind, fields } of emptySheetForms) {
      const { sheets, questions } = await read(`${kind}.${ending}`)
      expect(sheets[0], `${kind}.${ending}`).toMatchObject({
        kind,
        rows: { all: kind === 'orders' ? 1 : expect.any(Number), good: 1, bad: 0 },
      })
      expect(
        sheets[0]?.columns.map(({ field }) => field),
        kind,
      ).toEqual(fields.map(({ id }) => id))
      expect(questions, kind).toEqual([])
    }
})

test('one workbook holds them all, and is read as one nursery without a question', async () => {
  const reading = await read('all.xlsx')
  expect(reading.sheets.filter(({ kind }) => kind !== null).map(({ kind }) => kind)).toEqual(
    emptySheetForms.map(({ kind }) => kind),
  )
  expect(reading.questions.filter(({ needed }) => needed)).toEqual([])
  expect(reading.ready).toBe(true)
})

test('a sheet that does not exist is none', async () => {
  for (const name of ['seeds.csv', 'orders.pdf', '../orders.csv', ''])
    expect(await emptySheet(name)).toBeNull()
})
