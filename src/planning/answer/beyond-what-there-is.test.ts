import { expect, test } from 'vitest'
import { everyWeek, solved, tinyPerson, tinyPlace } from '../fixtures/solved.ts'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import { beyondWhatThereIs } from './beyond-what-there-is.ts'
import { weekName } from './planned.ts'

test('hours worked over and area lent are told by who, where and week, and nothing of weeks in which there is enough', async () => {
  // 100 grafts at 6 minutes are 600 minutes, of which Ada and Bea have 400 in the week and may work 300 over. They stand on
  // 0.1 m² each for that week: 10 m², of which the bed has 7.
  const season = tinySeason({
    weeks: 8,
    kinds: [tinyKind('pear')],
    places: [tinyPlace('mist bed', everyWeek(8, 7), { extraPricePerSquareMetreWeek: 1 })],
    people: [
      tinyPerson('Ada', ['grafting'], everyWeek(8, 250), everyWeek(8, 200)),
      tinyPerson('Bea', ['grafting'], everyWeek(8, 150), everyWeek(8, 100)),
    ],
    ways: [
      {
        kind: 0,
        steps: [{ ...certain(1), days: 7 }],
        openWeeks: [3],
        course: {
          labour: [{ skill: 'grafting', perPlant: Float64Array.of(6), perBatch: Float64Array.of(0) }],
          area: [{ place: 0, squareMetres: Float64Array.of(0.1) }],
        },
      },
    ],
    orders: [{ kind: 0, number: 100, dueWeek: 6, price: 20 }],
  })
  const { model, ...solution } = await solved(season)
  expect(beyondWhatThereIs({ season, model, solution })).toEqual({
    overtime: [{ people: ['Ada', 'Bea'], week: weekName(season, 3), hours: 3.3 }],
    extraArea: [{ place: 'mist bed', week: weekName(season, 3), squareMetres: 3 }],
  })
})
