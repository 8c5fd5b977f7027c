import { expect, test } from 'vitest'
import type { Supply } from '../../record/index.ts'
import { mothers } from '../sheets/mothers.ts'
import { monthsIn } from './months.ts'
import { materialsCalled, suppliesIn, suppliesText } from './supplies.ts'

// Ways of writing: common practice, no source.
test.each([
  ['Nov to Feb', [11, 12, 1, 2]],
  ['5, 6, 7', [5, 6, 7]],
  ['May–Jul and Sept', [5, 6, 7, 9]],
  ['März bis Mai', [3, 4, 5]],
  ['ene', [1]],
  ['all year', []],
  ['spring', null],
  ['13', null],
  ['May to', null],
])('months "%s" are %j', (text, months) => {
  expect(monthsIn(text)).toEqual(months)
})

const called = materialsCalled(mothers.fields)
const read = (text: string) => suppliesIn(text, called)

test('what a mother gives is read with its months and its bound by the week, by whatever word the material is called', () => {
  expect(
    read('300 cuttings in May to Jul, at most 30 a week; Reiser 60 in Jan, Feb; 2.5 seed all year'),
  ).toEqual({
    supplies: [
      { material: 'cuttings', perYear: 300, perWeek: 30, months: [5, 6, 7] },
      { material: 'scion sticks', perYear: 60, perWeek: null, months: [1, 2] },
      { material: 'seed', perYear: 2.5, perWeek: null, months: [] },
    ],
  })
  // As tables were written before: the material and its number alone.
  expect(read('budwood 130; scion sticks 1280')).toEqual({
    supplies: [
      { material: 'budwood', perYear: 130, perWeek: null, months: null },
      { material: 'scion sticks', perYear: 1280, perWeek: null, months: null },
    ],
  })
  expect(read('300 cuttings in spring')).toEqual({ wrong: '300 cuttings in spring' })
  expect(read('plenty')).toEqual({ wrong: 'plenty' })
})

// Ways of writing: common practice, no source.
test.each([
  ['1,200 cuttings, at most 1,000 a week', 1200, 1000],
  ['1.200 cuttings', 1200, null],
  ['1 200 cuttings', 1200, null],
  ['cuttings: 12 500', 12500, null],
  ['2,5 cuttings', 2.5, null],
  ['0.125 cuttings', 0.125, null],
])('in "%s" marks that part thousands are told from decimal ones', (text, perYear, perWeek) => {
  expect(read(text)).toEqual({ supplies: [{ material: 'cuttings', perYear, perWeek, months: null }] })
})

test('what is written out is read back as it was', () => {
  const gives: Supply[] = [
    { material: 'cuttings', perYear: 300, perWeek: 30, months: [5, 6] },
    { material: 'cuttings', perYear: 40, perWeek: null, months: [12, 1] },
    { material: 'scion sticks', perYear: 60.5, perWeek: null, months: [] },
    { material: 'seed', perYear: 60.125, perWeek: 1.5, months: [9] },
  ]
  expect(read(suppliesText(gives))).toEqual({ supplies: gives })
})
