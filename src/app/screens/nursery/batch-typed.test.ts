import { expect, test } from 'vitest'
import { fruitsWith, severalUnions, starterProtocol } from '../../../trade/facts/index.ts'
import type { CultivarId, KindId } from '../../../trade/index.ts'
import { type BatchTyped, batchLacks, batchStarted, woodsOf } from './batch-typed.ts'

const today = '2026-11-26'
const protocol = starterProtocol('whip_tongue_graft', fruitsWith({ fruits: [], sets: [] }).byId('apple')!)
const first = protocol.steps[0]!.id
const later = protocol.steps[1]!.id
const typed: BatchTyped & { readonly number: number } = {
  name: '26-001',
  number: 40,
  bench: '',
  startedOn: '2026-03-02',
  step: first,
  since: today,
  woodFrom: {},
  rootstockFrom: '',
  supplier: '',
}
const appleTree = { id: 'apple' as KindId, cultivars: ['a' as CultivarId], interstem: null }
/** A stick of five buds serves five plants. */
const started = (said: Partial<BatchTyped>, kind: Parameters<typeof woodsOf>[0] = appleTree) =>
  batchStarted(
    { ...typed, ...said, number: 40 },
    {
      id: 'b',
      kind,
      protocol: {
        id: protocol.id,
        takes: protocol.takes.map(one => (one.what === 'material' ? { ...one, perPlant: 0.2 } : one)),
        steps: [...protocol.steps],
      },
      by: null,
    },
  )

test('a batch begun by hand is at its first step; one that stood already is taken over where it stands, since when', () => {
  expect(started({})).not.toHaveProperty('takenOver')
  expect(started({ step: later, since: '2026-05-01' })).toMatchObject({
    takenOver: { step: later, since: '2026-05-01' },
  })
  expect(started({ step: 'finished', since: '2026-10-01' })).toMatchObject({
    takenOver: { step: 'finished', since: '2026-10-01' },
  })
})

test('wood is told in sticks for so many plants, rootstocks one for each, bought ones with who sold them', () => {
  expect(
    started({ woodFrom: { 'scion a': 'mother M 1' }, rootstockFrom: 'bought', supplier: 'a neighbour' }),
  ).toMatchObject({
    sources: expect.arrayContaining([
      { from: 'mother', mother: 'M 1', material: 'scion sticks', number: 8 },
      { from: 'bought', supplier: 'a neighbour', material: 'rootstocks', number: 40 },
    ]),
  })
  expect(started({ rootstockFrom: 'batch s' })).toMatchObject({
    sources: [{ from: 'batch', batch: 's', as: 'rootstock', number: 40 }],
  })
})

test('of a tree of two cultivars with an interstem a stick of each is told, from its own mother', () => {
  const double = severalUnions(protocol, { cultivars: 2, hasInterstem: true })
  const several = { ...appleTree, cultivars: ['a', 'b'] as CultivarId[], interstem: 'c' as CultivarId }
  expect(woodsOf(several, [...double.takes]).map(({ key, perPlant }) => [key, perPlant])).toEqual([
    ['scion a', 1],
    ['scion b', 1],
    ['interstem c', 1],
  ])
  const woodFrom = { 'scion a': 'mother A', 'scion b': 'mother B' }
  expect(started({ woodFrom }, several)).toMatchObject({
    sources: [
      { from: 'mother', mother: 'A', material: 'scion sticks', number: 8 },
      { from: 'mother', mother: 'B', material: 'scion sticks', number: 8 },
    ],
  })
  expect(
    woodsOf({ ...appleTree, cultivars: [] }, [...protocol.takes]).map(({ cultivar }) => cultivar),
  ).toEqual([null])
})

test.each([
  [{}, null],
  [{ name: ' ' }, 'name'],
  [{ number: null }, 'number'],
  [{ startedOn: '' }, 'startedOn'],
  [{ startedOn: '2026-11-27' }, 'future'],
  [{ step: later, since: '2026-03-01' }, 'since'],
  [{ step: later, since: '2026-11-27' }, 'since'],
  [{ rootstockFrom: 'bought' }, 'supplier'],
] as const)('of what is typed %o, what lacks is named: %s', (said, lack) => {
  expect(batchLacks({ ...typed, ...said }, first, today)).toBe(lack)
})
