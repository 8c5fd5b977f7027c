import { expect, test } from 'vitest'
import { startOf, teller } from '../example-entries.ts'
import { exampleRegisters } from '../example-registers.ts'
import { foldEntries } from '../fold/fold.ts'
import { sharedGround } from './shared-ground.ts'

const say = teller()
const cuttings = (mother: string) => ({ from: 'mother', mother, material: 'cuttings', number: 10 })
const nursery = foldEntries([
  ...exampleRegisters,
  say('2026-02-01', startOf('B1', 40, [cuttings('M1')], { bench: 'mist-1', workedBy: ['P1'] })),
  say('2026-02-01', startOf('B2', 40, [cuttings('M2')], { bench: 'mist-2', workedBy: ['P1'] })),
  say('2026-02-10', startOf('B3', 40, [], { bench: 'mist-1', workedBy: ['P2'] })),
  say('2026-02-20', { kind: 'moved/1', batch: 'B1', step: 'mist', number: 40, to: 'shade-1' }),
  say('2026-03-01', startOf('B4', 40, [], { bench: 'mist-1', workedBy: ['P1'] })),
])

test('what stood on a bench at the same time is found, with the days; what came after is not', () => {
  expect(sharedGround(nursery, [{ what: 'batch', id: 'B1' }]).benches).toEqual([
    { batch: 'B3', bench: 'mist-1', from: '2026-02-10', to: '2026-02-20' },
  ])
})

test('what one person cut on one day is found, mothers too', () => {
  const blades = sharedGround(nursery, [{ what: 'batch', id: 'B1' }]).blades
  expect(blades.map(({ ref, on }) => `${ref.id} ${on}`).sort()).toEqual([
    'B2 2026-02-01',
    'M1 2026-02-01',
    'M2 2026-02-01',
  ])
})

test('those asked about are not in their own circle', () => {
  const { benches, blades } = sharedGround(nursery, [
    { what: 'batch', id: 'B1' },
    { what: 'batch', id: 'B3' },
    { what: 'mother', id: 'M1' },
  ])
  expect(benches.map(({ batch }) => batch)).toEqual(['B4'])
  expect(blades.map(({ ref }) => ref.id).sort()).toEqual(['B2', 'M2'])
})
