import { dayNumber, dayText, seededRandom } from '../../science/index.ts'
import { EntryId, PersonId } from '../../trade/index.ts'
import { Body, type Entry } from '../entry.ts'
import { exampleRegisters } from '../example-registers.ts'

/**
 * Histories that no one would tell: everything that an entry can say about batches, mothers, lots, orders and
 * holds, in any order, of things that may not be there, with numbers that need not add up. For property tests.
 */
export function historyOfNursery(seed: number, length: number): Entry[] {
  const dice = seededRandom(seed)
  const random = () => dice.uniform()
  const below = (n: number) => Math.floor(random() * n)
  const pick = <T>(items: readonly T[]): T => items[below(items.length)]!
  const batches = Array.from({ length: 2 + Math.floor(length / 12) }, (_, i) => `B${i + 1}`)
  const ids: string[] = []
  const entries: Entry[] = [...exampleRegisters]

  const batch = () => pick(batches)
  const step = () => pick(['mist', 'mist', 'weaning', 'growing on', 'healing', 'finished', 'potting'])
  const bench = () => pick(['mist-1', 'mist-2', 'shade-1', 'gone'])
  const source = () =>
    pick([
      () => ({
        from: 'mother',
        mother: pick(['M1', 'M2', 'M9']),
        material: pick(['cuttings', 'seed']),
        number: below(80) + 1,
      }),
      () => ({ from: 'lot', lot: pick(['L1', 'L2']), number: below(40) + 1 }),
      () => ({
        from: 'batch',
        batch: batch(),
        as: pick(['rootstock', 'scion', 'whole plant']),
        number: below(50) + 1,
      }),
      () => ({ from: 'bought', supplier: 'a grower', material: 'liners', number: 20 }),
    ])()
  const sources = () => Array.from({ length: below(3) }, source)
  const number = () => below(60) + 1
  const held = () =>
    pick([
      { what: 'batch', batch: batch() },
      { what: 'mother', mother: 'M1' },
      { what: 'bench', bench: 'mist-1' },
      { what: 'lineage', of: { mother: 'M2' } },
      { what: 'lineage', of: { batch: batch() } },
    ])
  const bodies = [
    () => ({
      kind: 'batch-started/1',
      batch: batch(),
      name: 'a batch',
      kindOfTree: pick(['tree', 'stock', 'unheard of']),
      protocol: pick(['cuttings', 'grafting', 'unwritten']),
      number: below(120) + 1,
      sources: sources(),
      bench: random() < 0.3 ? null : bench(),
      workedBy: pick([[], ['P1'], ['P1', 'P2']]),
    }),
    () => ({
      kind: 'counted/1',
      batch: batch(),
      step: step(),
      sign: 'rooted',
      taken: below(80),
      dead: below(20),
      undecided: below(20),
    }),
    () => ({
      kind: 'bench-counted/1',
      bench: bench(),
      lines: Array.from({ length: below(4) }, () => ({
        batch: batch(),
        step: step(),
        stood: below(60),
        counted: below(60),
        cause: pick(['', 'rot', 'sold']),
      })),
    }),
    () => ({ kind: 'lost/1', batch: batch(), step: step(), number: number(), cause: 'rot' }),
    () => ({
      kind: 'advanced/1',
      batch: batch(),
      from: step(),
      to: step(),
      number: number(),
      bench: random() < 0.5 ? null : bench(),
    }),
    () => ({ kind: 'finished/1', batch: batch(), number: number(), grade: pick(['', 'first']) }),
    () => ({ kind: 'moved/1', batch: batch(), step: step(), number: number(), to: bench() }),
    () => ({
      kind: 'split/1',
      batch: batch(),
      step: step(),
      number: number(),
      into: batch(),
      name: 'split off',
      why: '',
    }),
    () => ({ kind: 'joined/1', batch: batch(), step: step(), number: number(), into: batch() }),
    () => ({
      kind: 'reworked/1',
      batch: batch(),
      step: step(),
      number: number(),
      kindOfTree: 'tree',
      sources: sources(),
    }),
    () => ({
      kind: 'graded/1',
      batch: batch(),
      step: step(),
      grades: { first: below(30), second: below(30) },
    }),
    () => ({ kind: 'name-settled/1', batch: batch(), cultivar: 'Amber Russet', how: 'by its fruit' }),
    () => ({ kind: 'dispatched/1', batch: batch(), order: pick(['O1', 'O9', null]), number: number() }),
    () => ({ kind: 'returned/1', batch: batch(), order: pick(['O1', null]), number: number(), why: '' }),
    () => ({
      kind: 'material-collected/1',
      lot: pick(['L1', 'L2']),
      mother: pick(['M1', 'M2']),
      material: 'scion sticks',
      number: number(),
      stored: 'cold',
      goodUntil: null,
    }),
    () => ({ kind: 'material-discarded/1', lot: pick(['L1', 'L2']), number: number(), why: 'dry' }),
    () => ({ kind: 'mother-retired/1', mother: 'M1', why: 'old' }),
    () => ({ kind: 'order-cancelled/1', order: 'O1', why: '' }),
    () => ({
      kind: 'start-set/1',
      kindOfTree: pick(['tree', 'stock']),
      protocol: pick(['cuttings', 'grafting']),
      week: `2026-W${10 + below(4)}`,
      number: number(),
      insteadOf: null,
    }),
    () => ({ kind: 'noted/1', about: batch(), text: 'seen' }),
    () => ({ kind: 'bench-removed/1', bench: 'mist-2', why: '' }),
    () => ({ kind: 'hold-placed/1', on: held(), why: 'test' }),
    () => ({
      kind: 'hold-released/1',
      hold: ids.length > 0 ? pick(ids) : EntryId.parse('019d0000-0000-7000-8000-000000000000'),
      why: 'clean',
    }),
    () => ({
      kind: 'struck/1',
      entry: ids.length > 0 ? pick(ids) : '019d0000-0000-7000-8000-000000000000',
      why: 'wrong',
    }),
  ]
  for (let i = 0; i < length; i++) {
    // Starts are told more often than the rest, and the first of all.
    const body = Body.parse((i < 2 || random() < 0.12 ? bodies[0]! : pick(bodies))()) as Entry['body']
    // The id rises with the moment of telling; the day does not, for some are told late.
    const id = EntryId.parse(`019d0000-0000-7000-8000-${String(i + 1).padStart(12, '0')}`)
    ids.push(id)
    const on = dayText(dayNumber('2026-01-01') + Math.max(0, Math.floor(i / 3) - below(4)))
    entries.push({
      id,
      on,
      at: random() < 0.5 ? null : `0${below(10)}:30`,
      by: random() < 0.1 ? PersonId.parse(pick(['P1', 'P7'])) : null,
      device: 'phone',
      body,
    })
  }
  return entries
}
