import type { Batch, Nursery } from '../../record/index.ts'
import { dayNumber, weekNumber, weekStart } from '../../science/index.ts'
import type {
  BatchId,
  BenchId,
  KindId,
  MethodId,
  PlaceKind,
  Protocol,
  ProtocolId,
  StepId,
} from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import type { Plan } from '../plan.ts'

/** Plants that stand, or are expected to stand, on a bench in a week. */
export interface Stand {
  readonly batch: BatchId | null
  /** Of a planned start not begun yet. */
  readonly start: string | null
  readonly kind: KindId
  readonly protocol: ProtocolId
  readonly method: MethodId
  readonly step: string
  /** The step as entries name it; null of finished plants. */
  readonly stepId: StepId | null
  readonly number: number
  readonly squareMetres: number
  /** Not told by an entry: where they are expected to stand by then. */
  readonly expected: boolean
}

export interface BenchFill {
  readonly bench: BenchId
  readonly areaSquareMetres: number
  readonly stands: readonly Stand[]
}

interface Wandering {
  readonly stand: Stand
  readonly place: PlaceKind
  readonly bench: BenchId | null
}

/** Where plants stand that entered a step so many days ago, by the typical days and survival of each step. */
const stepAfterDays = (protocol: Protocol, from: number, number: number, days: number) => {
  let left = days
  let alive = number
  for (let at = from; at < protocol.steps.length; at++) {
    const step = protocol.steps[at]!
    if (left < step.days.typical) return { at, alive }
    left -= step.days.typical
    alive *= step.survival.typical
  }
  // Finished plants stand as in the last step, as long as they are fit to be used.
  return left < protocol.usableDays ? { at: protocol.steps.length - 1, alive } : null
}

/**
 * What stands on every bench in a week. In the week of `today` it is what the entries say. Later it is what is to be
 * expected: batches go on through their steps at the typical pace, planned starts join them, and what moves to another
 * kind of place goes to the bench there with most room left.
 */
export const benchFill = (
  nursery: Nursery,
  plan: Pick<Plan, 'starts'> | null,
  week: string,
  today: string,
): BenchFill[] => {
  const monday = weekStart(weekNumber(week))
  const ahead = Math.max(0, monday - dayNumber(today))
  const all = [
    ...batchesThen(nursery, ahead, dayNumber(today)),
    ...startsThen(nursery, plan, monday, ahead > 0),
  ]
  const benches = [...nursery.benches.values()].map(bench => ({
    bench,
    area: bench.closed.reduce(
      (area, closure) =>
        dayNumber(closure.from) <= monday + 6 && dayNumber(closure.to) >= monday
          ? area - closure.areaSquareMetres
          : area,
      bench.areaSquareMetres,
    ),
    used: 0,
    stands: [] as Stand[],
  }))
  const put = (at: (typeof benches)[number], stand: Stand): void => {
    at.stands.push(stand)
    at.used += stand.squareMetres
  }
  const byId = new Map(benches.map(entry => [entry.bench.id, entry]))
  const homeless: Wandering[] = []
  for (const wandering of all) {
    const own = wandering.bench === null ? undefined : byId.get(wandering.bench)
    if (own === undefined) homeless.push(wandering)
    else put(own, wandering.stand)
  }
  const byPlace = grouped(benches, ({ bench }) => bench.place)
  for (const { place, stand } of homeless.sort((a, b) => b.stand.squareMetres - a.stand.squareMetres)) {
    const fitting = byPlace.get(place)
    if (fitting === undefined) continue
    put(
      fitting.reduce((most, bench) => (bench.area - bench.used > most.area - most.used ? bench : most)),
      stand,
    )
  }
  return benches.map(({ bench, area, stands }) => ({
    bench: bench.id,
    areaSquareMetres: Math.max(0, area),
    stands,
  }))
}

function batchesThen(nursery: Nursery, ahead: number, today: number): Wandering[] {
  return [...nursery.batches.values()].flatMap(batch => {
    const protocol = nursery.protocols.get(batch.protocol)
    return protocol === undefined
      ? []
      : [...standingThen(batch, protocol, ahead, today), ...finishedThen(batch, protocol, ahead, today)]
  })
}

function standingThen(batch: Batch, protocol: Protocol, ahead: number, today: number): Wandering[] {
  return batch.portions.flatMap(portion => {
    const from = protocol.steps.findIndex(({ id }) => id === portion.step)
    if (from === -1 || portion.number === 0) return []
    const inStep = Math.max(0, today - dayNumber(portion.since))
    // A portion that is late in its step leaves it as soon as time goes on.
    const days = Math.min(inStep, protocol.steps[from]!.days.typical - 1)
    const then =
      ahead === 0
        ? { at: from, alive: portion.number }
        : stepAfterDays(protocol, from, portion.number, days + ahead)
    return then === null
      ? []
      : stand(batch, protocol, then, then.at === from ? portion.bench : null, then.at !== from)
  })
}

function finishedThen(batch: Batch, protocol: Protocol, ahead: number, today: number): Wandering[] {
  return batch.finishedPortions.flatMap(({ number, bench, since }) => {
    if (number === 0 || (ahead > 0 && today + ahead - dayNumber(since) > protocol.usableDays)) return []
    const last = { at: protocol.steps.length - 1, alive: number }
    return stand(batch, protocol, last, bench, false).map(finished => ({
      ...finished,
      stand: { ...finished.stand, stepId: null },
    }))
  })
}

function startsThen(
  nursery: Nursery,
  plan: Pick<Plan, 'starts'> | null,
  monday: number,
  isAhead: boolean,
): Wandering[] {
  if (plan === null || !isAhead) return []
  return plan.starts.flatMap(start => {
    const protocol = nursery.protocols.get(start.protocol)
    const days = monday - weekStart(weekNumber(start.week))
    if (protocol === undefined || days < 0) return []
    const then = stepAfterDays(protocol, 0, start.number, days)
    if (then === null) return []
    return stand(
      { id: null, start: start.id, kind: start.kind },
      protocol,
      then,
      then.at === 0 ? start.bench : null,
      true,
    )
  })
}

function stand(
  of: { readonly id: BatchId | null; readonly start?: string; readonly kind: KindId },
  protocol: Protocol,
  { at, alive }: { readonly at: number; readonly alive: number },
  bench: BenchId | null,
  expected: boolean,
): Wandering[] {
  const step = protocol.steps[at]!
  if (step.plantsPerSquareMetre === null) return []
  return [
    {
      stand: {
        batch: of.id,
        start: of.start ?? null,
        kind: of.kind,
        protocol: protocol.id,
        method: protocol.method,
        step: step.name,
        stepId: step.id,
        number: Math.round(alive),
        squareMetres: alive / step.plantsPerSquareMetre.typical,
        expected,
      },
      place: step.place,
      bench,
    },
  ]
}
