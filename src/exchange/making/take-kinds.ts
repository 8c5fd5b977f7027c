import { Cultivar, CultivarId, foldName, type Kind, KindId, Licence } from '../../trade/index.ts'
import {
  bad,
  known,
  made,
  numberIn,
  type RowOutcome,
  type RowTold,
  type SheetRow,
  textIn,
} from '../reading/sheet-row.ts'
import { shortFruitName } from '../words/fruit-names.ts'
import { findKind } from './find-kind.ts'
import { kindOfRow, treeIn } from './kind-of-row.ts'
import { kindWritten } from './kind-written.ts'
import { cultivarNamed } from './make-kind.ts'
import type { Making } from './making.ts'
import { fruitInWords, nameTree } from './name-tree.ts'
import { slug } from './slug.ts'

/** What we grow: a new kind, or a change to one that is known. */
export function takeKind(making: Making, row: SheetRow, told: RowTold): RowOutcome {
  const id = KindId.safeParse(textIn(row, 'id'))
  const own = id.success ? making.kinds.get(id.data) : undefined
  const wasKnown = own !== undefined || findKind(making, treeIn(making, row)).kind === 'found'
  const named =
    own !== undefined
      ? { kind: 'kind' as const, kindOfTree: own }
      : id.success
        ? kindWritten(making, row, told, id.data)
        : kindOfRow(making, row, told)
  if (named.kind === 'bad') return named
  const before = named.kindOfTree
  const price = numberIn(row, 'price') ?? before.price
  const buyIn = numberIn(row, 'buyIn')
  if (price < 0 || (buyIn ?? 0) < 0) return bad('price', 'a price is not below nought')
  const kind: Kind = {
    ...before,
    price,
    size: before.size === '' ? (textIn(row, 'size') ?? '') : before.size,
    buyIn:
      buyIn === null
        ? before.buyIn
        : {
            price: buyIn,
            weeksNotice: Math.max(0, numberIn(row, 'notice') ?? before.buyIn?.weeksNotice ?? 8),
            mostPerWeek: Math.max(0, numberIn(row, 'mostPerWeek') ?? before.buyIn?.mostPerWeek ?? 500),
          },
  }
  return making.setKind(kind) || !wasKnown ? made : known
}

/** A cultivar's name, its other names, and the leave to propagate it. Fruits that the facts do not know keep theirs. */
export function takeCultivar(making: Making, row: SheetRow, told: RowTold): RowOutcome {
  const fruit = textIn(row, 'fruit') ?? fruitOfSheet(making, told)
  const name = textIn(row, 'cultivar')!
  if (fruit === null) return bad('fruit', 'it is not said of which fruit')
  const synonyms = (textIn(row, 'synonyms') ?? '')
    .split(/\s*[,;]\s*/u)
    .filter(one => one !== '' && foldName(one) !== foldName(name))
  const read = nameTree(
    { tree: null, fruit, cultivar: name, rootstock: null, form: null, size: null },
    making.fruits,
  )
  const count = making.cultivars.size
  const id = idIn(making, row, name)
  const before =
    read.species === undefined
      ? foreignCultivar(making, fruit, name)
      : cultivarNamed(making, read.species, id === undefined ? (read.cultivar ?? name) : name, id)
  const isNew = making.cultivars.size > count
  const owner = textIn(row, 'owner')
  const allowed = numberIn(row, 'allowed')
  const until = textIn(row, 'until')
  const licence =
    owner === null && allowed === null && until === null
      ? before.licence
      : Licence.parse({
          owner: owner ?? before.licence?.owner ?? '',
          treesPerYear: allowed,
          until,
          feePerTree: Math.max(0, numberIn(row, 'fee') ?? 0),
        })
  const all = [...before.synonyms]
  for (const one of synonyms) if (!all.some(other => foldName(other) === foldName(one))) all.push(one)
  const changed = making.setCultivar({ ...before, synonyms: all, licence })
  return changed || isNew ? made : known
}

/** The id of a table that was written out: none that another cultivar has already. */
function idIn({ cultivars }: Making, row: SheetRow, name: string): CultivarId | undefined {
  const id = CultivarId.safeParse(textIn(row, 'id'))
  if (!id.success) return undefined
  const there = cultivars.get(id.data)
  return there === undefined || foldName(there.name) === foldName(name) ? id.data : undefined
}

/** A list of one fruit's cultivars need not say it in every row: it is asked once. */
function fruitOfSheet({ fruits }: Making, told: RowTold): string | null {
  const id = 'fruit of the sheet'
  const answer = told.answer(id)
  if (answer !== undefined) return answer
  told.ask({
    id,
    asks: `Which fruit are the cultivars in ${told.sheet}?`,
    choices: fruits.all.map(one => ({ id: one.id, says: shortFruitName(one) })),
    example: told.sheet,
    suggested: fruitInWords(told.sheet.replace(/[^\p{L}]+/gu, ' '), fruits)?.species.id ?? null,
  })
  return null
}

/** Of a fruit without facts: its name stands for it, and it can be planned once the nursery says how it is made. */
export function foreignCultivar(making: Making, fruit: string, name: string): Cultivar {
  const id = `${slug(fruit)}-${slug(name)}` as CultivarId
  const there = making.cultivars.get(id)
  if (there) return there
  const cultivar = Cultivar.parse({ id, name, species: slug(fruit) })
  making.setCultivar(cultivar)
  return cultivar
}
