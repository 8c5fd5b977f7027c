import assignment from '../fixtures/assignment.json' with { type: 'json' }
import { cheapestAssignment } from '../pairing/assignment.ts'
import { checkOf, type Fixture } from './fixture.ts'
import type { OutsideCheck } from './outside-check.ts'

const fixture = assignment as unknown as Fixture

/** The cheapest assignment: its cost and, as one of the best, its columns. */
export const pairingChecks = (): readonly OutsideCheck[] =>
  checkOf<
    { matrix: number[][]; sense: 'min' | 'max' },
    { value: number; assignmentColumnsOneBased: number[][] }
  >(
    fixture,
    '',
    'the best assignment of rows to columns',
    ({ matrix, sense }, { assignmentColumnsOneBased }) => {
      const sign = sense === 'max' ? -1 : 1
      const { columns, cost } = cheapestAssignment(matrix.map(row => row.map(value => sign * value)))
      const chosen = JSON.stringify(columns.map(column => column + 1))
      return {
        got: {
          value: sign * cost,
          oneOfTheBest: assignmentColumnsOneBased.some(best => JSON.stringify(best) === chosen),
        },
        // Sums of decimals, as in 8.3 + 1.6 + 9.6.
        tolerance: 1e-9,
      }
    },
    ({ value }) => ({ value, oneOfTheBest: true }),
  )
