import { Species } from '../../../trade/facts/index.ts'

export interface FruitTyped {
  readonly commonName: string
  readonly botanical: string
  readonly family: string
  readonly like: Species
}

type Tree = { readonly [key: string]: unknown }

const idOf = (name: string): string =>
  name
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(/[^\p{L}\p{N}]+/gu, '_')
    .replaceAll(/^_+|_+$/g, '')

/** Every figure and statement of a fruit, lent to another: what was published of the one is not of the other. */
function lent(value: unknown, lender: string): unknown {
  if (Array.isArray(value)) return value.map(one => lent(one, lender))
  if (typeof value !== 'object' || value === null) return value
  const said = value as Tree
  if (!('basis' in said) && !('kind' in said && 'text' in said))
    return Object.fromEntries(Object.entries(said).map(([key, part]) => [key, lent(part, lender)]))
  const { typicalBasis: _, rangeBasis: __, note, text, ...rest } = said
  const bare = { ...rest, basis: 'from memory', sources: [] }
  if (typeof text === 'string') return { ...bare, text: `As of ${lender}: ${text}` }
  return { ...bare, note: [`as of ${lender}`, note].filter(Boolean).join('; ') }
}

/**
 * A fruit that the facts do not know, begun from one that is like it: every figure is that fruit's until the nursery
 * states its own, and says so. Null where a name is missing; single published results are not lent.
 */
export function newFruit({ commonName, botanical, family, like }: FruitTyped): Species | null {
  const id = idOf(commonName)
  if (id === '' || botanical.trim() === '') return null
  const { ways, ...rest } = lent(like, like.commonName) as Species
  return Species.parse({
    ...rest,
    id,
    like: like.like ?? like.id,
    commonName: commonName.trim(),
    botanical: botanical.trim(),
    taxa: [botanical.trim()],
    family: family.trim() || like.family,
    ways: ways.map(way => ({ ...way, measured: [] })),
  })
}
