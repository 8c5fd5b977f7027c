import { describe, expect, test } from 'vitest'
import { BatchId, KindId, OrderId, ProtocolId, StepId } from '../../trade/index.ts'
import { order, protocols, type Said, smallNursery } from '../fixtures/small-nursery.ts'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import { takeTiming } from './take-curve-of.ts'
import { undecidedThatTake } from './undecided.ts'
import { workAgain } from './work-again.ts'
import { worthWorkingAgain } from './worth-working-again.ts'

describe('the undecided', () => {
  // Half of the takers have shown it by day 20; the others never show that they are dead.
  const timing = { toTake: { meanLog: Math.log(20), sdLog: 0.3 }, toDie: null }

  test('a share known to be 80 %, half of the takers still to show it: two thirds of the undecided take', () => {
    // Of 100, 80 take, 40 of them by now; of the 60 undecided the other 40 do: two thirds.
    const told = undecidedThatTake(timing, certain(0.8), 20, { taken: 40, dead: 0, undecided: 60 })
    expect(told.chance).toBeCloseTo(2 / 3, 2)
    expect(told.mean).toBeCloseTo(40, 0)
  })

  test('the later the day, the fewer; long after, none', () => {
    const means = [0, 15, 20, 30, 60].map(
      day =>
        undecidedThatTake(timing, { alpha: 8, beta: 2 }, day, { taken: 10, dead: 0, undecided: 30 }).mean,
    )
    expect([...means].sort((a, b) => b - a)).toEqual(means)
    expect(means.at(-1)).toBeLessThan(0.2)
  })

  test('a batch in which many have died already is a poor batch: fewer of its undecided take', () => {
    const chance = (taken: number, dead: number) =>
      undecidedThatTake(timing, { alpha: 8, beta: 2 }, 20, { taken, dead, undecided: 20 }).chance
    expect(chance(10, 40)).toBeLessThan(chance(40, 10))
  })

  test('when plants take is learnt from the looks of four batches or more, else read off the days of the step', () => {
    const said = (batches: number): Said[] =>
      Array.from({ length: batches }, (_, b) => [
        {
          on: '2025-03-03',
          body: {
            kind: 'batch-started/1',
            batch: BatchId.parse(`b${b}`),
            name: `b${b}`,
            kindOfTree: KindId.parse('fig'),
            protocol: ProtocolId.parse('cutting'),
            number: 100,
            sources: [],
            bench: null,
            workedBy: [],
            candidates: [],
          },
        } as Said,
        // Ten days after: none. Sixteen: 40. Forty: 80, and 20 dead. So half of the takers show it on day 16 or so.
        ...[
          ['2025-03-13', 0, 0],
          ['2025-03-19', 40, 0],
          ['2025-04-12', 80, 20],
        ].map(
          ([on, taken, dead]): Said => ({
            on: String(on),
            body: {
              kind: 'counted/1',
              batch: BatchId.parse(`b${b}`),
              step: StepId.parse('rooting'),
              sign: 'alive',
              taken: Number(taken),
              dead: Number(dead),
              undecided: 100 - Number(taken) - Number(dead),
            },
          }),
        ),
      ]).flat()
    const rooting = protocols.cutting.steps[0]!
    const few = takeTiming(smallNursery(...said(3)), protocols.cutting, rooting)
    expect(few).toMatchObject({ batches: 0, toDie: null })
    expect(Math.exp(few.toTake.meanLog)).toBeCloseTo(42 / Math.sqrt(3), 1)
    const learnt = takeTiming(smallNursery(...said(4)), protocols.cutting, rooting)
    expect(learnt.batches).toBe(4)
    expect(Math.exp(learnt.toTake.meanLog)).toBeGreaterThan(13)
    expect(Math.exp(learnt.toTake.meanLog)).toBeLessThan(19)
  })
})

