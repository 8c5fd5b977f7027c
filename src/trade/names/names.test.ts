import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { epithetFaults } from './epithet.ts'
import { cultivarWriting } from './plant-name.ts'
import { foldName, sameName } from './same-name.ts'

describe('a new epithet', () => {
  // International Code of Nomenclature for Cultivated Plants, 9th ed. 2016, examples of a summary for registrants.
  test.each([
    ['Million Dollars', true],
    ['$1,000,000', false],
    ['Half Pint', true],
    ['½ Pint', false],
    ['Super 5', true],
    ['100th Battalion', true],
    ['Cloth of Gold', true],
    ['Best of All', false],
  ])('%s: allowed is %s', (epithet, isAllowed) => {
    expect(epithetFaults(epithet).length === 0).toBe(isAllowed)
  })
  test('has at most thirty characters, blanks not counted', () => {
    expect(epithetFaults(`${'Abcde '.repeat(6).trim()}`)).toEqual([])
    expect(epithetFaults(`${'Abcde '.repeat(6).trim()}f`)).toEqual(['longer than 30 characters'])
  })
  test('is more than a letter or a number, and holds no word of the trade', () => {
    expect(epithetFaults('A')).toEqual(['a single letter or only a number'])
    expect(epithetFaults('1984')).toEqual(['a single letter or only a number'])
    expect(epithetFaults('Red Strain')).toEqual(['a word that is not allowed'])
    expect(epithetFaults('Wow! Wow! Wow!')).toEqual(['more than two exclamation marks'])
  })
})

describe('names that are the same', () => {
  test.each([
    // International Code of Nomenclature (Shenzhen), art. H.3.3.
    ['×Hordelymus', 'Hordelymus'],
    ['Drosera ×anglica', 'Drosera anglica'],
    ['Drosera x anglica', 'Drosera anglica'],
    // Common practice, no source.
    ['Köstliche von Charneux', 'KOSTLICHE VON CHARNEUX'],
    ['Cameo®', 'Cameo'],
    ['Adina™', 'Adina'],
    ['Crimson™ Gala', 'Crimson Gala'],
    ['Etter’s Gold', "Etter's  Gold"],
    ['‘Weißer Klarapfel’', "'Weisser Klarapfel'"],
    ['Shidare-Sakura', 'Shidare Sakura'],
  ])('%s and %s', (a, b) => expect(sameName(a, b)).toBe(true))

  test('are not those that differ by a letter, a figure or a word', () => {
    expect(sameName('Gala', 'Royal Gala')).toBe(false)
    expect(sameName('I-214', 'I-215')).toBe(false)
    expect(sameName('Maxi', 'Mai')).toBe(false)
  })
  test('fold once and for all', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), name => foldName(foldName(name)) === foldName(name)),
    )
  })
})

test('a cultivar is written with the species of its fruit, or the genus where the fruit has several', () => {
  expect(cultivarWriting({ taxa: ['Malus domestica'] }, { name: 'Elstar' })).toBe('Malus domestica ‘Elstar’')
  expect(cultivarWriting({ taxa: ['Citrus ×latifolia', 'Citrus ×aurantiifolia'] }, { name: 'Abers' })).toBe(
    'Citrus ‘Abers’',
  )
})
