import type { MaterialLotId } from '../../trade/index.ts'
import type { BodyOf, Entry } from '../entry.ts'
import { type Query, raise } from '../query.ts'
import type { MaterialLot } from '../state.ts'

/** Folds a lot of wood, cuttings or seed from the entries that speak of it. A stick is used once. */
export function foldLot(
  id: MaterialLotId,
  entries: readonly Entry[],
): { lot: MaterialLot | null; queries: Query[] } {
  const queries: Query[] = []
  const about = { lot: id }
  let collected: { readonly body: BodyOf<'material-collected/1'>; readonly on: string } | null = null
  for (const { id: entry, body, on } of entries) {
    if (body.kind !== 'material-collected/1') continue
    if (collected) queries.push(raise(entry, 'lot-collected-twice', about, { lot: id }))
    else collected = { body, on }
  }
  let used = 0
  let discarded = 0
  for (const { id: entry, body, on } of entries) {
    if (body.kind === 'material-collected/1') continue
    if (!collected) {
      queries.push(raise(entry, 'unknown-lot', about, { lot: id, says: body.kind }))
      continue
    }
    if (body.kind === 'material-discarded/1') discarded += body.number
    else if (body.kind === 'batch-started/1' || body.kind === 'reworked/1') {
      for (const source of body.sources) if (source.from === 'lot' && source.lot === id) used += source.number
      const { goodUntil } = collected.body
      if (goodUntil !== null && on > goodUntil) {
        queries.push(raise(entry, 'lot-past-keeping', about, { lot: id, on, goodUntil }))
      }
    }
    if (on < collected.on) {
      queries.push(raise(entry, 'lot-before-collecting', about, { lot: id, on, collectedOn: collected.on }))
    }
    const { number } = collected.body
    if (used + discarded > number) {
      queries.push(raise(entry, 'lot-used-twice', about, { lot: id, number, used: used + discarded }))
    }
  }
  if (!collected) return { lot: null, queries }
  const { mother, material, number, stored, goodUntil } = collected.body
  return {
    lot: {
      id,
      mother,
      material,
      on: collected.on,
      number,
      used,
      discarded,
      stored,
      goodUntil,
      entries: [],
    },
    queries,
  }
}
