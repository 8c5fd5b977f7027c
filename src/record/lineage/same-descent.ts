import type { Batch, MotherState, Nursery, Origin } from '../state.ts'

type Descending = Pick<Nursery, 'batches' | 'lots' | 'mothers'>

/**
 * Whether nothing has changed from which links of descent are made. Most entries count or move plants and change none,
 * so that what was found out of the links stays right. Things that were not folded again are the same object.
 */
export const isSameDescent = (a: Descending, b: Descending): boolean =>
  alike(a.batches, b.batches, sameBatch) &&
  alike(a.lots, b.lots, (one, other) => one.mother === other.mother && one.on === other.on) &&
  alike(a.mothers, b.mothers, sameMother)

function alike<K, V>(
  a: ReadonlyMap<K, V>,
  b: ReadonlyMap<K, V>,
  same: (one: V, other: V) => boolean,
): boolean {
  if (a === b) return true
  if (a.size !== b.size) return false
  for (const [id, one] of a) {
    const other = b.get(id)
    if (other === undefined || (one !== other && !same(one, other))) return false
  }
  return true
}

const sameBatch = (one: Batch, other: Batch): boolean =>
  one.startedOn === other.startedOn &&
  one.origins.length === other.origins.length &&
  one.origins.every((origin, i) => sameOrigin(origin, other.origins[i]!))

const sameOrigin = (one: Origin, other: Origin): boolean =>
  one.entry === other.entry &&
  one.id === other.id &&
  one.from === other.from &&
  one.as === other.as &&
  one.on === other.on &&
  one.number === other.number &&
  one.atBirth === other.atBirth

function sameMother(one: MotherState, other: MotherState): boolean {
  const collected = (mother: MotherState) => mother.given.filter(({ lot }) => lot !== null)
  const before = collected(one)
  const now = collected(other)
  return (
    before.length === now.length &&
    before.every((given, i) => {
      const { lot, on, material, number, entry } = now[i]!
      return (
        given.lot === lot &&
        given.on === on &&
        given.material === material &&
        given.number === number &&
        given.entry === entry
      )
    })
  )
}
