import { expect, test } from 'vitest'
import { listed, phrase } from './phrase.ts'
import { inEnglish, told } from './told.ts'

test('parts stand in their places, words within words too, and a place with a capital begins with one', () => {
  const lost = phrase('batch {name} lost {number}', { name: 'A{name}', number: 4 })
  expect(inEnglish(phrase('{What}, since {day}.', { what: lost, day: { day: '2026-05-04' } }))).toBe(
    'Batch A{name} lost 4, since 2026-05-04.',
  )
})

test('a list is said with an "and" before its last', () => {
  const skills = ['grafting', 'cuttings', 'seed'].map(skill => phrase(skill))
  expect([0, 1, 2, 3].map(many => inEnglish(listed(skills.slice(0, many))))).toEqual([
    '',
    'grafting',
    'grafting and cuttings',
    'grafting, cuttings and seed',
  ])
})

test('another language has its own words, order, numbers, days and measures; names stay', () => {
  const spanish: Record<string, string> = {
    'batch {name} lost {number} on {day}, {area}': 'el {day} se perdieron {number} de {name}, {area}',
  }
  const lost = phrase('batch {name} lost {number} on {day}, {area}', {
    name: 'batch',
    number: 1.5,
    day: { day: '2026-05-04' },
    area: { amount: 10, unit: 'm²' },
  })
  const telling = {
    words: (says: string) => spanish[says] ?? says,
    number: (value: number) => value.toLocaleString('es-ES'),
    day: (day: string) => day.split('-').reverse().join('/'),
    // 10 m² = 107.64 ft²: 1 ft = 0.3048 m exactly (NIST SP 811, appendix B).
    measure: (amount: number) => `${(amount / 0.3048 ** 2).toFixed(2)} ft²`,
  }
  expect(told(lost, telling)).toBe('el 04/05/2026 se perdieron 1,5 de batch, 107.64 ft²')
})
