import { expect, test } from 'vitest'
import { phrase } from '../../trade/index.ts'
import type { Limit } from '../plan.ts'
import { limitsMoved } from './what-changes.ts'

const licence = (kind: string, from: string) =>
  ({ rule: 'licence', subject: phrase('licence of {kind}', { kind }), from, to: from }) as Limit

test('a limit that is said in the same words within a quarter of a year stays; another kind, or the same a year on, is another limit', () => {
  const was = [licence('Storm Glass', '2027-W02'), licence('Saltwind', '2027-W02')]
  const is = [licence('Storm Glass', '2027-W09'), licence('Saltwind', '2028-W02')]
  const { gone, added } = limitsMoved(was, is)
  expect(gone).toEqual([was[1]])
  expect(added).toEqual([is[1]])
})
