import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { chanceToAccept, mostFaulty, plantsToInspect, plantsToInspectOfMany } from './inspection.ts'
import { replicatesAgree } from './seed-test.ts'
import { seedlingsFor, seedToSow } from './seedlings.ts'

describe('inspection of a lot', () => {
  const lots = fc.tuple(fc.integer({ min: 20, max: 5000 }), fc.integer({ min: 1, max: 30 }))

  test('finds the fault with the chance asked, and one plant fewer does not', () => {
    fc.assert(
      fc.property(lots, ([lot, percent]) => {
        const faulty = Math.floor((lot * percent) / 100 + 1e-9)
        const sample = plantsToInspect(lot, percent / 100, 0.95)
        if (faulty === 0) {
          expect(sample).toBeNull()
          return
        }
        expect(chanceToAccept({ lot, faulty, sample: sample!, allowed: 0 })).toBeLessThanOrEqual(0.05 + 1e-9)
        expect(chanceToAccept({ lot, faulty, sample: sample! - 1, allowed: 0 })).toBeGreaterThan(0.05)
      }),
    )
  })

  test('never needs more than a lot without end, and comes near it as lots grow', () => {
    expect(plantsToInspect(1_000_000, 0.02, 0.95)).toBe(plantsToInspectOfMany(0.02, 0.95))
    for (const lot of [100, 1000, 10_000])
      expect(plantsToInspect(lot, 0.02, 0.95)).toBeLessThanOrEqual(plantsToInspectOfMany(0.02, 0.95))
  })

  test('a whole lot inspected without a find has no faulty plant', () => {
    expect(mostFaulty(50, 50, 0, 0.95)).toBe(0)
  })
})

describe('seed', () => {
  test('replicates far apart do not agree; beyond the table nothing is said', () => {
    expect(replicatesAgree([80, 95, 85, 88]).agree).toBe(false)
    expect(replicatesAgree([92, 95, 90, 95]).agree).toBe(true)
    expect(replicatesAgree([60, 75, 70, 62]).agree).toBeNull()
  })

  test('seedlings for at least one good one follow the rule 1 − (1 − p)^n', () => {
    expect(seedlingsFor(1, { kind: 'known', share: 0.05 }, 0.9)).toBe(
      Math.ceil(Math.log(0.1) / Math.log(0.95)),
    )
  })

  test('a share of 0 is refused', () => {
    expect(() => seedToSow(100, { germination: 0, purity: 1, survival: 1 }, 1000)).toThrow(
      'seedToSow: germination must be above 0 and up to 1, got 0',
    )
  })
})
