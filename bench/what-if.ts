import { makeDemoEntries } from '../src/demo/index.ts'
import {
  type PlanMemory,
  planMemory,
  planSeason,
  type Supposed,
  whatIf,
  whatIfMemory,
} from '../src/planning/index.ts'
import { foldEntries, type Nursery } from '../src/record/index.ts'
import { nurseryOf, TODAY } from './planned.ts'

const DEMO_DAY = '2026-05-19'

/**
 * What if a bench, an order, its sureness or a rate were another: of the invented nursery and of 300 kinds, asked one after
 * another of a plan that is there. The first question also reads and solves the plan as it is.
 */
export default async () => ({
  figures: {
    ...(await asked('demo', foldEntries(makeDemoEntries({ seed: 1, today: DEMO_DAY })), DEMO_DAY)),
    ...(await asked('300 kinds', nurseryOf(300), TODAY)),
    peakMB: Math.round(process.resourceUsage().maxRSS / 1024),
  },
  rivals: {},
  notes: ['against the plan made before, in the same process and the same 2,000 seasons'],
})

async function asked(name: string, nursery: Nursery, today: string): Promise<Record<string, number>> {
  const memory: PlanMemory = planMemory()
  const wish = { today, throughSeq: 0, seasons: 2000, seed: 1 }
  const began = performance.now()
  const plan = await planSeason(nursery, { ...wish, previous: null }, { memory })
  const figures: Record<string, number> = { [`${name}: plan seconds`]: since(began) }
  const questions = whatIfMemory(memory.simulated)
  for (const [what, supposed] of questionsTo(nursery)) {
    const begin = performance.now()
    const cpu = process.cpuUsage()
    const answer = await whatIf(
      { nursery, plan, supposed, today, seasons: plan.seasonsSimulated, seed: wish.seed },
      { memory: questions },
    )
    const { user, system } = process.cpuUsage(cpu)
    figures[`${name}: ${what} seconds`] = since(begin)
    figures[`${name}: ${what} cpuSeconds`] = (user + system) / 1e6
    figures[`${name}: ${what} starts moved`] = answer!.starts.length
  }
  return figures
}

const since = (began: number) => (performance.now() - began) / 1000

function questionsTo(nursery: Nursery): readonly (readonly [string, Supposed])[] {
  const [bench] = [...nursery.benches.values()].filter(({ place }) => place === 'mist bed')
  const open = [...nursery.orders.values()].filter(
    ({ cancelled, order, dispatched }) => !cancelled && dispatched < order.number,
  )
  const { order } = open[Math.floor(open.length / 2)]!
  const [way] = nursery.kinds.get(order.kind)!.ways
  const { steps } = nursery.protocols.get(way!.protocol)!
  const bed = (share: number): Supposed => ({
    kind: 'bench-set/1',
    bench: { ...bench!, areaSquareMetres: share * bench!.areaSquareMetres },
  })
  const changed = (more: Partial<typeof order>): Supposed => ({
    kind: 'order-changed/1',
    order: { ...order, ...more },
    why: '',
  })
  return [
    ['first question', bed(1.05)],
    ['more mist bed', bed(1.1)],
    ['less mist bed', bed(0.8)],
    ['larger order', changed({ number: Math.round(1.5 * order.number) })],
    ['surer order', changed({ sure: 0.97 })],
    [
      'poorer rate',
      {
        kind: 'rate-set/1',
        protocol: way!.protocol,
        step: steps[0]!.id,
        kindOfTree: order.kind,
        survival: { ...steps[0]!.survival, low: 0.5, typical: 0.55, high: 0.6 },
        why: 'supposed',
      },
    ],
  ]
}
