import { describe, expect, test } from 'vitest'
import type { Body } from '../../record/index.ts'
import { BatchId, KindId, MaterialLotId, MotherId, PersonId, ProtocolId, StepId } from '../../trade/index.ts'
import { type Said, smallNursery } from '../fixtures/small-nursery.ts'
import { readRateBook } from '../rates/read-rate-book.ts'
import { fullPlaces } from './full-places.ts'
import { lateBatches } from './late-batches.ts'
import { poorTakes } from './poor-takes.ts'
import { slumps } from './slumps.ts'
import { staleLots } from './stale-lots.ts'

const rooting = StepId.parse('rooting')
const growing = StepId.parse('growing on')
const said = (on: string, body: unknown): Said => ({ on, body: body as Body })
const started = (name: string, on: string, number = 100, ...workedBy: string[]): Said =>
  said(on, {
    kind: 'batch-started/1',
    batch: BatchId.parse(name),
    name,
    kindOfTree: KindId.parse('fig'),
    protocol: ProtocolId.parse('cutting'),
    number,
    sources: [],
    bench: null,
    workedBy: workedBy.map(who => PersonId.parse(who)),
    candidates: [],
  })
const counted = (name: string, on: string, taken: number, dead: number, undecided = 0): Said =>
  said(on, {
    kind: 'counted/1',
    batch: BatchId.parse(name),
    step: rooting,
    sign: 'rooted',
    taken,
    dead,
    undecided,
  })

/** A batch from start through its first step: so many of a hundred go on. */
const wholeStep = (name: string, from: string, to: string, survived: number, ...by: string[]): Said[] => [
  started(name, from, 100, ...by),
  ...(survived < 100
    ? [
        said(to, {
          kind: 'lost/1',
          batch: BatchId.parse(name),
          step: rooting,
          number: 100 - survived,
          cause: 'did not root',
        }),
      ]
    : []),
  said(to, {
    kind: 'advanced/1',
    batch: BatchId.parse(name),
    from: rooting,
    to: growing,
    number: survived,
    bench: null,
  }),
]

describe('batches that should have gone on', () => {
  const nursery = smallNursery(started('A', '2026-03-02'), started('B', '2026-04-01'))
  const late = lateBatches(nursery, readRateBook(nursery, '2026-04-20'), '2026-04-20')

  test('49 days in a step of 42 that hardly varies is late; 19 days is not', () => {
    expect(late).toMatchObject([{ batch: 'A', step: 'rooting', number: 100, days: 49, usualDays: 42 }])
    // 42 days, 3 % either way nine times in ten: nineteen of twenty stay below 42 · 1.03.
    expect(late[0]!.mostDays).toBe(43)
  })
})

describe('poor takes', () => {
  test('60 of 100 where 80 are expected, give or take 2, is poor; 78 is not; what is not yet to tell does not count', () => {
    const nursery = smallNursery(
      started('poor', '2026-03-02'),
      counted('poor', '2026-04-10', 60, 40),
      started('usual', '2026-03-02'),
      counted('usual', '2026-04-10', 78, 22),
      started('early', '2026-03-02'),
      counted('early', '2026-04-10', 8, 2, 90),
    )
    const poor = poorTakes(nursery, readRateBook(nursery, '2026-04-12'), '2026-04-12')
    expect(poor.map(({ batch }) => batch)).toEqual(['poor'])
    expect(poor[0]).toMatchObject({ taken: 60, counted: 100 })
    // Binomial: 60 or fewer of 100 at 0.8 has a chance of about 4 in a million; the rate's own doubt raises it a little.
    expect(poor[0]!.chance).toBeLessThan(1e-4)
  })

  test('a poor count of two months ago is known by now', () => {
    const nursery = smallNursery(started('poor', '2026-03-02'), counted('poor', '2026-04-10', 60, 40))
    expect(poorTakes(nursery, readRateBook(nursery, '2026-06-12'), '2026-06-12')).toEqual([])
  })
})

