import type { Species } from '../../trade/facts/index.ts'
import { type CultivarId, foldName, type Kind } from '../../trade/index.ts'
import { type BadRow, bad, numberIn, type RowTold, type SheetRow, textIn } from '../reading/sheet-row.ts'
import { shortFruitName } from '../words/fruit-names.ts'
import { findKind } from './find-kind.ts'
import { folded } from './folded.ts'
import { makeKind } from './make-kind.ts'
import type { Making } from './making.ts'
import { nameTree, type TreeNamed } from './name-tree.ts'

const NEW = 'a new kind'
const LEAVE = 'leave these rows out'

export function treeIn({ fruits, cultivars }: Making, row: SheetRow): TreeNamed {
  const named = nameTree(
    {
      tree: textIn(row, 'tree'),
      fruit: textIn(row, 'fruit'),
      cultivar: textIn(row, 'cultivar'),
      rootstock: textIn(row, 'rootstock'),
      interstem: textIn(row, 'interstem'),
      form: textIn(row, 'form'),
      size: textIn(row, 'size'),
    },
    fruits,
  )
  // Tables that were written out name a cultivar by its id.
  const byId = (id: string | null) => cultivars.get((id ?? '') as CultivarId)
  const called = (id: string) => byId(id)?.name ?? id
  const own = byId((textIn(row, 'cultivar') ?? '').split(';')[0]!)
  return {
    ...named,
    ...(own === undefined ? {} : { species: fruits.byId(own.species), cultivar: own.name }),
    others: named.others.map(called),
    interstem: named.interstem === null ? null : called(named.interstem),
  }
}

const fieldSaid = (row: SheetRow): string =>
  ['tree', 'cultivar', 'fruit'].find(field => row.values.has(field)) ?? 'tree'

export type FruitOfRow =
  | { readonly kind: 'fruit'; readonly tree: TreeNamed & { readonly species: Species } }
  | BadRow
export type KindOfRow = { readonly kind: 'kind'; readonly kindOfTree: Kind } | BadRow

const theKind = (kindOfTree: Kind): KindOfRow => ({ kind: 'kind', kindOfTree })

/** The fruit of a name that says none: that of the only cultivar so called, as the user answered, or asked. */
export function withFruit(making: Making, tree: TreeNamed, row: SheetRow, told: RowTold): FruitOfRow {
  if (tree.species !== undefined) return { kind: 'fruit', tree: { ...tree, species: tree.species } }
  const known = new Set(
    [...making.cultivars.values()].flatMap(({ name, species }) =>
      tree.cultivar !== null && folded(name) === folded(tree.cultivar) ? [species] : [],
    ),
  )
  const only = known.size === 1 ? making.fruits.byId([...known][0]!) : undefined
  if (only !== undefined) return { kind: 'fruit', tree: { ...tree, species: only } }
  const id = `fruit: ${foldName(tree.said)}`
  const answer = told.answer(id)
  const species = answer === undefined ? undefined : making.fruits.byId(answer)
  if (species !== undefined) return { kind: 'fruit', tree: { ...tree, species } }
  told.ask({
    id,
    asks: `Which fruit is "${tree.said}"?`,
    choices: [
      ...making.fruits.all.map(one => ({ id: one.id, says: shortFruitName(one) })),
      { id: LEAVE, says: LEAVE },
    ],
    example: tree.said,
    suggested: null,
  })
  return bad(fieldSaid(row), answer === LEAVE ? 'left out, as you said' : 'no fruit is known by this name')
}

/**
 * The kind that a row names: one that the nursery has, whatever its spelling, or a new one from the facts. What the
 * row leaves open is asked, and the row waits for the answer.
 */
export function kindOfRow(making: Making, row: SheetRow, told: RowTold): KindOfRow {
  const tree = treeIn(making, row)
  const found = findKind(making, tree)
  if (found.kind === 'found') return theKind(found.found)
  if (found.kind === 'several') {
    const id = `tree: ${foldName(tree.said)}`
    const answer = told.answer(id)
    const meant = found.among.find(kind => kind.id === answer)
    if (meant) return theKind(meant)
    told.ask({
      id,
      asks: `Which of your kinds is "${tree.said}"?`,
      choices: found.among.map(kind => ({
        id: kind.id,
        says: [kind.name, kind.size].filter(Boolean).join(', '),
      })),
      example: tree.said,
      suggested: found.among[0]!.id,
    })
    return bad(fieldSaid(row), `several kinds fit: ${found.among.map(({ name }) => name).join('; ')}`)
  }
  if (found.kind === 'unknown fruit') {
    const fruit = withFruit(making, tree, row, told)
    if (fruit.kind === 'bad') return fruit
    const again = findKind(making, fruit.tree)
    return theKind(
      again.kind === 'found' ? again.found : makeKind(making, fruit.tree, numberIn(row, 'price')),
    )
  }
  const like = found.like[0]
  if (like !== undefined) {
    const id = `spelt: ${foldName(tree.said)}`
    const answer = told.answer(id) ?? NEW
    const same = found.like.find(kind => kind.id === answer)
    if (same) return theKind(same)
    told.ask({
      id,
      asks: `Is "${tree.said}" the same as ${like.name}? Until this is said it is taken as new.`,
      choices: [
        ...found.like.map(kind => ({ id: kind.id, says: `the same as ${kind.name}` })),
        { id: NEW, says: NEW },
      ],
      example: tree.said,
      suggested: like.id,
    })
  }
  return theKind(makeKind(making, { ...tree, species: found.species }, numberIn(row, 'price')))
}
