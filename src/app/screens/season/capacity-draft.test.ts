import { expect, test } from 'vitest'
import { Bench, Person } from '../../../record/index.ts'
import { type Able, capacitySupposed, nowOf } from './capacity-draft.ts'

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
