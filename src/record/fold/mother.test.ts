import { expect, test } from 'vitest'
import { MotherId } from '../../trade/index.ts'
import { teller } from '../example-entries.ts'
import { exampleRegisters } from '../example-registers.ts'
import { foldEntries } from './fold.ts'

const seen = (bbch: string | null) => {
  const entry = teller()('2026-04-20', { kind: 'mother-observed/1', mother: 'M1', bbch, health: 'well' })
  const { mothers, queries } = foldEntries([...exampleRegisters, entry])
  return {
    stage: mothers.get(MotherId.parse('M1'))!.observations.map(({ bbch: code }) => code),
    asked: queries.map(({ kind }) => kind),
  }
}

// 00 bud at rest and 65 full flowering: Meier (ed.) 2001, BBCH Monograph, 2nd ed. Three figures: its scales with mesostages.
test.each(['00', '65', '97', '510'])('growth stage %s of the BBCH scale is kept as it is', code => {
  expect(seen(code)).toEqual({ stage: [code], asked: [] })
})

test.each(['7', 'full bloom', '6.5', 'BBCH 65', ''])(
  'a growth stage that is no BBCH code (%j) is asked about, and told nowhere as one',
  code => {
    expect(seen(code)).toEqual({ stage: [null], asked: ['no-growth-stage'] })
  },
)

test('health alone, with no growth stage, asks nothing', () => {
  expect(seen(null)).toEqual({ stage: [null], asked: [] })
})

const cuttings = (months: number[], perYear: number) => ({ material: 'cuttings', months, perYear })
/** What is asked of a mother who gives so, after so many were collected on these days. */
const askedAfter = (
  gives: readonly object[],
  ...collected: readonly (readonly [on: string, number: number])[]
) => {
  const tell = teller()
  const mother = { id: 'M9', name: 'M9', cultivar: 'Amber Russet', gives }
  const entries = [
    tell('2026-01-01', { kind: 'mother-set/1', mother }),
    ...collected.map(([on, number], i) =>
      tell(on, {
        kind: 'material-collected/1',
        mother: 'M9',
        material: 'cuttings',
        number,
        lot: `L${i}`,
        stored: '',
        goodUntil: null,
      }),
    ),
  ]
  const { queries } = foldEntries([...exampleRegisters, ...entries])
  return queries.map(({ kind, facts }) => [kind, facts.given, facts.mayGive])
}

test('each supply of a material counts by itself: more than March may give is asked about, though July has plenty', () => {
  const apart = [cuttings([3], 60), cuttings([7], 200)]
  expect(askedAfter(apart, ['2026-03-02', 60], ['2026-07-02', 200])).toEqual([])
  expect(askedAfter(apart, ['2026-03-02', 61])).toEqual([['mother-over-supply', 61, 60]])
  // Where their months meet, the second goes on when the first is spent; out of their months either may have given.
  const meeting = [cuttings([3, 4], 60), cuttings([4, 5], 40)]
  expect(askedAfter(meeting, ['2026-04-02', 100])).toEqual([])
  expect(askedAfter(meeting, ['2026-04-02', 100], ['2026-04-09', 1])).toEqual([
    ['mother-over-supply', 41, 40],
  ])
  expect(askedAfter(apart, ['2026-12-02', 260])).toEqual([])
})
