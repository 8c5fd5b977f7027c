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
