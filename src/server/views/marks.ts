import type { Nursery } from '../../record/index.ts'
import { type Kind, type MethodMark, markOfMethod } from '../../trade/index.ts'

/** The mark of a kind: that of its first way. */
export const markOfKind = (nursery: Nursery, kind: Kind): MethodMark | null => {
  const way = kind.ways[0]
  const protocol = way === undefined ? undefined : nursery.protocols.get(way.protocol)
  return protocol === undefined ? null : markOfMethod(protocol.method)
}
