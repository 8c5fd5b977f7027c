import { expect, test } from 'vitest'
import { allSpecies } from './facts/all-species.ts'
import { usualWindow } from './protocols/usual-window.ts'
import { MethodId } from './vocabulary.ts'
import { windowKind } from './window-kind.ts'

/** Every condition of a method: the usual one and those of the fruits, with their sources in the facts. */
const conditions = MethodId.options.flatMap(method => [
  [method, usualWindow(method, allSpecies()[0]!).condition] as const,
  ...allSpecies().flatMap(({ ways }) =>
    ways.flatMap(way =>
      way.method === method && way.window != null ? [[method, way.window.condition] as const] : [],
    ),
  ),
])

test('where a condition asks for bark that slips, its window is one of the bark; where it says the bark need not, it is not', () => {
  const asksForBark = conditions.filter(([, says]) => /bark (slips|slipping)/i.test(says))
  expect(asksForBark.length).toBeGreaterThan(12)
  for (const [method, says] of asksForBark)
    expect([says, windowKind(method) === 'bark']).toEqual([says, !/before|need not/i.test(says)])
  for (const [method, says] of conditions.filter(([, one]) => /not (need )?slip|need not slip/i.test(one)))
    expect([says, windowKind(method)]).toEqual([says, 'wood'])
})

test('where a condition asks for fresh or chilled seed it is a window of the seed, for wood at rest one of the wood', () => {
  for (const [method, says] of conditions) {
    if (/^(sow fresh|seed (fresh|from)|fresh nuts)/i.test(says))
      expect([says, windowKind(method)]).toEqual([says, 'seed'])
    if (/^(dormant|deep winter|wood of last)/i.test(says))
      expect([says, windowKind(method)]).toEqual([says, 'wood'])
  }
})
