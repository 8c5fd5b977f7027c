import { expect, test } from 'vitest'
import { CultivarId } from '../trade/index.ts'
import { startOf, teller } from './example-entries.ts'
import { exampleRegisters } from './example-registers.ts'
import { foldEntries } from './fold/fold.ts'
import { licenceTally } from './licence-tally.ts'

const say = teller()
const id = CultivarId.parse('Amber Russet')
const licence = { owner: 'a breeder', treesPerYear: 100, until: '2027-12-31', feePerTree: 1.5 }
const licensed = say('2026-04-01', {
  kind: 'cultivar-set/1',
  cultivar: { id, name: 'Amber Russet', species: 'apple', licence },
})
const finish = (batch: string, number: number) => [
  say('2025-06-01', { kind: 'advanced/1', batch, from: 'mist', to: 'growing on', number, bench: null }),
  say('2025-09-01', { kind: 'finished/1', batch, number }),
]

test('trees begun, sent and due are told year by year; a split counts once, what comes back is not due', () => {
  const told = [
    ...exampleRegisters,
    licensed,
    say('2025-03-01', startOf('B1', 60)),
    ...finish('B1', 60),
    say('2025-10-01', { kind: 'dispatched/1', batch: 'B1', order: null, number: 20 }),
    say('2026-01-10', {
      kind: 'split/1',
      batch: 'B1',
      step: 'finished',
      number: 10,
      into: 'B2',
      name: 'B2',
      why: '',
    }),
    say('2026-02-01', { kind: 'dispatched/1', batch: 'B2', order: null, number: 8 }),
    say('2026-02-20', { kind: 'returned/1', batch: 'B2', order: null, number: 2, why: 'unsold' }),
    say('2026-03-01', startOf('B3', 70)),
  ]
  const nursery = foldEntries(told)
  const idsOf = (...kinds: string[]) =>
    told.filter(({ body }) => kinds.includes(body.kind)).map(one => one.id)
  const [starts, sent] = [idsOf('batch-started/1'), idsOf('dispatched/1', 'returned/1')]
  expect(licenceTally(nursery, id, '2026-05-04')).toEqual({
    cultivar: id,
    licence,
    years: [
      { year: 2025, begun: 60, sent: 20, due: 30, begunBy: [starts[0]], sentBy: [sent[0]] },
      { year: 2026, begun: 70, sent: 6, due: 9, begunBy: [starts[1]], sentBy: sent.slice(1) },
    ],
    left: 30,
    alive: 104,
    isOver: false,
  })
  expect(licenceTally(nursery, id, '2028-01-01')?.isOver).toBe(true)
})

test('trees worked over count in the year in which that was done, also where they were split off for it', () => {
  const over = (batch: string, number: number, kindOfTree: string) =>
    say('2026-02-01', { kind: 'reworked/1', batch, step: 'mist', number, kindOfTree, sources: [] })
  const nursery = foldEntries([
    ...exampleRegisters,
    licensed,
    say('2025-03-01', startOf('B1', 50, [], { kindOfTree: 'stock' })),
    say('2026-01-10', {
      kind: 'split/1',
      batch: 'B1',
      step: 'mist',
      number: 10,
      into: 'B2',
      name: 'B2',
      why: '',
    }),
    over('B2', 10, 'tree'),
    // Working the same cultivar again makes no new tree of it; working another over leaves what was begun.
    over('B2', 10, 'tree'),
    say('2025-04-01', startOf('B3', 7)),
    over('B3', 7, 'stock'),
  ])
  expect(licenceTally(nursery, id, '2026-05-04')).toMatchObject({
    years: [
      { year: 2025, begun: 7 },
      { year: 2026, begun: 10 },
    ],
    left: 90,
    alive: 10,
  })
})

test('a cultivar that no one protects has no tally', () => {
  expect(licenceTally(foldEntries(exampleRegisters), id, '2026-05-04')).toBeNull()
})
