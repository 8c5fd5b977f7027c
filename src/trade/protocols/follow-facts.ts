import type { Fruits } from '../facts/fruits.ts'
import type { Species } from '../facts/species.ts'
import type { Protocol } from '../protocol.ts'
import type { Product } from './start.ts'
import { starterProtocol } from './starter-protocol.ts'

type Tree = Readonly<Record<string, unknown>>
const isTree = (value: unknown): value is Tree =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
/** A figure moves as a whole, and so does a window: half of one and half of another say nothing. */
const isWhole = (value: Tree): boolean => 'basis' in value
const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)

const kept = new WeakMap<Species, Map<string, Protocol>>()

/** Written once for each fruit as it is stated: a nursery has the same protocols at every look. */
function starterOf(species: Species, { method }: Protocol, product: Product): Protocol {
  const known = kept.get(species) ?? new Map<string, Protocol>()
  kept.set(species, known)
  const name = `${method} ${product}`
  const starter = known.get(name) ?? starterProtocol(method, species, product)
  known.set(name, starter)
  return starter
}

/** `mine` with what differs between `before` and `after`, wherever mine is still as it was before. */
function follow(mine: unknown, before: unknown, after: unknown): unknown {
  if (same(before, after)) return mine
  if (same(mine, before)) return after
  if (isTree(mine) && isTree(before) && isTree(after) && !isWhole(mine))
    return Object.fromEntries(Object.keys(mine).map(key => [key, follow(mine[key], before[key], after[key])]))
  if (Array.isArray(mine) && Array.isArray(before) && Array.isArray(after))
    return mine.length === before.length && mine.length === after.length
      ? mine.map((one, i) => follow(one, before[i], after[i]))
      : mine
  return mine
}

/**
 * A protocol with the figures and windows that the nursery states of its fruit: what still stands in it as the facts
 * gave it follows them, what the nursery wrote into the protocol itself stays.
 */
export function followFacts(protocol: Protocol, { asGiven, byId }: Fruits): Protocol {
  if (protocol.species === null) return protocol
  const given = asGiven(protocol.species)
  const stated = byId(protocol.species)
  if (given === undefined || stated === undefined || given === stated) return protocol
  const product = protocol.caliper === null ? 'tree' : 'rootstock'
  return follow(
    protocol,
    starterOf(given, protocol, product),
    starterOf(stated, protocol, product),
  ) as Protocol
}
