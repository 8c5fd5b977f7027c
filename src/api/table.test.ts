import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { rowsOf, toTable } from './table.ts'

const row = fc.record({
  name: fc.string(),
  /** Few values, as a step or a bench has. */
  step: fc.constantFrom('sown', 'potted', null),
  says: fc.constantFrom({ says: 'Count', of: {} }, { says: 'Water', of: { times: 2 } }),
  number: fc.integer(),
})

describe('a table', () => {
  test('gives back the very rows that were put in, also after the way over the wire', () => {
    fc.assert(
      fc.property(fc.array(row), rows => {
        expect(rowsOf(JSON.parse(JSON.stringify(toTable(rows))))).toEqual(rows)
      }),
    )
  })

  test('says what is alike in all rows once, what repeats by its place, and what differs as it is', () => {
    const rows = ['a', 'b', 'c', 'd'].map((id, index) => ({
      id,
      bench: index < 3 ? 'mist' : 'field',
      kind: 'fig',
    }))
    expect(toTable(rows)).toEqual({
      rows: 4,
      columns: {
        id: { of: ['a', 'b', 'c', 'd'] },
        bench: { of: ['mist', 'field'], at: [0, 0, 0, 1] },
        kind: { of: ['fig'] },
      },
    })
  })

  test('of the same table the rows are the very same, so that nothing is drawn anew that has not changed', () => {
    const table = toTable([{ id: 'a' }, { id: 'b' }])
    expect(rowsOf(table)).toBe(rowsOf(table))
  })
})
