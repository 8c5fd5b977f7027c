import type { Species } from '../../trade/facts/index.ts'
import type { CultivarId, Kind } from '../../trade/index.ts'
import { folded } from './folded.ts'
import type { Making } from './making.ts'
import type { TreeNamed } from './name-tree.ts'

export type KindFound =
  | { readonly kind: 'found'; readonly found: Kind }
  /** Several fit what was said. */
  | { readonly kind: 'several'; readonly among: readonly Kind[] }
  /** None fits; the fruit is known, so one can be made. `like` are cultivars spelt almost so. */
  | { readonly kind: 'new'; readonly species: Species; readonly like: readonly Kind[] }
  | { readonly kind: 'unknown fruit' }

const called = (making: Making, id: CultivarId): string[] => {
  const cultivar = making.cultivars.get(id)
  return cultivar ? [cultivar.name, ...cultivar.synonyms].map(folded) : []
}

const namesOf = (making: Making, kind: Kind): string[] => kind.cultivars.flatMap(id => called(making, id))

/** The cultivars of the kind are those named, no more and no fewer, in whatever order. */
const hasCultivars = (making: Making, kind: Kind, names: readonly string[]): boolean =>
  kind.cultivars.length === names.length &&
  kind.cultivars.every(id => names.some(name => called(making, id).includes(folded(name))))

const standsOn = (making: Making, kind: Kind, rootstock: string): boolean => {
  const wanted =
    folded(rootstock.replace(/\b(root\s?stocks?|stocks?|seedlings?)\b/giu, '')) || folded(rootstock)
  const stocks = new Set([kind.rootstock, ...kind.ways.flatMap(({ rootstocks }) => rootstocks)])
  return [...stocks].some(
    id => id !== null && ` ${folded(making.kinds.get(id)?.name ?? id)} `.includes(` ${wanted} `),
  )
}

/** The kind of the nursery that a row names, whatever its spelling. */
export function findKind(making: Making, tree: TreeNamed): KindFound {
  const wanted = folded(tree.said)
  const kinds = [...making.kinds.values()]
  const exact = kinds.filter(kind => folded(kind.name) === wanted || kind.id === tree.said)
  if (exact.length === 1) return { kind: 'found', found: exact[0]! }

  const isStock = tree.form === 'rootstock'
  const ofFruit = kinds.filter(
    kind =>
      (tree.species === undefined || kind.species === tree.species.id) &&
      (kind.form === 'rootstock') === isStock,
  )
  const named = ofFruit.filter(kind =>
    tree.cultivar === null
      ? tree.species !== undefined && (kind.cultivars.length === 0 || ofFruit.length === 1)
      : isStock
        ? ` ${folded(kind.name)} `.includes(` ${folded(tree.cultivar)} `)
        : hasCultivars(making, kind, [tree.cultivar, ...tree.others]),
  )
  const isPlain = tree.interstem === null && named.some(({ interstem }) => interstem === null)
  const narrowed = [
    (kind: Kind) =>
      tree.interstem === null
        ? !isPlain || kind.interstem === null
        : kind.interstem !== null && called(making, kind.interstem).includes(folded(tree.interstem)),
    (kind: Kind) => tree.rootstock === null || standsOn(making, kind, tree.rootstock),
    (kind: Kind) => tree.form === undefined || isStock || kind.form === tree.form,
    (kind: Kind) => tree.size === '' || kind.size === '' || folded(kind.size) === folded(tree.size),
  ].reduce((left, fits) => left.filter(fits), named)
  if (narrowed.length === 1) return { kind: 'found', found: narrowed[0]! }
  if (narrowed.length > 1) {
    const plain = narrowed.filter(kind => folded(kind.name) === wanted)
    return plain.length === 1 ? { kind: 'found', found: plain[0]! } : { kind: 'several', among: narrowed }
  }
  /** The cultivar alone was said, and another tree of it is known: its fruit is the one meant. */
  const species =
    tree.species ??
    making.fruits.byId(new Set(named.map(kind => kind.species)).size === 1 ? named[0]!.species : '')
  if (species === undefined) return { kind: 'unknown fruit' }
  const like =
    tree.cultivar === null || tree.others.length > 0 || named.length > 0
      ? []
      : ofFruit.filter(kind => namesOf(making, kind).some(name => isNear(name, folded(tree.cultivar ?? ''))))
  return { kind: 'new', species, like }
}

/** One letter wrong, missing, doubled or swapped; two in a long name. Short names are too near to each other. */
export function isNear(a: string, b: string): boolean {
  const allowed = Math.min(a.length, b.length) >= 9 ? 2 : Math.min(a.length, b.length) >= 5 ? 1 : 0
  return a !== b && Math.abs(a.length - b.length) <= allowed && distance(a, b) <= allowed
}

/** Edits between two words, a swap of neighbours counted as one (optimal string alignment). */
function distance(a: string, b: string): number {
  const rows = [Array.from({ length: b.length + 1 }, (_, j) => j)]
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const changed = rows[i - 1]![j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)
      row[j] = Math.min(rows[i - 1]![j]! + 1, row[j - 1]! + 1, changed)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        row[j] = Math.min(row[j]!, rows[i - 2]![j - 2]! + 1)
    }
    rows.push(row)
  }
  return rows[a.length]![b.length]!
}
