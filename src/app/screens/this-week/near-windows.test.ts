import { expect, test } from 'vitest'
import type { ProtocolSummary } from '../../../api/index.ts'
import { nearWindows } from './near-windows.ts'

const open = (id: string, months: readonly number[]) =>
  ({ id, name: id, window: { months } }) as unknown as ProtocolSummary
const ids = (windows: ReturnType<typeof nearWindows>['closing']) =>
  windows.map(({ protocol, day }) => `${protocol.id} ${day}`)

// A week counts to the month of its Thursday: the last of November 2026 ends on Sunday 29, the first of December begins on the 30th.
test('windows that close or open within four weeks are told, with the last or first day, the first one first', () => {
  const { closing, opening } = nearWindows(
    [
      open('until November', [9, 10, 11]),
      open('from December', [12, 1]),
      open('always', []),
      open('from January', [1, 2]),
      open('until December', [11, 12]),
    ],
    '2026-11-25',
  )
  expect(ids(closing)).toEqual(['until November 2026-11-29'])
  expect(ids(opening)).toEqual(['from December 2026-11-30'])
  const later = nearWindows([open('until December', [11, 12]), open('from January', [1, 2])], '2026-12-09')
  expect(ids(later.closing)).toEqual(['until December 2027-01-03'])
  expect(ids(later.opening)).toEqual(['from January 2027-01-04'])
})
