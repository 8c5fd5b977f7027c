import { describe, expect, test } from 'vitest'
import { BatchId, commonPractice, KindId, ProtocolId, StepId } from '../../trade/index.ts'
import { MONDAY, order, type Said, smallNursery } from '../fixtures/small-nursery.ts'
import { planSeason } from '../plan-season.ts'

const step = (id: string) => StepId.parse(id)
const figs = order('figs', 'fig', 500, '2026-12-31')

const stuck = (batch: string, number: number, on: string): Said => ({
  on,
  body: {
    kind: 'batch-started/1',
    batch: BatchId.parse(batch),
    name: batch,
    kindOfTree: KindId.parse('fig'),
    protocol: ProtocolId.parse('cutting'),
    number,
    sources: [],
    bench: null,
    workedBy: [],
    candidates: [],
  },
})
const counted = (batch: string, taken: number, dead: number, undecided: number, on: string): Said => ({
  on,
  body: {
    kind: 'counted/1',
    batch: BatchId.parse(batch),
    step: step('rooting'),
    sign: 'alive',
    taken,
    dead,
    undecided,
  },
})
const potted = (batch: string, number: number, on: string): Said => ({
  on,
  body: {
    kind: 'advanced/1',
    batch: BatchId.parse(batch),
    from: step('rooting'),
    to: step('growing on'),
    number,
    bench: null,
  },
})
/** Five batches of a hundred that rooted at half and were finished: fewer trees than are ordered. */
const halves: Said[] = [0, 1, 2, 3, 4].flatMap((i): Said[] => [
  stuck(`old ${i}`, 100, '2025-04-07'),
  counted(`old ${i}`, 49 + (i % 3), 51 - (i % 3), 0, '2025-06-02'),
  potted(`old ${i}`, 49 + (i % 3), '2025-06-02'),
  {
    on: '2025-11-03',
    body: { kind: 'finished/1', batch: BatchId.parse(`old ${i}`), number: 45, grade: '' },
  },
])
const rooting = (typical: number): Said => ({
  kind: 'rate-set/1',
  protocol: ProtocolId.parse('cutting'),
  step: step('rooting'),
  kindOfTree: null,
  survival: commonPractice(typical - 0.02, typical, typical + 0.02),
  why: 'new bottom heat',
})

const ladderOf = async (today: string, ...said: readonly Said[]) => {
  const plan = await planSeason(smallNursery(figs, ...said), {
    today,
    throughSeq: 1,
    seasons: 200,
    seed: 1,
    proveSeconds: 0,
  })
  // Of starts first.
  return [...plan.orders[0]!.ladders].sort((a, b) => Number(a.start === null) - Number(b.start === null))
}

describe('the rate at each rung of the count-back says where it comes from', () => {
  test('without counts it is the protocol’s figure with its basis, and no batch stands behind it', async () => {
    const [ladder] = await ladderOf(MONDAY)
    const [rooted, grown] = ladder!.rungs
    expect(rooted!.rate).toMatchObject({ from: 'facts', basis: 'common practice', batches: 0 })
    expect(rooted!.rate!.mean).toBeCloseTo(0.8, 2)
    expect(grown!.rate!.mean).toBeCloseTo(0.9, 2)
    expect(grown!.number / rooted!.number).toBeCloseTo(rooted!.rate!.mean, 6)
  })

  test('with the nursery’s own counts it is learnt from them, says of how many batches, and the rung counts with it', async () => {
    const [ladder] = await ladderOf(MONDAY, ...halves)
    const [rooted, grown] = ladder!.rungs
    expect(rooted!.rate).toMatchObject({ from: 'records', batches: 5 })
    expect(rooted!.rate!.basis).toMatch(/^5 batches of this kind, 0 batches of other kinds/)
    expect(rooted!.rate!.mean).toBeLessThan(0.7)
    expect(grown!.number / rooted!.number).toBeCloseTo(rooted!.rate!.mean, 6)
  })

  test('what the nursery has set overrules both, and shows its reason', async () => {
    const [ladder] = await ladderOf(MONDAY, ...halves, rooting(0.9))
    const [rooted] = ladder!.rungs
    expect(rooted!.rate).toMatchObject({ from: 'set by the nursery', basis: 'new bottom heat', batches: 0 })
    expect(rooted!.rate!.mean).toBeCloseTo(0.9, 2)
  })

  test('of a batch that was counted it is the count, not the rate of the step', async () => {
    // Of 130 stuck 110 have rooted and 20 are not yet to tell: nearly all of those that rooted will leave the step.
    const ladders = await ladderOf(
      '2026-04-13',
      stuck('118', 130, '2026-03-16'),
      counted('118', 110, 0, 20, '2026-04-13'),
    )
    const { rungs } = ladders.find(({ batch }) => batch === '118')!
    expect(rungs[0]!.rate).toMatchObject({ from: 'records', batches: 1 })
    expect(rungs[0]!.rate!.basis).toMatch(/^counted on 2026-04-13: 110 of 130 standing have taken/)
    expect(rungs[0]!.rate!.mean).toBeGreaterThan(0.88)
    expect(rungs[0]!.rate!.low).toBeLessThan(rungs[0]!.rate!.mean)
    expect(rungs[1]!.rate).toMatchObject({ from: 'facts', basis: 'common practice' })
    expect(rungs[1]!.number / rungs[0]!.number).toBeCloseTo(rungs[0]!.rate!.mean, 6)
  })
})
