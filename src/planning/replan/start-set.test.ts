import { expect, test } from 'vitest'
import { weekNumber, weekText } from '../../science/index.ts'
import { KindId, Protocol, ProtocolId } from '../../trade/index.ts'
import { MONDAY, order, protocols, smallNursery } from '../fixtures/small-nursery.ts'
import type { Plan } from '../plan.ts'
import { planSeason } from '../plan-season.ts'

const inTrays = {
  kind: 'protocol-set/1',
  protocol: Protocol.parse({ ...protocols.cutting, tray: 24, smallestBatch: 48 }),
} as const
const wanted = [inTrays, order('figs', 'fig', 100, '2026-12-31'), order('more', 'mulberry', 50, '2027-03-31')]
const plan = (nursery: ReturnType<typeof smallNursery>, previous: Plan | null) =>
  planSeason(nursery, { today: MONDAY, throughSeq: 1, seasons: 100, seed: 1, proveSeconds: 0, previous })
const figs = ({ starts }: Plan) =>
  starts
    .filter(({ kind }) => kind === 'fig')
    .map(({ week, number, set }) => ({ week, number, by: set?.entry ?? null }))

test('a start set by hand is planned in its week with its number, whole trays or not, in the place of the one it was; taken back, the plan is as it was', async () => {
  const first = await plan(smallNursery(...wanted), null)
  const [start] = first.starts.filter(({ kind }) => kind === 'fig')
  const week = weekText(weekNumber(start!.week) + 3)
  const set = {
    kind: 'start-set/1',
    kindOfTree: KindId.parse('fig'),
    protocol: ProtocolId.parse('cutting'),
    week,
    number: 205,
    insteadOf: start!.id,
  } as const

  const nursery = smallNursery(...wanted, set)
  const second = await plan(nursery, first)
  expect(figs(second)).toEqual([{ week, number: 205, by: nursery.startSets[0]!.entry }])
  expect(second.orders.find(({ order: id }) => id === 'figs')!.chance).toBeGreaterThan(0.99)
  // What it does not touch stays.
  const others = ({ starts }: Plan) =>
    starts.filter(({ kind }) => kind !== 'fig').map(({ id, number }) => ({ id, number }))
  expect(others(second)).toEqual(others(first))
  // Made again, it still stands.
  expect(figs(await plan(nursery, second))).toEqual(figs(second))

  expect(figs(await plan(smallNursery(...wanted), second))).toEqual(figs(first))
})

test('a start set in a week in which it may not begin is not planned, and the plan says so', async () => {
  const set = {
    kind: 'start-set/1',
    kindOfTree: KindId.parse('fig'),
    protocol: ProtocolId.parse('cutting'),
    week: '2026-W02',
    number: 30,
    insteadOf: null,
  } as const
  const { starts, assumed } = await plan(smallNursery(...wanted, set), null)
  expect(starts.some(({ week }) => week === '2026-W02')).toBe(false)
  expect(assumed.map(({ says }) => says)).toContain(
    '{number} {kind} were set to begin in week {week}, in which they may not begin.',
  )
})
