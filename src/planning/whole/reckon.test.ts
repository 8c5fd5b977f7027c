import { expect, test } from 'vitest'
import { everyWeek, tinyPlace } from '../fixtures/solved.ts'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import { withoutMargins } from '../model/build-season-model.ts'
import { reckoned } from './reckon.ts'

test('starts fit where they are within one plant and a fiftieth of the room of what fits, and not where they are further over', async () => {
  // A bed of one square metre holds a hundred plants.
  const season = tinySeason({
    weeks: 30,
    kinds: [tinyKind('fig')],
    ways: [{ kind: 0, steps: [{ ...certain(0.9), days: 70, place: 0, squareMetres: 0.01 }] }],
    orders: [{ kind: 0, number: 90, dueWeek: 20 }],
    places: [tinyPlace('mist bed', everyWeek(30, 1))],
  })
  const begun = (number: number) =>
    reckoned(season, withoutMargins(season), [{ way: 0, week: 5, number }], [])
  const [fits, rounded, slack, over] = [
    await begun(100),
    await begun(101),
    await begun(103),
    await begun(104),
  ]
  expect(fits!.solution.starts).toMatchObject([{ week: 5, number: 100 }])
  expect(rounded!.cost).toBeCloseTo(fits!.cost, 6)
  // Planned beside the seasons of the rest, they may be over by what the means of the two differ.
  expect(slack!.cost).toBeGreaterThan(fits!.cost)
  expect(over).toBeNull()
})
