import { expect, test } from 'vitest'
import { Question } from './question.ts'
import { turningPoints } from './turning-points.ts'
import { whichTree } from './which-tree.ts'

const question = Question.parse({
  species: 'apple',
  amount: { kind: 'area', squareMetres: 1000 },
  climate: { kind: 'normals', coldestNightCelsius: -6, coldestMonthCelsius: 4, warmestMonthCelsius: 21 },
  wouldRework: true,
})
const answer = whichTree(question)!
const all = [...turningPoints(question, answer)].filter(step => step !== undefined)

test('beyond a turning point another way leads, and just short of it the same one does', () => {
  const points = all.filter(({ wish }) => wish === 'money')
  expect(points.length).toBeGreaterThan(2)
  const worth = points.find(({ input }) => input === 'fruitWorthPerKg')!
  const leaderAt = (value: number) =>
    whichTree({ ...question, set: { fruitWorthPerKg: value } }, 100)!.best.money
  expect(leaderAt(worth.to)).toBe(worth.way)
  expect(leaderAt(worth.to)).not.toBe(answer.best.money)
  expect(leaderAt(worth.from + 0.9 * (worth.to - worth.from))).toBe(answer.best.money)
})

test('every turning point names an input that moved, and a distance between nothing and all', () => {
  for (const { from, to, distance } of all) {
    expect(to).not.toBe(from)
    expect(distance).toBeGreaterThan(0)
    expect(distance).toBeLessThanOrEqual(1)
  }
})
