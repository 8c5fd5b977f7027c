import {
  type BatchId,
  type CultivarId,
  type Material,
  type MaterialLotId,
  type MotherId,
  type Part,
  type Phrase,
  phrase,
} from '../../trade/index.ts'
import type { Batch, Nursery, Origin } from '../state.ts'

/** What may be said of the name of a batch's trees, from where they come. */
export type Identity =
  /** Their wood was cut from mothers of these cultivars. */
  | { readonly what: 'true to type'; readonly cultivars: readonly CultivarId[] }
  /** Grown from seed of these mothers: each tree is a new one, of no cultivar. */
  | { readonly what: 'seedling'; readonly of: readonly CultivarId[] }
  /** Grown from the mother's own tissue in the seed: true to her. */
  | { readonly what: 'nucellar'; readonly of: readonly CultivarId[] }
  | { readonly what: 'in doubt'; readonly candidates: readonly CultivarId[] }
  /** No source says more than the kind under which they were entered. */
  | { readonly what: 'as entered'; readonly cultivars: readonly CultivarId[] }

const topMaterials: ReadonlySet<string> = new Set<Material | 'scion'>(['scion sticks', 'budwood', 'scion'])
const unique = (ids: readonly CultivarId[]): CultivarId[] => [...new Set(ids)].sort()

/** The name that the lineage of a batch gives it. */
export const identityOf = (nursery: Nursery, id: BatchId): Identity =>
  identityWithin(nursery, id, new Set()) ?? { what: 'as entered', cultivars: [] }

/** Null where a batch came back to one that it was split from, and so says nothing of its own. */
function identityWithin(nursery: Nursery, id: BatchId, above: ReadonlySet<BatchId>): Identity | null {
  const batch = nursery.batches.get(id)
  if (!batch || above.has(id)) return null
  if (batch.settledAs !== null) return { what: 'true to type', cultivars: [batch.settledAs] }
  if (batch.candidates.length > 0) return { what: 'in doubt', candidates: unique(batch.candidates) }
  const path = new Set(above).add(id)
  const own = ownIdentity(nursery, batch, path)
  const joined = batch.origins
    .filter(origin => origin.as === 'joined')
    .flatMap(origin => identityWithin(nursery, origin.id as BatchId, path) ?? [])
  if (!own) return joined[0] ?? null
  return joined.reduce<Identity>(together, own)
}

/** Without what was joined in later. A worked tree is named by its top, any other by its whole. */
function ownIdentity(nursery: Nursery, batch: Batch, path: ReadonlySet<BatchId>): Identity | null {
  const named =
    nursery.kinds.get(batch.kind)?.cultivars ?? nursery.former.kinds.get(batch.kind)?.cultivars ?? []
  const tops = batch.origins.filter(origin => topMaterials.has(materialOf(nursery, origin)))
  if (tops.length > 0) return topIdentity(nursery, tops, named, path)
  const parts: Identity[] = []
  for (const origin of batch.origins) {
    if (origin.as === 'joined' || origin.as === 'rootstock' || origin.as === 'interstem') continue
    if (origin.from === 'bought') {
      parts.push(
        origin.as === 'seed' ? { what: 'seedling', of: named } : { what: 'as entered', cultivars: named },
      )
    } else if (origin.from === 'batch') {
      const parent = identityWithin(nursery, origin.id as BatchId, path)
      if (!parent) return null
      parts.push(parent)
    } else {
      const cultivar = cultivarOf(nursery, origin)
      if (cultivar === undefined) continue
      if (materialOf(nursery, origin) !== 'seed') parts.push({ what: 'true to type', cultivars: [cultivar] })
      else parts.push({ what: batch.nucellar ? 'nucellar' : 'seedling', of: [cultivar] })
    }
  }
  const [first, ...rest] = parts
  return first ? rest.reduce<Identity>(together, first) : { what: 'as entered', cultivars: unique(named) }
}

/** Several scions make a tree of several cultivars. After a rework, the kind says which tops are still on it. */
function topIdentity(
  nursery: Nursery,
  tops: readonly Origin[],
  named: readonly CultivarId[],
  path: ReadonlySet<BatchId>,
): Identity {
  const cultivars: CultivarId[] = []
  for (const top of tops) {
    if (top.from === 'batch') {
      const below = identityWithin(nursery, top.id as BatchId, path)
      if (!below) continue
      if (below.what !== 'true to type' && below.what !== 'as entered') return below
      cultivars.push(...below.cultivars)
    } else if (top.from === 'bought') cultivars.push(...named)
    else {
      const cultivar = cultivarOf(nursery, top)
      if (cultivar !== undefined) cultivars.push(cultivar)
    }
  }
  const still = cultivars.filter(cultivar => named.includes(cultivar))
  if (still.length > 0) return { what: 'true to type', cultivars: unique(still) }
  return cultivars.length > 0
    ? { what: 'true to type', cultivars: unique(cultivars) }
    : { what: 'as entered', cultivars: unique(named) }
}

const lotOf = (nursery: Nursery, origin: Origin) =>
  origin.from === 'lot' ? nursery.lots.get(origin.id as MaterialLotId) : undefined

const materialOf = (nursery: Nursery, origin: Origin): string => lotOf(nursery, origin)?.material ?? origin.as

function cultivarOf(nursery: Nursery, origin: Origin): CultivarId | undefined {
  const mother = origin.from === 'mother' ? (origin.id as MotherId) : lotOf(nursery, origin)?.mother
  return mother === undefined ? undefined : nursery.mothers.get(mother)?.mother.cultivar
}

const namesIn = (identity: Identity): readonly CultivarId[] =>
  'cultivars' in identity ? identity.cultivars : 'of' in identity ? identity.of : identity.candidates

/** Two lots of plants put together: alike they keep their name, unlike they put it in doubt. */
function together(a: Identity, b: Identity): Identity {
  const names = unique([...namesIn(a), ...namesIn(b)])
  const alike = namesIn(a).length === names.length && namesIn(b).length === names.length
  if (a.what === 'in doubt' || b.what === 'in doubt') return { what: 'in doubt', candidates: names }
  if (a.what === 'seedling' || b.what === 'seedling') {
    return a.what === b.what || names.length === 0
      ? { what: 'seedling', of: names }
      : { what: 'in doubt', candidates: names }
  }
  if (!alike) return { what: 'in doubt', candidates: names }
  return a.what === 'as entered' ? a : b.what === 'as entered' ? b : a
}

/** The identity in words, for screens and labels. */
export function identityPhrase(identity: Identity, nursery: Nursery): Phrase {
  const names = namesIn(identity).map(id => nursery.cultivars.get(id)?.name ?? id)
  const list = names.length > 0 ? names.join(' + ') : phrase('no named cultivar')
  switch (identity.what) {
    case 'true to type':
      return phrase('{list}, true to type', { list })
    case 'seedling':
      return phrase('Seedling of {list}', { list })
    case 'nucellar':
      return phrase('Nucellar seedling of {list}, true to type', { list })
    case 'in doubt':
      return phrase('Name in doubt: {names}', { names: either(names) })
    case 'as entered':
      return phrase('{list}, as entered', { list })
  }
}

const either = ([first, ...others]: readonly string[]): Part =>
  first === undefined
    ? phrase('not known')
    : others.reduce<Part>((some, last) => phrase('{some} or {last}', { some, last }), first)
