import { type Plan, type PlanMemory, planMemory, planSeason } from '../src/planning/index.ts'
import type { Body, Nursery } from '../src/record/index.ts'
import { BatchId } from '../src/trade/index.ts'
import { nurseryOf, shareAsAsked, TODAY } from './planned.ts'

const wish = { today: TODAY, throughSeq: 0, seasons: 2000, seed: 1 }

/** Grafts that stand before the plan is made. */
const GRAFTS = 200
/** Of them counted as alive, where seven in ten or so were expected. */
const TAKEN = 90

/** Plans 300 kinds, then again after one batch was counted, in the same process. Goal: the second under 1 s. */
export default async () => {
  const { begun, counted } = oneBatch()
  const memory = planMemory()
  const first = await timed(nurseryOf(300, [begun]), memory, null)
  const second = await timed(nurseryOf(300, [begun, counted]), memory, first.plan)
  const numbers = new Map(first.plan.starts.map(({ id, number }) => [id, number]))
  const changed = second.plan.starts.filter(({ id, number }) => numbers.get(id) !== number).length
  return {
    figures: {
      secondsFirst: first.seconds,
      seconds: second.seconds,
      cpuSeconds: second.cpuSeconds,
      gapFirst: first.plan.gapShare,
      gap: second.plan.gapShare,
      starts: second.plan.starts.length,
      startsChanged: changed,
      ordersAsSureAsAsked: shareAsAsked(second.plan),
      peakMB: Math.round(process.resourceUsage().maxRSS / 1024),
    },
    rivals: {},
    notes: ['no plan was accepted in between: what was shown stays where it serves; goal: under 1 s'],
  }
}

async function timed(nursery: Nursery, memory: PlanMemory, previous: Plan | null) {
  const began = performance.now()
  const cpu = process.cpuUsage()
  const plan = await planSeason(nursery, { ...wish, previous }, { memory })
  const { user, system } = process.cpuUsage(cpu)
  return { plan, seconds: (performance.now() - began) / 1000, cpuSeconds: (user + system) / 1e6 }
}

/** Grafts of the first kind that is whip grafted and ordered for a week in which they can still be sold; and their count. */
function oneBatch() {
  const { orders, kinds, protocols } = nurseryOf(300)
  const ordered = [...orders.values()].map(({ order }) => order).filter(({ due }) => due < '2027-04-01')
  const way = ordered
    .flatMap(({ kind }) => kinds.get(kind)!.ways.map(({ protocol }) => ({ kind, protocol })))
    .find(({ protocol }) => protocol.startsWith('whip'))!
  const [step] = protocols.get(way.protocol)!.steps
  const batch = BatchId.parse('grafts of December')
  const begun: Body = {
    kind: 'batch-started/1',
    batch,
    name: batch,
    kindOfTree: way.kind,
    protocol: way.protocol,
    number: GRAFTS,
    sources: [],
    bench: null,
    workedBy: [],
    candidates: [],
  }
  const counted: Body = {
    kind: 'counted/1',
    batch,
    step: step!.id,
    sign: step!.sign,
    taken: TAKEN,
    dead: GRAFTS - TAKEN,
    undecided: 0,
  }
  return { begun: { on: '2025-12-15', body: begun }, counted: { on: TODAY, body: counted } }
}
