import type { HoldRow } from '../../api/index.ts'
import type { Hold } from '../../record/index.ts'
import type { NurseryMemory } from '../nursery-memory.ts'
import { named } from './named.ts'

export const holdRow = (memory: NurseryMemory, { id, on, why, since, released }: Hold): HoldRow => {
  const nursery = memory.nursery()
  const root =
    on.what === 'bench'
      ? { what: 'bench' as const, id: on.bench }
      : on.what === 'batch' || (on.what === 'lineage' && 'batch' in on.of)
        ? { what: 'batch' as const, id: on.what === 'batch' ? on.batch : (on.of as { batch: string }).batch }
        : {
            what: 'mother' as const,
            id: on.what === 'mother' ? on.mother : (on.of as { mother: string }).mother,
          }
  const name =
    root.what === 'bench'
      ? (nursery.benches.get(root.id as never)?.name ?? root.id)
      : named(nursery, { what: root.what, id: root.id }).name
  return {
    id,
    what: on.what,
    of: { ...root, name },
    why,
    since,
    by: memory.entry(id)?.by ?? null,
    released: released && {
      on: released.on,
      why: released.why,
      by: memory.entry(released.by)?.by ?? null,
    },
  }
}

/** Those that stand first, newest first. */
export const holdRows = (memory: NurseryMemory): HoldRow[] =>
  [...memory.nursery().holds.values()]
    .sort((a, b) => Number(a.released !== null) - Number(b.released !== null) || (a.since < b.since ? 1 : -1))
    .map(hold => holdRow(memory, hold))
