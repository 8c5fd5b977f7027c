import { expect, test } from 'vitest'
import { dayText, seededRandom } from '../../science/index.ts'
import type { BatchId } from '../../trade/index.ts'
import type { Entry } from '../entry.ts'
import { startOf, teller } from '../example-entries.ts'
import { exampleRegisters } from '../example-registers.ts'
import { foldEntries } from '../fold/fold.ts'
import type { Nursery } from '../state.ts'
import type { Ref } from './graph.ts'
import { lineageOf, type Trace } from './trace.ts'

const MOTHERS = ['M1', 'M2']
const firstDay = 16_500

/**
 * A nursery of many batches over ten years: cut from mothers, worked on each other with wood of mothers or of other
 * batches, split, put together, worked over, each drawn from any of the hundreds before it; some told too late.
 */
function manyBatches(batches: number, seed: number): Entry[] {
  const dice = seededRandom(seed)
  const below = (n: number) => Math.floor(dice.uniform() * n)
  const say = teller()
  const entries: Entry[] = [...exampleRegisters]
  for (let i = 0; i < batches; i++) {
    const day = firstDay + Math.floor((i / batches) * 3650) - (below(20) === 0 ? below(200) : 0)
    const tell = (body: object) => entries.push(say(dayText(day), body))
    const earlier = () => `B${Math.max(0, i - 1 - below(400))}`
    const wood = () =>
      below(2) === 0
        ? { from: 'mother', mother: MOTHERS[below(2)], material: 'scion sticks', number: 1 + below(9) }
        : { from: 'batch', batch: earlier(), as: 'scion', number: 1 + below(9) }
    const way = i < 20 ? 0 : below(10)
    if (way < 2)
      tell(
        startOf(`B${i}`, 50, [
          { from: 'mother', mother: MOTHERS[below(2)], material: 'cuttings', number: 50 },
        ]),
      )
    else if (way < 7)
      tell(
        startOf(`B${i}`, 9, [
          { from: 'batch', batch: earlier(), as: 'rootstock', number: 9 },
          wood(),
          ...(below(4) === 0 ? [wood()] : []),
        ]),
      )
    else
      tell({
        kind: 'split/1',
        batch: earlier(),
        step: 'mist',
        number: 1 + below(5),
        into: `B${i}`,
        name: `B${i}`,
        why: '',
      })
    if (below(8) === 0)
      tell({ kind: 'joined/1', batch: earlier(), into: earlier(), step: 'mist', number: 1 + below(5) })
    if (below(12) === 0)
      tell({
        kind: 'reworked/1',
        batch: earlier(),
        step: 'mist',
        number: 2,
        kindOfTree: 'tree',
        protocol: 'grafting',
        sources: [wood()],
      })
  }
  return entries
}

interface Edge {
  readonly from: string
  readonly to: string
  readonly on: string
  readonly number: number
  readonly atBirth: boolean
}

const key = ({ what, id }: Ref) => `${what} ${id}`

/** Every passing of plants or wood, straight from the batches. No mother here gives by way of a lot. */
const edgesOf = ({ batches }: Nursery): Edge[] =>
  [...batches.values()].flatMap(({ id, origins }) =>
    origins.map(({ from, id: parent, on, number, atBirth }) => {
      const first = from === 'batch' ? (batches.get(parent as BatchId)?.startedOn ?? '') : ''
      return { from: `${from} ${parent}`, to: `batch ${id}`, on: [on, first].sort()[1]!, number, atBirth }
    }),
  )

/** Goes over all passings again and again until nothing new is found: slow, and plain to see that it is right. */
function goOver(edges: readonly Edge[], root: string, way: 'down' | 'up'): Map<string, number> {
  const down = way === 'down'
  /** Down: the first day on which it carries; up: the last on which something went from it. */
  const days = new Map([[root, down ? '' : '9999']])
  const goes = ({ from, to, on, atBirth }: Edge): boolean => {
    const day = days.get(down ? from : to)
    return day !== undefined && (down ? on >= day : atBirth || on <= day)
  }
  for (let changed = true; changed; ) {
    changed = false
    for (const edge of edges) {
      if (!goes(edge)) continue
      const end = down ? edge.to : edge.from
      const day = down && edge.atBirth ? '' : edge.on
      const before = days.get(end)
      if (before !== undefined && (down ? before <= day : before >= day)) continue
      days.set(end, day)
      changed = true
    }
  }
  const numbers = new Map<string, number>()
  for (const edge of edges) {
    if (!goes(edge)) continue
    const end = down ? edge.to : edge.from
    numbers.set(end, (numbers.get(end) ?? 0) + edge.number)
  }
  numbers.delete(root)
  return numbers
}

const numbersIn = ({ reached }: Trace) => new Map(reached.map(({ ref, number }) => [key(ref), number]))

test.each([1, 2])(
  'over 10,000 batches of a random history, lineage and its numbers are those found by going over every passing (seed %i)',
  seed => {
    const nursery = foldEntries(manyBatches(10_000, seed))
    expect(nursery.batches.size).toBe(10_000)
    const lineage = lineageOf(nursery)
    const edges = edgesOf(nursery)
    const dice = seededRandom(seed)
    const roots: Ref[] = [
      { what: 'mother', id: 'M1' },
      ...Array.from({ length: 4 }, () => ({
        what: 'batch' as const,
        id: `B${Math.floor(dice.uniform() * 10_000)}`,
      })),
    ]
    let most = 0
    for (const root of roots) {
      const down = numbersIn(lineage.descendants(root))
      down.delete(key(root))
      expect(down, `down from ${root.id}`).toEqual(goOver(edges, key(root), 'down'))
      const up = numbersIn(lineage.ancestors(root))
      up.delete(key(root))
      expect(up, `up from ${root.id}`).toEqual(goOver(edges, key(root), 'up'))
      most = Math.max(most, down.size, up.size)
    }
    expect(most).toBeGreaterThan(1_000)
  },
  60_000,
)
