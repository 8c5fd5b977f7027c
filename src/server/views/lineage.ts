import type { LineageView } from '../../api/index.ts'
import { heldBatches, heldMothers, lineageOf, type Nursery, type Ref } from '../../record/index.ts'
import type { BatchId, MotherId } from '../../trade/index.ts'
import { named } from './named.ts'

/** More than this nobody can look at; the nearest are shown. */
const MOST = 300

/** The family of a batch or mother tree, both ways: what it came from (generations below nought) and what came of it. */
export const lineageView = (nursery: Nursery, of: Ref): LineageView | null => {
  const exists =
    of.what === 'batch' ? nursery.batches.has(of.id as BatchId) : nursery.mothers.has(of.id as MotherId)
  if (!exists) return null
  const lineage = lineageOf(nursery)
  const up = lineage.ancestors(of)
  const down = lineage.descendants(of)
  const batchesHeld = heldBatches(nursery)
  const mothersHeld = heldMothers(nursery)
  const all = [
    { ref: of, number: 0, steps: 0 },
    ...up.reached.map(one => ({ ...one, steps: -one.steps })),
    ...down.reached,
  ].sort((a, b) => Math.abs(a.steps) - Math.abs(b.steps))
  const shown = all.slice(0, MOST)
  const key = ({ what, id }: Ref): string => `${what} ${id}`
  const kept = new Set(shown.map(({ ref }) => key(ref)))
  const links = new Map<string, LineageView['links'][number]>()
  // Of two batches joined both ways each is before and after the other: a link of theirs comes twice.
  for (const { from, to, number, on, as, entry } of new Set([...up.links, ...down.links])) {
    if (!kept.has(key(from)) || !kept.has(key(to))) continue
    const name = `${key(from)} ${key(to)} ${as}`
    const before = links.get(name)
    links.set(name, {
      from,
      to,
      as,
      on: before !== undefined && before.on < on ? before.on : on,
      number: number + (before?.number ?? 0),
      entries: [...new Set([...(before?.entries ?? []), entry])],
    })
  }
  return {
    of,
    things: shown.map(({ ref, number, steps }) => ({
      ...ref,
      ...named(nursery, ref),
      generation: steps,
      number,
      onHold:
        ref.what === 'batch'
          ? batchesHeld.has(ref.id as BatchId)
          : ref.what === 'mother' && mothersHeld.has(ref.id as MotherId),
    })),
    links: [...links.values()],
    notShown: all.length - shown.length,
  }
}
