import { describe, expect, test } from 'vitest'
import { allOutsideChecks, casesByFixture } from './outside-checks.ts'

const checks = await allOutsideChecks()

describe('what is computed agrees with sources outside the project:', () => {
  for (const check of checks)
    test(check.what, () => {
      const { expected, got, tolerance, source, basis } = check
      expect(check.pass, JSON.stringify({ source, basis, expected, got, tolerance }, null, 1)).toBe(true)
    })
})

test('no two outside checks have the same name', () => {
  const names = checks.map(check => check.what)
  expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([])
})

test('every case of expected values that stands in the project is checked', () => {
  const fixtures = casesByFixture(checks)
  expect(fixtures.length).toBeGreaterThan(10)
  expect(fixtures.flatMap(({ file, unused }) => unused.map(id => `${file}: ${id}`))).toEqual([])
})
