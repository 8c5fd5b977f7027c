import type { Batch, Held } from '../../record/index.ts'
import { grouped } from '../grouped.ts'
import type { Change } from '../plan.ts'
import { capital } from './limits.ts'
import { type Planned, startedNoun, startId, weekSaid } from './planned.ts'

/** Fewer plants than this, or a smaller part of the start, are no change worth saying. */
const LEAST_PART = 0.05

interface Reason {
  readonly text: string
  readonly order: Change['order']
  readonly batch: Change['batch']
}

/** What differs from the starts accepted last, each with the likeliest reason that the record gives. */
export function changesOf(planned: Planned): Change[] {
  const { season, starts, nursery } = planned
  if (!nursery.acceptedPlan) return []
  const accepted = new Map(season.accepted.map(a => [startId(season, a.way, a.week), a]))
  const now = new Map(starts.map(start => [start.id, start]))
  const differences: { way: number; week: number; id: string; by: number; before: number }[] = []
  for (const id of new Set([...accepted.keys(), ...now.keys()])) {
    const { way, week } = now.get(id) ?? accepted.get(id)!
    const before = accepted.get(id)?.number ?? 0
    const by = (now.get(id)?.number ?? 0) - before
    if (Math.abs(by) > LEAST_PART * Math.max(1, before)) differences.push({ way, week, id, by, before })
  }
  return [...grouped(differences, ({ way }) => way).entries()]
    .flatMap(([way, of]) => {
      const reason = reasonFor(planned, way)
      const since = reason.text === '' ? '' : `, since ${reason.text}`
      const make = (sentence: string, id: string): Change => ({
        sentence: `${capital(sentence)}${since}.`,
        because: reason.text,
        order: reason.order,
        start: id,
        batch: reason.batch,
      })
      const moved = asMove(of)
      const noun = (number: number) => startedNoun(season.ways[way]!.method, number)
      const kind = season.kinds[season.ways[way]!.kind]!.name
      if (moved)
        return [
          make(
            `${moved.number} ${noun(moved.number)} of ${kind} move from week ${weekSaid(season, moved.from)} to week ${weekSaid(season, moved.to)}`,
            moved.id,
          ),
        ]
      return of.map(({ week, by, before, id }) => {
        const at = `in week ${weekSaid(season, week)}`
        if (before === 0) return make(`${by} ${noun(by)} of ${kind} ${at}, not planned before`, id)
        if (by > 0) return make(`${by} more ${noun(by)} of ${kind} ${at}`, id)
        if (before + by === 0) return make(`none of the ${before} ${noun(before)} of ${kind} ${at}`, id)
        return make(`${-by} fewer ${noun(-by)} of ${kind} ${at}`, id)
      })
    })
    .sort((a, b) => (a.start! < b.start! ? -1 : 1))
}

function asMove(of: readonly { week: number; by: number; id: string; before: number }[]) {
  if (of.length !== 2) return null
  const [from, to] = of[0]!.by < 0 ? of : [of[1]!, of[0]!]
  if (!from || !to || from.by >= 0 || to.by !== -from.by) return null
  return { number: to.by, from: from.week, to: to.week, id: to.id }
}

/** What happened since the plan was accepted that bears on a way: its batches, orders and mothers, then the nursery. */
function reasonFor(planned: Planned, way: number): Reason {
  const { season, nursery } = planned
  const since = nursery.acceptedPlan!.on
  const { kind } = season.ways[way]!
  const users = season.ways
    .filter(w => w.courses.some(c => c.rootstock?.kinds.includes(kind)))
    .map(w => w.kind)
  const kinds = new Set([kind, ...users, ...(season.ways[way]!.courses[0]?.rootstock?.kinds ?? [])])
  const ids = new Set([...kinds].map(index => season.kinds[index]!.id))

  const counted = [...nursery.batches.values()]
    .filter(batch => ids.has(batch.kind))
    .flatMap(batch => countedSince(planned, batch, since))
    .sort((a, b) => Math.abs(b.expected - b.counted) - Math.abs(a.expected - a.counted))[0]
  if (counted)
    return {
      text: `batch ${counted.batch.name} counted ${counted.counted} where ${counted.expected} were expected`,
      order: null,
      batch: counted.batch.id,
    }

  for (const { order, cancelled, dispatched } of nursery.orders.values()) {
    if (!ids.has(order.kind) || dispatched >= order.number) continue
    const isKnown = order.id in nursery.acceptedPlan!.chances
    if (!cancelled && !isKnown) return { text: `order ${order.id} came in`, order: order.id, batch: null }
    if (cancelled && isKnown) return { text: `order ${order.id} was cancelled`, order: order.id, batch: null }
  }
  const pools = new Set(season.ways[way]!.courses.flatMap(c => c.material.map(({ pool }) => pool)))
  const cultivars = new Set([...pools].map(pool => season.pools[pool]!.cultivar))
  for (const { mother, retired } of nursery.mothers.values())
    if (retired && retired.on >= since && cultivars.has(mother.cultivar))
      return { text: `mother tree ${mother.name} is lost (${retired.why})`, order: null, batch: null }
  for (const hold of nursery.holds.values()) {
    if (hold.since < since || hold.released) continue
    const name = heldName(planned, hold.on)
    return { text: `${name} is on hold (${hold.why})`, order: null, batch: null }
  }
  const rate = nursery.rateSets.findLast(
    set =>
      set.on >= since &&
      set.protocol === season.ways[way]!.protocol.id &&
      (set.kind === null || ids.has(set.kind)),
  )
  if (rate) return { text: `the rate was set anew (${rate.why})`, order: null, batch: null }
  return { text: '', order: null, batch: null }
}

function heldName({ nursery }: Planned, on: Held): string {
  switch (on.what) {
    case 'mother':
      return nursery.mothers.get(on.mother)?.mother.name ?? on.mother
    case 'batch':
      return `batch ${nursery.batches.get(on.batch)?.name ?? on.batch}`
    case 'bench':
      return nursery.benches.get(on.bench)?.name ?? on.bench
    case 'lineage':
      return 'mother' in on.of
        ? (nursery.mothers.get(on.of.mother)?.mother.name ?? on.of.mother)
        : `batch ${nursery.batches.get(on.of.batch)?.name ?? on.of.batch}`
  }
}

/** Counts made since a day, against what the step's rate let expect of those that had entered it. */
function countedSince({ season }: Planned, batch: Batch, since: string) {
  const live = season.batches.find(({ id }) => id === batch.id)
  return batch.outcomes.flatMap(outcome => {
    const look = outcome.looks.filter(({ on }) => on >= since).at(-1)
    if (!look) return []
    const step = live?.course.steps.find(({ step: id }) => id === outcome.step)
    if (!step) return []
    const expected = Math.round((outcome.entered * step.alpha) / (step.alpha + step.beta))
    const counted = look.taken
    const isOdd =
      Math.abs(counted - expected) > Math.max(2, 0.05 * expected) &&
      (counted < expected || look.undecided === 0)
    const mayCatchUp = counted < expected && counted + look.undecided >= expected
    return isOdd && !mayCatchUp ? [{ batch, counted, expected }] : []
  })
}
