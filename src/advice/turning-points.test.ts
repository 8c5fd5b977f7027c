import { expect, test } from 'vitest'
import { speciesById } from '../trade/facts/index.ts'
import { Question } from './question.ts'
import { turningPoints } from './turning-points.ts'
import { whichTree } from './which-tree.ts'

const apple = speciesById('apple')!
const question = Question.parse({
  species: 'apple',
  amount: { kind: 'area', squareMetres: 1000 },
  climate: { kind: 'normals', coldestNightCelsius: -6, coldestMonthCelsius: 4, warmestMonthCelsius: 21 },
  wouldRework: true,
})
const answer = whichTree(question, apple)
const all = [...turningPoints(question, apple, answer)].filter(step => step !== undefined)

test('beyond a turning point another way leads, and well short of it the same one does', () => {
  const money = all.filter(({ wish }) => wish === 'money')
  expect(money.length).toBeGreaterThan(0)
  for (let i = 1; i < money.length; i++) expect(money[i]!.distance).toBeLessThan(money[i - 1]!.distance)
  const nearest = money.at(-1)!
  const leading = answer.ways.find(({ way }) => way.id === answer.best.money)!.way
  const leaderAt = (value: number) =>
    whichTree(
      {
        ...question,
        offers: [
          {
            form: leading.form,
            rootstock: leading.rootstock!.id,
            label: 'asked',
            price: value,
            waitYears: 0,
            chance: 1,
          },
        ],
      },
      apple,
      60,
    ).best.money
  expect(nearest.input).toBe('price of the leading way')
  expect(nearest.way).not.toBe(answer.best.money)
  expect(leaderAt(nearest.to)).toBe(nearest.way)
  expect(leaderAt(nearest.from + 0.8 * (nearest.to - nearest.from))).toBe(answer.best.money)
})

test('every turning point names an input that moved, and a distance between nothing and all', () => {
  for (const { from, to, distance } of all) {
    expect(to).not.toBe(from)
    expect(distance).toBeGreaterThan(0)
    expect(distance).toBeLessThanOrEqual(1)
  }
})
