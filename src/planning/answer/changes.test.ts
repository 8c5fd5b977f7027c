import { describe, expect, test } from 'vitest'
import { type Entry, foldEntries } from '../../record/index.ts'
import { BatchId, inEnglish, KindId, ProtocolId, StepId } from '../../trade/index.ts'
import { bench, MONDAY, order, type Said, smallEntries } from '../fixtures/small-nursery.ts'
import type { Plan } from '../plan.ts'
import { planSeason } from '../plan-season.ts'

/** The plan of the small nursery on a day; `before` is the plan shown until then, and what was said since is the news. */
const planned = (
  today: string,
  said: readonly Said[],
  since: readonly Said[] = [],
  before: Plan | null = null,
) => {
  const entries = smallEntries(...said, ...since)
  return planSeason(foldEntries(entries), {
    today,
    throughSeq: entries.length,
    seasons: 200,
    seed: 1,
    proveSeconds: 0.5,
    previous: before,
    news: entries.slice(entries.length - since.length) as Entry[],
  })
}
const sentences = (plan: Plan) => plan.changes.map(({ sentence }) => inEnglish(sentence))

const batch118 = (number: number): Said => ({
  on: '2026-03-02',
  body: {
    kind: 'batch-started/1',
    batch: BatchId.parse('b118'),
    name: '118',
    kindOfTree: KindId.parse('fig'),
    protocol: ProtocolId.parse('cutting'),
    number,
    sources: [],
    bench: null,
    workedBy: [],
    candidates: [],
  },
})
const counted = (taken: number, dead: number, undecided = 0): Said => ({
  on: '2026-04-13',
  body: {
    kind: 'counted/1',
    batch: BatchId.parse('b118'),
    step: StepId.parse('rooting'),
    sign: 'alive',
    taken,
    dead,
    undecided,
  },
})

describe('without an accepted plan, a plan is compared with the one before', () => {
  const said = [batch118(105), order('figs', 'fig', 72, '2026-12-31')]

  test('a poor count: how many more are stuck, in which week, and that the count is why', async () => {
    const before = await planned('2026-04-13', said)
    expect(before.changes).toEqual([])
    // 80 in 100 root and 90 of these grow on: 105 cuttings are enough for 72, and 52 of 105 are not.
    const after = await planned('2026-04-13', said, [counted(52, 53)], before)
    const fig = after.changes.find(({ start }) => start !== null)!
    expect(inEnglish(fig.sentence)).toMatch(
      /^\d+ (more )?cuttings of fig in week \d+(, not planned before)?, since batch 118 counted 52 where 84 were expected\.$/,
    )
    expect(fig.batch).toBe('b118')
    // 52 · 0.9 = 47 of 72: 25 are lacking, 35 cuttings and some cover.
    const more = after.starts.reduce((sum, { number }) => sum + number, 0)
    expect(more).toBeGreaterThanOrEqual(35)
    expect(more).toBeLessThanOrEqual(50)
  })

  test('where nothing can be begun any more, the order says how its chance fell, and since when', async () => {
    const late = [batch118(105), order('figs', 'fig', 72, '2026-08-01')]
    const before = await planned('2026-04-13', late)
    const after = await planned('2026-04-13', late, [counted(52, 53)], before)
    const was = Math.round(100 * before.orders[0]!.chance)
    expect(was).toBeGreaterThan(50)
    expect(sentences(after)[0]).toBe(
      `Order figs is now 0 in 100 instead of ${was}, since batch 118 counted 52 where 84 were expected.`,
    )
  })

  test('an order that is surer after a poor count owes it to what was planned anew, and says so', async () => {
    const before = await planned('2026-04-13', said)
    const after = await planned('2026-04-13', said, [counted(52, 53)], {
      ...before,
      orders: before.orders.map(one => ({ ...one, chance: 0.6 })),
    })
    expect(sentences(after)[0]).toMatch(
      /^Order figs is now \d+ in 100 instead of 60: planned anew, since batch 118 counted 52 where 84 were expected\.$/,
    )
  })

  test('what is not yet to tell is said beside what took', async () => {
    const late = [batch118(105), order('figs', 'fig', 72, '2026-08-01')]
    const before = await planned('2026-04-13', late)
    const after = await planned('2026-04-13', late, [counted(40, 35, 30)], before)
    expect(sentences(after)[0]).toContain(
      'since batch 118 counted 40 and 30 not yet to tell, where 84 were expected',
    )
  })

  test('a start that was begun as planned is no change', async () => {
    const orders = [order('figs', 'fig', 72, '2026-09-06', { earliest: '2026-08-31' })]
    const before = await planned('2026-04-27', orders)
    const first = before.starts[0]!
    const began: Said = { ...(batch118(first.number) as { body: object }), on: '2026-04-29' } as Said
    const after = await planned('2026-04-29', orders, [began], before)
    expect(after.changes.filter(({ start }) => start !== null)).toEqual([])
  })

  test('an order that takes the room of another: the other is told for whom it gave way, and where', async () => {
    // One square metre of mist for both, and figs are worth twice the mulberries. Planned anew, as when something that was
    // registered has changed too: otherwise what was shown would stand.
    const tight = [bench('mist bed', 1), order('berries', 'mulberry', 130, '2026-12-31')]
    const before = await planned(MONDAY, tight)
    const figs = order('figs', 'fig', 130, '2026-12-31')
    const after = await planned(MONDAY, tight, [figs], { ...before, restsOn: -1 })
    expect(sentences(after)[0]).toMatch(
      /^Order berries is now \d+ in 100 instead of \d+, since order figs came in \(130\), and both draw on the mist bed\.$/,
    )
  })

  test('what no entry explains is said as such, in one sentence', async () => {
    const orders = [order('figs', 'fig', 72, '2026-12-31')]
    const before = await planned(MONDAY, orders)
    const other = { ...before, starts: before.starts.map(start => ({ ...start, number: 2 * start.number })) }
    const after = await planned(MONDAY, orders, [], other)
    expect(sentences(after)).toEqual([
      expect.stringMatching(
        /^\d+ kinds? of start changes?( and [^;]+)?; nothing entered since then bears on it/,
      ),
    ])
  })
})
