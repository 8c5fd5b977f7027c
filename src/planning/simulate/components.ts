import type { Season } from '../season.ts'

/**
 * Kinds that can touch each other in a season, as lists of kinds: a rootstock and what is worked on it, kinds that one order
 * accepts, kinds that draw on the same mothers. Between components nothing passes but space and hands.
 */
export function componentsOf(season: Season): number[][] {
  const root = season.kinds.map((_, kind) => kind)
  const find = (kind: number): number => {
    let at = kind
    while (root[at] !== at) {
      root[at] = root[root[at]!]!
      at = root[at]!
    }
    return at
  }
  const join = (a: number, b: number) => {
    root[find(a)] = find(b)
  }
  const userOfPool = new Map<number, number>()
  for (const way of season.ways)
    for (const { rootstock, material } of way.courses) {
      for (const kind of rootstock?.kinds ?? []) join(way.kind, kind)
      for (const { pool } of material) {
        const other = userOfPool.get(pool)
        if (other === undefined) userOfPool.set(pool, way.kind)
        else join(way.kind, other)
      }
    }
  for (const { kinds } of season.orders) for (const { kind } of kinds) join(kinds[0]!.kind, kind)
  const members = new Map<number, number[]>()
  season.kinds.forEach((_, kind) => {
    const of = find(kind)
    members.set(of, [...(members.get(of) ?? []), kind])
  })
  return [...members.values()]
}
