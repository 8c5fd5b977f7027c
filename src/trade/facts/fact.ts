import type { Figure } from '../figure.ts'
import { markOfMethod } from '../mark-of-method.ts'
import { MethodId } from '../vocabulary.ts'
import type { Window } from '../window.ts'
import { measureByKey, measureOf } from './fact-key.ts'
import { type Species, SpeciesWay, wayOf } from './species.ts'

/** One thing that is stated of a fruit in numbers or months, with the path to it; null where it is not known. */
export interface Fact {
  readonly key: string
  readonly name: string
  readonly unit: string
  readonly value: Figure | Window | null
}

type Tree = { readonly [key: string]: unknown }

const at = (species: Species, key: string): unknown => {
  const [first, second, ...rest] = key.split('.')
  if (first !== 'ways') return (species as unknown as Record<string, Tree | null>)[first!]?.[second!]
  const way = wayOf(species, MethodId.parse(second))
  return rest.reduce<unknown>((part, name) => (part as Tree | undefined)?.[name], way)
}

const factAt = (species: Species, key: string): Fact => ({
  key,
  ...measureOf(key)!,
  value: (at(species, key) ?? null) as Fact['value'],
})

/** What a nursery may want to state where the facts are silent. */
const askedOfEveryWay = ['success', 'window', 'timing.monthsToSaleable'] as const

/** Every figure and window of a fruit: of the tree, its seed and stocks, and of one method after the other. */
export function factsOf(species: Species): readonly Fact[] {
  const tree = Object.keys(measureByKey).filter(
    key =>
      key.startsWith('orchard.') ||
      (key.startsWith('seed.') && species.seed !== null) ||
      (at(species, key) ?? null) !== null,
  )
  const ways = species.ways.flatMap(way => {
    const of = (part: 'timing' | 'materials' | 'environment') =>
      Object.keys(way[part]).map(measure => `${part}.${measure}`)
    const parts = new Set([...askedOfEveryWay, ...of('timing'), ...of('materials'), ...of('environment')])
    return [...parts].map(part => `ways.${way.method}.${part}`)
  })
  return [...tree, ...ways].map(key => factAt(species, key))
}

/** The fruit with one fact stated otherwise; undefined where the fruit has no place for it. */
export function withFact(species: Species, key: string, value: Figure | Window): Species | undefined {
  const [first, second, part, measure] = key.split('.')
  if (measureOf(key) === undefined) return undefined
  if (first !== 'ways') {
    const group = (species as unknown as Record<string, Tree | null>)[first!]
    return group === null || group === undefined
      ? undefined
      : { ...species, [first!]: { ...group, [second!]: value } }
  }
  const method = MethodId.parse(second)
  const known = wayOf(species, method)
  // A success stated of a method that the facts do not know for the fruit makes it a way of the fruit.
  if (known === undefined)
    return part === 'success' ? { ...species, ways: [...species.ways, newWay(method, value)] } : undefined
  const changed = {
    ...known,
    [part!]:
      measure === undefined
        ? value
        : { ...(known as unknown as Record<string, Tree>)[part!], [measure]: value },
  }
  return { ...species, ways: species.ways.map(way => (way === known ? changed : way)) }
}

const roleByMark = {
  seed: 'own-root plant or rootstock',
  cutting: 'own-root plant',
  layer: 'own-root plant',
  division: 'own-root plant',
  graft: 'scion plant',
  bud: 'scion plant',
} as const
const countsByMark = {
  seed: 'germination',
  cutting: 'rooting',
  layer: 'rooting',
  division: 'survival',
  graft: 'take',
  bud: 'take',
} as const

const newWay = (method: MethodId, success: Figure | Window): SpeciesWay => {
  const mark = markOfMethod(method)
  return SpeciesWay.parse({
    method,
    importance: 'common',
    role: roleByMark[mark],
    trueToType: mark !== 'seed',
    success,
    counts: countsByMark[mark],
  })
}
