import { expect, test } from 'vitest'
import { Person } from '../../record/index.ts'
import { readPeople } from './people.ts'
import { seasonWeeks } from './weeks.ts'

const MONDAY = '2026-05-11'
const hours = (...away: { from: string; to: string }[]): number[] => {
  const ada = Person.parse({ id: 'ada', name: 'Ada', skills: ['grafting'], hoursPerWeek: 40, away })
  const [read] = readPeople({ people: new Map([[ada.id, ada]]) }, seasonWeeks(MONDAY, 3))
  return [...read!.minutes].map(minutes => minutes / 60)
}

// Solved by hand: 40 hours over Monday to Friday are 8 a day.
test('of a week of five working days each day away takes a fifth; a weekend takes nothing', () => {
  expect(hours({ from: '2026-05-14', to: '2026-05-19' })).toEqual([24, 24, 40])
  expect(hours({ from: '2026-05-16', to: '2026-05-17' })).toEqual([40, 40, 40])
})

test('a day that is away twice over is away once', () => {
  const holidays = { from: '2026-05-18', to: '2026-05-20' }
  expect(hours(holidays, { from: '2026-05-20', to: '2026-05-21' })).toEqual([40, 8, 40])
  expect(hours(holidays, holidays)).toEqual([40, 16, 40])
})
