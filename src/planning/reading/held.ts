import type { Nursery } from '../../record/index.ts'
import type { BatchId, BenchId, MotherId } from '../../trade/index.ts'

/** What is on hold today: nothing leaves it, nothing is taken from it. */
export interface Held {
  readonly mothers: ReadonlySet<MotherId>
  readonly batches: ReadonlySet<BatchId>
  readonly benches: ReadonlySet<BenchId>
}

/** Holds that are not released. A hold on a lineage holds the mother or batch and all that came from it. */
export function readHeld(nursery: Nursery): Held {
  const mothers = new Set<MotherId>()
  const batches = new Set<BatchId>()
  const benches = new Set<BenchId>()
  // Ids of mothers and batches whose offspring is held too.
  const roots = new Set<string>()
  for (const { on, released } of nursery.holds.values()) {
    if (released) continue
    if (on.what === 'mother') mothers.add(on.mother)
    else if (on.what === 'batch') batches.add(on.batch)
    else if (on.what === 'bench') benches.add(on.bench)
    else if ('mother' in on.of) {
      mothers.add(on.of.mother)
      roots.add(on.of.mother)
    } else {
      batches.add(on.of.batch)
      roots.add(on.of.batch)
    }
  }
  for (let more = roots.size > 0; more; ) {
    more = false
    for (const batch of nursery.batches.values()) {
      if (roots.has(batch.id)) continue
      const comesFrom = batch.origins.some(({ id }) => {
        const lot = nursery.lots.get(id as never)
        return roots.has(lot ? lot.mother : id)
      })
      if (!comesFrom) continue
      roots.add(batch.id)
      batches.add(batch.id)
      more = true
    }
  }
  for (const batch of nursery.batches.values())
    if (batch.portions.some(portion => portion.bench !== null && benches.has(portion.bench)))
      batches.add(batch.id)
  return { mothers, batches, benches }
}
