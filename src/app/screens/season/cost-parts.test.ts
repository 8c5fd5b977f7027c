import { expect, test } from 'vitest'
import { paidAndWeighed } from './cost-parts.ts'

test('of a cost, trees that are short, late, replaced or moved are weighed; the rest is paid', () => {
  const parts = { labour: 900, material: 80, shortage: 300, lateness: 20, substitution: 4, moving: 1 }
  expect(paidAndWeighed(1305, parts)).toEqual({ paid: 980, weighed: 325 })
  expect(paidAndWeighed(980, { labour: 900, material: 80 })).toEqual({ paid: 980, weighed: 0 })
})