describe('working failed stocks again', () => {
  // 70 days and the middle of the start week, 73.5: ready ten weeks later. Half of the grafts take.
  const season = (openWeeks: number[], dueWeek = 20) =>
    tinySeason({
      kinds: [tinyKind('worked fig'), tinyKind('guava')],
      ways: [{ kind: 0, steps: [{ ...certain(0.5), days: 70 }], openWeeks, costPerPlant: 2 }],
      orders: [
        { kind: 0, number: 100, dueWeek, price: 10 },
        { kind: 1, number: 100, dueWeek, price: 10 },
      ],
    })

  test('pays when the trees reach an order that lacks them: worth by hand', () => {
    const found = worthWorkingAgain(season([0, 1, 2, 10, 11, 15]), 0, 100, [{ order: 0, late: 0, short: 30 }])
    // 60 grafts give the 30 trees; each is worth 10 · 1.5, each graft costs 2.
    expect(found).toMatchObject({ number: 60, trees: 30, cost: 120, worth: 30 * 15 - 120 })
    // Worked in week 10, ready in week 20; week 11 is too late.
    expect(found.lastWeek).toBe(10)
    expect(found.helps).toEqual([{ order: 0, lastWeek: 10, trees: 30 }])
  })

  test('is limited by the stocks that failed', () => {
    const found = worthWorkingAgain(season([0]), 0, 20, [{ order: 0, late: 0, short: 30 }])
    expect(found).toMatchObject({ number: 20, trees: 10, worth: 10 * 15 - 40 })
  })

  test('helps nobody when it is too late, out of season, of another kind, or nothing lacks', () => {
    const late = worthWorkingAgain(season([0], 9), 0, 100, [{ order: 0, late: 0, short: 30 }])
    expect(late).toMatchObject({ number: 0, lastWeek: null, worth: 0 })
    const closed = worthWorkingAgain(season([4]), 0, 100, [{ order: 0, late: 0, short: 30 }])
    expect(closed).toMatchObject({ number: 0, lastWeek: 4 })
    const other = worthWorkingAgain(season([0]), 0, 100, [{ order: 1, late: 0, short: 30 }])
    expect(other.lastWeek).toBeNull()
    expect(worthWorkingAgain(season([0]), 0, 100, [{ order: 0, late: 0, short: 0 }]).number).toBe(0)
  })

  test('a late tree is worth a week of lateness, not the whole tree: then it may not pay', () => {
    const found = worthWorkingAgain(season([0]), 0, 100, [{ order: 0, late: 30, short: 0 }])
    expect(found.worth).toBeCloseTo(30 * 0.5 - 120, 9)
  })
})

describe('a counted batch', () => {
  const BATCH = BatchId.parse('b')
  const lacks20 = (kind: string) => ({
    orders: [{ order: OrderId.parse(`of ${kind}`), late: 0, short: 20 }] as never,
  })
  const counted = (
    kind: string,
    method: keyof typeof protocols,
    looks: readonly { readonly on: string; readonly taken: number; readonly dead: number }[],
  ) =>
    smallNursery(
      // Nothing must be done to the wood days before: it can be worked today.
      { kind: 'protocol-set/1', protocol: { ...protocols[method], before: [] } },
      order(`of ${kind}`, kind, 100, '2027-06-01'),
      {
        on: '2026-07-01',
        body: {
          kind: 'batch-started/1',
          batch: BATCH,
          name: 'b',
          kindOfTree: KindId.parse(kind),
          protocol: ProtocolId.parse(protocols[method].id),
          number: 100,
          sources: [],
          bench: null,
          workedBy: [],
          candidates: [],
        },
      },
      ...looks.map(
        ({ on, taken, dead }): Said => ({
          on,
          body: {
            kind: 'counted/1',
            batch: BATCH,
            step: protocols[method].steps[0]!.id,
            sign: 'alive',
            taken,
            dead,
            undecided: 100 - taken - dead,
          },
        }),
      ),
    )

  test('of grafts: the stocks that failed are worked again for the order that lacks, in number by what takes', () => {
    const nursery = counted('pear', 'veneer', [{ on: '2026-07-20', taken: 30, dead: 60 }])
    const again = workAgain(nursery, lacks20('pear'), BATCH, '2026-07-20')!
    expect(again).toMatchObject({ failed: 60, undecided: 10, helps: [{ order: 'of pear', trees: 20 }] })
    // Eight in ten heal, nine in ten of those grow on: 20 trees of 28 grafts.
    expect(again.number).toBeGreaterThanOrEqual(27)
    expect(again.number).toBeLessThanOrEqual(29)
    expect(again.trees).toBeCloseTo(20, 0)
    expect(again.worth).toBeGreaterThan(0)
  })

  test('of cuttings: nothing is left of the dead to be worked; the undecided are still told', () => {
    const dead = counted('fig', 'cutting', [{ on: '2026-07-20', taken: 15, dead: 85 }])
    expect(workAgain(dead, lacks20('fig'), BATCH, '2026-07-20')).toBeNull()
    const undecided = counted('fig', 'cutting', [{ on: '2026-07-20', taken: 15, dead: 60 }])
    expect(workAgain(undecided, lacks20('fig'), BATCH, '2026-07-20')).toMatchObject({
      undecided: 25,
      failed: 0,
      number: 0,
      worth: 0,
    })
  })
})
