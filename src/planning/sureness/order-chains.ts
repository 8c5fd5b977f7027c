import type { Season } from '../season.ts'

/**
 * Orders of one kind in the turn in which they are served: by due week, then price. What is finished by a due week
 * covers all orders due until then, so margins are counted cumulatively along a chain.
 */
export function orderChains(season: Season): number[][] {
  const chains = new Map<number, number[]>()
  const { orders } = season
  const inTurn = orders
    .map((_, o) => o)
    .sort((a, b) => orders[a]!.dueWeek - orders[b]!.dueWeek || orders[b]!.price - orders[a]!.price || a - b)
  for (const o of inTurn) {
    const { kind } = orders[o]!.kinds[0]!
    const chain = chains.get(kind)
    if (chain) chain.push(o)
    else chains.set(kind, [o])
  }
  return [...chains.values()]
}