describe('wood and seed that go stale', () => {
  test('told a week before its day and after it, the most pressing first, and no more once it is gone', () => {
    const collected = (lot: string, goodUntil: string | null): Said =>
      said('2026-01-02', {
        kind: 'material-collected/1',
        mother: MotherId.parse('pear tree 1'),
        material: 'scion sticks',
        number: 20,
        lot: MaterialLotId.parse(lot),
        stored: 'cold store',
        goodUntil,
      })
    const nursery = smallNursery(
      collected('soon', '2026-03-10'),
      collected('past', '2026-03-01'),
      collected('later', '2026-05-01'),
      collected('open', null),
      collected('thrown away', '2026-03-06'),
      said('2026-03-01', {
        kind: 'material-discarded/1',
        lot: MaterialLotId.parse('thrown away'),
        number: 20,
        why: 'dried out',
      }),
    )
    expect(staleLots(nursery, '2026-03-05').map(({ lot, daysLeft }) => [lot, daysLeft])).toEqual([
      ['past', -4],
      ['soon', 5],
    ])
  })
})

describe('slumps', () => {
  const before = Array.from({ length: 12 }, (_, index) =>
    wholeStep(`old ${index}`, '2024-03-04', '2024-04-15', 78 + (index % 5)),
  ).flat()
  const recent = (survived: number) =>
    Array.from({ length: 6 }, (_, index) =>
      wholeStep(`new ${index}`, '2026-03-02', `2026-04-${10 + index}`, survived),
    ).flat()

  test('six batches at 55 of 100 after twelve at 80 are a slump, and the first of them began it', () => {
    const [slump, ...others] = slumps(smallNursery(...before, ...recent(55)), '2026-05-01')
    expect(others).toEqual([])
    expect(slump!.of).toEqual({ by: 'step', protocol: 'cutting', step: 'rooting' })
    expect(slump!.since).toBe('2026-04-10')
    expect(slump!.steps.map(({ batch, entered, survived }) => [batch, entered, survived])).toEqual(
      Array.from({ length: 6 }, (_, index) => [`new ${index}`, 100, 55]),
    )
    // Twelve batches at 78 to 82 of 100 let expect 80, give or take what a month not seen before may do.
    for (const { expectedShare } of slump!.steps) expect(expectedShare).toBeCloseTo(0.8, 1)
    expect(slump!.chance).toBeGreaterThan(0.9)
    // 55 of 100 against 80 of 100 is 1.22 against 4: odds of 0.31; the nearest slump looked for is 0.35.
    expect(slump!.oddsRatio).toBeCloseTo(0.35, 5)
  })

  test('where one pair of hands does worse and the others as before, the slump is told of that person', () => {
    const hands = (
      days: (batch: number) => readonly [from: string, to: string],
      survived: (who: string) => number,
    ) =>
      Array.from({ length: 12 }, (_, index) => {
        const who = ['Ada', 'Ben', 'Cleo'][index % 3]!
        const [from, to] = days(index)
        return wholeStep(`${from} ${index}`, from, to, survived(who), who)
      }).flat()
    const nursery = smallNursery(
      ...hands(
        () => ['2024-03-04', '2024-04-15'],
        () => 80,
      ),
      ...hands(
        index => ['2026-03-02', `2026-04-${10 + index}`],
        who => (who === 'Ben' ? 50 : 80),
      ),
    )
    const of = slumps(nursery, '2026-05-01').find(slump => slump.of.by === 'person')!
    expect(of.of).toMatchObject({ by: 'person', person: 'Ben' })
    // Of twelve, Ben worked the second, fifth, eighth and eleventh.
    expect(of.steps.map(({ batch }) => batch)).toEqual([1, 4, 7, 10].map(index => `2026-03-02 ${index}`))
    expect(of.since).toBe('2026-04-11')
  })

  test('six more batches at 80 of 100 are none', () => {
    expect(slumps(smallNursery(...before, ...recent(80)), '2026-05-01')).toEqual([])
  })

  test('without batches from before there is nothing to fall below', () => {
    expect(slumps(smallNursery(...recent(55)), '2026-05-01')).toEqual([])
  })
})

describe('places that overflow', () => {
  test('the first week in which a bad season passes what a place holds, from this week on and a quarter ahead', () => {
    const load = (badYear: number[]) => ({
      what: 'place' as const,
      id: 'mist bed',
      name: 'Mist bed',
      unit: 'm²' as const,
      expected: badYear.map(() => 0),
      badYear,
      capacity: badYear.map(() => 20),
    })
    const full = (badYear: number[]) =>
      fullPlaces({ firstWeek: '2026-W10', loads: [load(badYear)] }, '2026-03-16').map(({ week }) => week)
    expect(full([30, 30, 19, 20, 20.5, 30])).toEqual(['2026-W14'])
    expect(full([30, 30, 20, 20])).toEqual([])
    expect(full([...Array.from({ length: 15 }, () => 0), 30])).toEqual([])
  })
})
