import fc from 'fast-check'
import { expect, test } from 'vitest'
import { speciesById, starterProtocol } from '../../trade/facts/index.ts'
import { spreadLosses } from './spread-losses.ts'

const steps = starterProtocol('hardwood_cutting', speciesById('fig')!).steps

test('losses go to the steps as the protocol expects them, by hand for two steps', () => {
  // 0.5 then 0.8 is 0.4 over both; 100 of 250 came through, which is 0.4: so 125, then 100.
  const two = [steps[0]!, steps[1]!].map((step, at) => {
    const typical = at === 0 ? 0.5 : 0.8
    return {
      ...step,
      days: { ...step.days, low: 30, typical: 30, high: 30 },
      survival: { ...step.survival, low: typical, typical, high: typical },
    }
  })
  expect(spreadLosses(two, 250, 100, '2024-01-01', '2024-03-01')).toEqual([
    { step: two[0]!.id, left: 125, dead: 125, until: '2024-01-31' },
    { step: two[1]!.id, left: 100, dead: 25, until: '2024-03-01' },
  ])
})

test('plants are conserved, the end is as it was said, and days only rise', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 5000 }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (started, share) => {
        const alive = Math.round(started * share)
        const gone = spreadLosses(steps, started, alive, '2024-02-12', '2024-11-04')
        let standing = started
        let day = '2024-02-12'
        for (const one of gone) {
          expect(one.left + one.dead).toBe(standing)
          expect(one.dead).toBeGreaterThanOrEqual(0)
          expect(one.until >= day).toBe(true)
          standing = one.left
          day = one.until
        }
        expect(standing).toBe(alive)
        expect(day).toBe('2024-11-04')
      },
    ),
  )
})
