import { expect, test } from 'vitest'
import { Bench, Person } from '../../../record/index.ts'
import { type Able, capacitySupposed, capacityTried, nowOf } from './capacity-draft.ts'

const bench = Bench.parse({ id: 'b', name: 'Bed', place: 'mist bed', areaSquareMetres: 12 })
const person = Person.parse({ id: 'p', name: 'Ada', skills: ['grafting'], hoursPerWeek: 30 })
const bed: Able = { what: 'bench', bench }
const ada: Able = { what: 'person', person }
const days = { from: '2026-03-02', to: '2026-03-22' }

test('what is as it is supposes nothing; another size or other hours are the whole bench or person with them', () => {
  expect(capacitySupposed(bed, { value: nowOf(bed), days: null })).toBeNull()
  expect(capacitySupposed(ada, { value: nowOf(ada), days: null })).toBeNull()
  expect(capacitySupposed(bed, { value: 15, days: null })).toEqual({
    kind: 'bench-set/1',
    bench: { ...bench, areaSquareMetres: 15 },
  })
  expect(capacitySupposed(ada, { value: 20, days: null })).toEqual({
    kind: 'person-set/1',
    person: { ...person, hoursPerWeek: 20 },
  })
})

test('on some days a bench is closed by what is taken from it, and a person is away; a bench cannot grow for some days', () => {
  expect(capacitySupposed(bed, { value: 4, days })).toEqual({
    kind: 'bench-set/1',
    bench: { ...bench, closed: [{ ...days, areaSquareMetres: 8, why: '' }] },
  })
  expect(capacitySupposed(ada, { value: 30, days })).toEqual({
    kind: 'person-set/1',
    person: { ...person, away: [days] },
  })
  expect(capacitySupposed(bed, { value: 12, days })).toBeNull()
  expect(capacitySupposed(ada, { value: 30, days: { from: '2026-03-22', to: '2026-03-02' } })).toBeNull()
})

test('the line of what can be carried moves by what is tried, a person at their pace, and only in the weeks that it is tried in; a bench is closed in each week touched, a person away by working days', () => {
  const line = (able: Able, value: number, on: typeof days | null, capacity = [20, 20, 20, 0]) =>
    capacityTried(able, { value, days: on }, capacity, '2026-W09')
  expect(line(bed, 15, null)).toEqual([23, 23, 23, 0])
  expect(line(bed, 0, null)).toEqual([8, 8, 8, 0])
  expect(line({ what: 'person', person: { ...person, pace: 0.5 } }, 20, null)).toEqual([15, 15, 15, 0])
  // Week 9 ends on Sunday 1 March, week 10 is 2 to 8 March.
  expect(line(bed, 4, { from: '2026-03-01', to: '2026-03-02' })).toEqual([12, 12, 20, 0])
  expect(line(ada, 30, { from: '2026-03-05', to: '2026-03-09' }, [40, 40, 40, 40])).toEqual([40, 28, 34, 40])
})
