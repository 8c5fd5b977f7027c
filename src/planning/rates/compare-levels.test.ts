import { expect, test } from 'vitest'
import { fitRates } from '../../science/index.ts'
import { compareLevels } from './compare-levels.ts'

/** One hand is better by odds of four to one; she is given the kind that takes badly, so that raw counts are alike. */
const hands = [
  { person: 'able', kind: 'hard', entered: 100, survived: 70, times: 8 },
  { person: 'able', kind: 'easy', entered: 100, survived: 94, times: 1 },
  { person: 'usual', kind: 'hard', entered: 100, survived: 37, times: 1 },
  { person: 'usual', kind: 'easy', entered: 100, survived: 80, times: 8 },
  { person: 'new', kind: 'easy', entered: 10, survived: 7, times: 1 },
]
const rows = hands.flatMap(({ times, ...row }) => Array.from({ length: times }, () => row))
const model = fitRates({
  observations: rows.map(({ person, kind, entered, survived }) => ({
    entered,
    survived,
    offsetLogit: 0,
    context: { person, kind },
  })),
  factors: ['kind', 'person'],
})
const compare = (only: (person: string) => boolean) =>
  compareLevels(
    model,
    'person',
    rows
      .filter(({ person }) => only(person))
      .map(({ person, kind, entered, survived }) => ({
        entered,
        survived,
        context: { person, kind },
        offsetLogit: 0,
        group: 'chip bud',
        of: 'chip bud',
        member: person,
      })),
  )

test('who works the hard kind is compared as if all had worked the same', () => {
  const [{ members, finding }] = compare(() => true) as [ReturnType<typeof compare>[0] & object]
  const raw = (person: string) => {
    const own = members.find(({ member }) => member === person)!
    return own.survived / own.entered
  }
  // Raw, the able hand looks worse: 654 of 900 against 677 of 900.
  expect(raw('able')).toBeLessThan(raw('usual'))
  expect(members[0]!.member).toBe('able')
  expect(members[0]!.share).toBeGreaterThan(members.find(({ member }) => member === 'usual')!.share + 0.1)
  expect(finding.kind).toBe('probably-different')
  expect(finding.oddsRatio).toBeGreaterThan(2)
})

test('ten plants say little: the new hand stands near the others, with a wide interval', () => {
  const [{ members }] = compare(() => true) as [ReturnType<typeof compare>[0] & object]
  const of = (person: string) => members.find(({ member }) => member === person)!
  const width = (person: string) => of(person).high - of(person).low
  expect(width('new')).toBeGreaterThan(1.2 * width('usual'))
  expect(of('new').share).toBeLessThan(of('able').share)
})

test('in the funnel the hard kind is allowed for, nothing is drawn towards the others, and ten plants are worth fewer', () => {
  const [{ members, share }] = compare(() => true) as [ReturnType<typeof compare>[0] & object]
  const of = (person: string) => members.find(({ member }) => member === person)!.seen
  expect(share).toBeCloseTo((8 * 70 + 94 + 37 + 8 * 80 + 7) / 1810, 9)
  expect(of('able').share).toBeGreaterThan(of('usual').share)
  expect(of('new').worth).toBeLessThan(10)
  expect(of('new').standing).toBe('within')
  expect(of('able').worth).toBeGreaterThan(of('new').worth)
})

test('one alone is compared with nobody, and a factor that the model does not tell apart with none', () => {
  expect(compare(person => person === 'able')).toEqual([])
  expect(compareLevels(model, 'month', [])).toEqual([])
})
