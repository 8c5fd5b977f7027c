import { expect, test } from 'vitest'
import { type LoadTried, triedAs, triedIn } from './capacity-link.ts'

test('what is tried of a bench or a person is read back from the address as it was; what is no such address is none', () => {
  const always: LoadTried = {
    load: 'mist bed',
    of: { able: 'bench 7/a', draft: { value: 12.5, days: null } },
  }
  const days = { from: '2026-05-04', to: '2026-05-24' }
  const away: LoadTried = { load: 'grafting', of: { able: 'P1', draft: { value: 38, days } } }
  for (const tried of [always, away]) expect(triedIn(triedAs(tried))).toEqual(tried)
  for (const text of ['', 'mist bed', 'mist bed/7', 'mist bed/7/many', 'mist bed/7/-3', '%/7/3'])
    expect(triedIn(text)).toBeNull()
})
