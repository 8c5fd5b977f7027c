import { describe, expect, test } from 'vitest'
import { BatchId } from '../../trade/index.ts'
import type { Entry } from '../entry.ts'
import { startOf, teller } from '../example-entries.ts'
import { exampleRegisters } from '../example-registers.ts'
import { foldEntries } from '../fold/fold.ts'
import { queryText } from '../query-text.ts'
import { heldBatches, heldLots, heldMothers } from './holds.ts'

const say = teller()
const cuttings = (mother: string) => ({ from: 'mother', mother, material: 'cuttings', number: 10 })
const hold = (on: object, day = '2026-03-01') =>
  say(day, { kind: 'hold-placed/1', on, why: 'shot hole disease suspected' })

const history: readonly Entry[] = [
  say('2026-02-01', startOf('B1', 40, [cuttings('M1')], { bench: 'mist-1' })),
  say('2026-02-01', startOf('B2', 40, [cuttings('M2')], { bench: 'mist-1' })),
  say('2026-02-02', {
    kind: 'split/1',
    batch: 'B1',
    step: 'mist',
    number: 10,
    into: 'B3',
    name: 'B3',
    why: '',
  }),
  say('2026-02-03', {
    kind: 'material-collected/1',
    lot: 'L1',
    mother: 'M1',
    material: 'budwood',
    number: 20,
    stored: 'cold',
    goodUntil: null,
  }),
  say('2026-02-04', { kind: 'moved/1', batch: 'B2', step: 'mist', number: 40, to: 'mist-2' }),
]
const later = [
  say('2026-03-05', {
    kind: 'split/1',
    batch: 'B1',
    step: 'mist',
    number: 5,
    into: 'B4',
    name: 'B4',
    why: '',
  }),
  say('2026-03-06', { kind: 'finished/1', batch: 'B1', number: 20, grade: '' }),
  say('2026-03-07', { kind: 'dispatched/1', batch: 'B1', order: 'O1', number: 8 }),
]
const fold = (...entries: Entry[]) => foldEntries([...exampleRegisters, ...history, ...entries])

describe('what a hold stops', () => {
  test('one on a mother: her, and the wood of her in hand; not the batches made before', () => {
    const nursery = fold(hold({ what: 'mother', mother: 'M1' }))
    expect([...heldMothers(nursery).keys()]).toEqual(['M1'])
    expect([...heldLots(nursery).keys()]).toEqual(['L1'])
    expect([...heldBatches(nursery).keys()]).toEqual([])
  })

  test('one on a batch: it, and what is split off from then on', () => {
    expect([...heldBatches(fold(hold({ what: 'batch', batch: 'B1' }), ...later)).keys()]).toEqual([
      'B1',
      'B4',
    ])
  })

  test('one on a lineage: the mother, her wood, and all that ever came of it', () => {
    const nursery = fold(hold({ what: 'lineage', of: { mother: 'M1' } }), ...later)
    expect([...heldMothers(nursery).keys()]).toEqual(['M1'])
    expect([...heldLots(nursery).keys()]).toEqual(['L1'])
    expect([...heldBatches(nursery).keys()].sort()).toEqual(['B1', 'B3', 'B4'])
  })

  test('one on a bench: what stands there, not what had left it before', () => {
    expect([...heldBatches(fold(hold({ what: 'bench', bench: 'mist-1' }))).keys()].sort()).toEqual([
      'B1',
      'B3',
    ])
  })

  test('what stood on a held bench stays held where it was moved to', () => {
    const moved = say('2026-03-20', { kind: 'moved/1', batch: 'B3', step: 'mist', number: 10, to: 'shade-1' })
    const nursery = fold(hold({ what: 'bench', bench: 'mist-1' }), moved)
    const standsOn = nursery.batches.get(BatchId.parse('B3'))!.portions.map(({ bench }) => bench)
    expect(standsOn).not.toContain('mist-1')
    expect([...heldBatches(nursery).keys()]).toContain('B3')
  })

  test('a hold that was released stops nothing, and is kept with its reason', () => {
    const placed = hold({ what: 'batch', batch: 'B1' })
    const nursery = fold(
      placed,
      say('2026-03-09', { kind: 'hold-released/1', hold: placed.id, why: 'test clean' }),
    )
    expect(heldBatches(nursery).size).toBe(0)
    expect(nursery.holds.get(placed.id)?.released).toMatchObject({ on: '2026-03-09', why: 'test clean' })
  })
})

describe('what is done against a hold is asked about', () => {
  const asked = (...entries: Entry[]) =>
    fold(...entries)
      .queries.filter(query => query.kind === 'hold-broken')
      .map(queryText)

  test('finishing for sale and sending out', () => {
    expect(asked(hold({ what: 'lineage', of: { mother: 'M1' } }), ...later)).toEqual([
      expect.stringContaining(
        'Batch B1 made 20 ready for sale on 2026-03-06, while a hold of 2026-03-01 stood',
      ),
      expect.stringContaining('Batch B1 sent out 8 on 2026-03-07'),
    ])
  })

  test('cutting from a mother, and starting a batch with her wood', () => {
    const held = hold({ what: 'mother', mother: 'M1' })
    const cut = say('2026-03-02', {
      kind: 'material-collected/1',
      lot: 'L2',
      mother: 'M1',
      material: 'cuttings',
      number: 5,
      stored: '',
      goodUntil: null,
    })
    const start = say('2026-03-03', startOf('B9', 5, [{ from: 'lot', lot: 'L1', number: 5 }]))
    expect(asked(held, cut, start)).toEqual([
      expect.stringContaining('Mother tree M1 gave 5 cuttings on 2026-03-02'),
      expect.stringContaining('The material L1 went into batch B9'),
    ])
  })

  test('but not what was done before it was placed, or after it was released', () => {
    const placed = hold({ what: 'batch', batch: 'B1' })
    const released = say('2026-03-02', { kind: 'hold-released/1', hold: placed.id, why: 'clean' })
    expect(asked(placed, released, ...later)).toEqual([])
    expect(asked(hold({ what: 'batch', batch: 'B1' }, '2026-04-01'), ...later)).toEqual([])
  })
})
