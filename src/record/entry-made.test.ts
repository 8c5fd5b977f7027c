import { expect, test } from 'vitest'
import { EntryId } from '../trade/index.ts'
import { madeAt } from './entry-made.ts'

const arrived = '2026-05-19T08:00:00.000Z'
const made = (id: string, receivedAt = arrived) => madeAt({ id: EntryId.parse(id), receivedAt })

test('the instant at which an entry was made is read from its id', () => {
  // The worked example of RFC 9562, appendix A.6: Tuesday, 22 February 2022, 14:22:22.00 GMT-05:00.
  expect(made('017f22e2-79b0-7cc3-98c4-dc0c0c07398f')).toBe('2022-02-22T19:22:22.000Z')
})

test('an id that tells no time, or one after the entry arrived, leaves the instant of arrival', () => {
  expect(made('00000000-0000-7000-8000-000000000001')).toBe(arrived)
  // RFC 9562, appendix A.3: the example of version 4.
  expect(made('919108f7-52d1-4320-9bac-f847db4148a8')).toBe(arrived)
  expect(made('017f22e2-79b0-7cc3-98c4-dc0c0c07398f', '2022-02-22T19:00:00.000Z')).toBe(
    '2022-02-22T19:00:00.000Z',
  )
})
