import type { BatchId, EntryId, MaterialLotId, MotherId } from '../../trade/index.ts'
import { type AnyEntry, type Body, type Entry, isKnown } from '../entry.ts'
import { compareEntries } from '../entry-order.ts'
import { sourceId } from '../fold/subjects.ts'
import { type Query, raise } from '../query.ts'
import type { Nursery } from '../state.ts'
import type { Ref } from './graph.ts'
import { coveredBy } from './holds.ts'

type Held = Pick<Nursery, 'batches' | 'lots' | 'mothers' | 'holds'>

/**
 * What was done against a hold: sent out, finished for sale, collected, or worked into another batch, by an entry
 * that counts after the hold was placed and before it was released.
 */
export function brokenHolds(
  nursery: Held,
  entryById: (id: EntryId) => AnyEntry | undefined,
  entriesOfLot: (id: MaterialLotId) => readonly Entry[],
): Query[] {
  const queries: Query[] = []
  for (const hold of nursery.holds.values()) {
    const placed = entryById(hold.id)
    const released = hold.released && entryById(hold.released.by)
    if (!placed) continue
    for (const ref of coveredBy(hold, nursery)) {
      for (const entry of entriesOf(ref)) {
        const did = against(entry.body, ref)
        if (did === null || compareEntries(entry, placed) < 0) continue
        if (released && compareEntries(entry, released) > 0) continue
        const facts = {
          ...did,
          what: ref.what,
          name: nameOf(ref),
          on: entry.on,
          since: hold.since,
          why: hold.why,
        }
        queries.push(raise(entry.id, 'hold-broken', aboutOf(ref), facts))
      }
    }
  }
  return queries

  function entriesOf({ what, id }: Ref): readonly Entry[] {
    if (what === 'lot') return entriesOfLot(id as MaterialLotId)
    const ids =
      what === 'batch'
        ? nursery.batches.get(id as BatchId)?.entries
        : nursery.mothers.get(id as MotherId)?.entries
    return (ids ?? []).flatMap(entry => {
      const found = entryById(entry)
      return found && isKnown(found) ? [found] : []
    })
  }

  function nameOf({ what, id }: Ref): string {
    if (what === 'batch') return nursery.batches.get(id as BatchId)?.name ?? id
    if (what === 'mother') return nursery.mothers.get(id as MotherId)?.mother.name ?? id
    return id
  }
}

const aboutOf = ({ what, id }: Ref): Query['about'] =>
  what === 'batch'
    ? { batch: id as BatchId }
    : what === 'mother'
      ? { mother: id as MotherId }
      : { lot: id as MaterialLotId }

/** What an entry does with a thing that a hold forbids; null if it may be done. */
function against(body: Body, ref: Ref): Query['facts'] | null {
  switch (body.kind) {
    case 'dispatched/1':
      return { did: 'sent out {number}', number: body.number }
    case 'finished/1':
      return { did: 'made {number} ready for sale', number: body.number }
    case 'material-collected/1':
      return ref.what === 'mother'
        ? { did: 'gave {number} {material}', number: body.number, material: body.material }
        : null
    case 'batch-started/1':
    case 'reworked/1':
      return body.sources.some(source => source.from === ref.what && sourceId(source) === ref.id)
        ? { did: 'went into batch {into}', into: body.batch }
        : null
    default:
      return null
  }
}
