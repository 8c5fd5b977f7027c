import { type Fruits, type Species, speciesByName } from '../../trade/facts/index.ts'
import { foldName, type MethodId, parseName, type TreeForm } from '../../trade/index.ts'
import { fruitByCommonName } from '../words/fruit-names.ts'
import { formByWord, methodByWord } from '../words/trade-words.ts'

/** A kind of tree as a row of a list names it, in its parts. */
export interface TreeNamed {
  readonly species: Species | undefined
  /** As written, without quotation marks. */
  readonly cultivar: string | null
  /** What else is worked on the same tree. */
  readonly others: readonly string[]
  /** The cultivar of the piece between stock and scion. */
  readonly interstem: string | null
  readonly rootstock: string | null
  readonly size: string
  readonly form: TreeForm | undefined
  readonly method: MethodId | undefined
  /** All that was said, for messages. */
  readonly said: string
}

export interface TreeCells {
  readonly tree: string | null
  readonly fruit: string | null
  readonly cultivar: string | null
  readonly rootstock: string | null
  readonly interstem?: string | null
  readonly form: string | null
  readonly size: string | null
}

const sizeAtEnd =
  /[\s,;(–-]+(\d+([.,]\d+)?\s*(l|lt|ltr|lit(er|re)s?|gal(lon)?s?|cm|mm)\b.*|bare[\s-]?root.*|wurzelnackt.*|racines nues.*)$/iu
const quotedPart = /["'‘’‚‛“”„`´«»]+(\p{L}.*?)["'’‘‛“”`´«»]+(?=$|[\s,;)])/u
const nextQuoted =
  /^\s*(?:[,;+&/]|and\b|und\b|et\b|y\b|e\b|en\b)?\s*["'‘’‚‛“”„`´«»]+(\p{L}.*?)["'’‘‛“”`´«»]+(?=$|[\s,;)])/u
const betweenIn =
  /[\s,;]+(?:(?:on|with|auf|mit|sur|avec|sobre|con|su|op|met)\s+)?(?:an?\s+)?(?:interstem|interstock|zwischenveredlung|zwischenstamm|stammbildner|interm[eé]diaire|injerto intermedio|innesto intermedio|intermedio|tussenstam)\s+(.+?)(?=\s+(?:on|auf|sur|sobre|su|op)\s|$)/iu
const severalIn = /\s*[;\n]\s*|\s+\+\s+/u
const onRootstock = /\s(?:on|auf|sur|sobre|su|op)\s+(.+)$/iu
const stockWord =
  /\b(root\s?-?stocks?|stocks?|understock|unterlagen?|porte-?greffes?|portainjertos?|patr[oó]n|portinnest[oi]|onderstam(men)?)\b/iu

/** The fruit whose name begins or ends the words, and the words that are left. */
export function fruitInWords(
  text: string,
  fruits: Fruits,
): { readonly species: Species; readonly rest: string } | null {
  const words = text.split(/\s+-\s+|[\s,:–]+/u).filter(word => word !== '')
  for (let length = words.length; length > 0; length--) {
    const first = fruitByCommonName(words.slice(0, length).join(' '), fruits)
    if (first) return { species: first, rest: words.slice(length).join(' ') }
    const last = fruitByCommonName(words.slice(-length).join(' '), fruits)
    if (last) return { species: last, rest: words.slice(0, -length).join(' ') }
  }
  return null
}

const fruitNamed = (text: string, fruits: Fruits): Species | undefined =>
  fruitByCommonName(text, fruits) ?? speciesByName(text, fruits)

const tidy = (text: string): string | null => {
  const inside = text
    .replace(/[®™©]/gu, '')
    .replace(/^["'‘’‚‛“”„`´«»(),;:\s-]+|["'‘’‛“”`´«»(),;:\s-]+$/gu, '')
    .replace(/\s+/gu, ' ')
  return inside === '' ? null : inside
}

/**
 * Reads what a list calls a tree: with quotation marks or without, by common or botanical name, fruit before cultivar
 * or after, with what it stands on and its size, or with these in columns of their own.
 */
export function nameTree(said: TreeCells, fruits: Fruits): TreeNamed {
  // A lone column is called variety, cultivar or item as it comes, and holds the whole name.
  return said.tree === null && said.fruit === null && said.cultivar !== null
    ? readTree({ ...said, tree: said.cultivar, cultivar: null }, fruits)
    : readTree(said, fruits)
}

function readTree(cells: TreeCells, fruits: Fruits): TreeNamed {
  const said = [cells.fruit, cells.tree, cells.cultivar].filter(text => text !== null).join(' ')
  let text = cells.tree ?? ''
  const sized = sizeAtEnd.exec(text)
  if (sized) text = text.slice(0, sized.index)
  const size = cells.size ?? sized?.[1]?.replace(/\)$/, '') ?? ''

  const between = betweenIn.exec(text)
  if (between) text = text.slice(0, between.index) + text.slice(between.index + between[0].length)
  const interstem = tidy(cells.interstem ?? between?.[1] ?? '')

  const quoted = quotedPart.exec(text)
  let afterMarks = quoted ? quoted.index + quoted[0].length : 0
  const others: string[] = []
  for (let next = quoted && nextQuoted.exec(text.slice(afterMarks)); next; ) {
    others.push(next[1]!)
    afterMarks += next[0].length
    next = nextQuoted.exec(text.slice(afterMarks))
  }
  const standing = onRootstock.exec(text.slice(afterMarks))
  if (standing) text = text.slice(0, afterMarks + standing.index)
  const rootstock = tidy(
    (cells.rootstock ?? standing?.[1] ?? '').replace(/\b(own roots?|eigene wurzel|none)\b/iu, ''),
  )

  const [first = null, ...rest] = cells.cultivar?.split(severalIn) ?? []
  // What a column of its own says goes before what the name says.
  if (first !== null) others.splice(0, others.length, ...rest)
  let cultivar = first === null ? null : tidy(first)
  let species =
    cells.fruit === null
      ? undefined
      : (fruitNamed(cells.fruit, fruits) ?? fruitInWords(cells.fruit, fruits)?.species)
  let form = cells.form === null ? undefined : formByWord(cells.form)
  const method = cells.form === null ? undefined : methodOf(cells.form)

  const isStock = stockWord.test(text) && !standing
  if (isStock) {
    form = 'rootstock'
    text = text.replace(stockWord, ' ')
  } else if (/\b(seedlings?|sämling(e)?|semis)\b/iu.test(text)) {
    form ??= 'seedling'
    text = text.replace(/\b(seedlings?|sämling(e)?|semis)\b/iu, ' ')
  }

  if (text.trim() !== '') {
    if (quoted) {
      cultivar ??= tidy(quoted[1]!)
      const head = text.slice(0, quoted.index).trim()
      species ??=
        fruitNamed(head, fruits) ?? fruitInWords(head, fruits)?.species ?? speciesByName(text, fruits)
    } else {
      const found = fruitInWords(text.replace(/[()]/gu, ' '), fruits)
      // Registers write the botanical name and, after a comma, the common one.
      const [latin = text] = text.split(',')
      const byLatin = found ? undefined : speciesByName(latin, fruits)
      const byName = found ? undefined : (byLatin ?? speciesByName(text, fruits))
      const botanical = parseName(byLatin ? latin : text)
      if (found) {
        cultivar ??= tidy(found.rest)
        species ??= found.species
      } else if (byName && botanical.kind === 'name') {
        cultivar ??= botanical.name.cultivar
        species ??= byName
      } else cultivar ??= tidy(text)
    }
  }
  return {
    species,
    cultivar,
    others: others.flatMap(name => tidy(name) ?? []),
    interstem,
    rootstock,
    size: size.trim(),
    form,
    method,
    said: said.trim(),
  }
}

/** "Cutting" or "grafted" names a form and leaves the method open; "chip bud" names the method. */
const methodOf = (text: string): MethodId | undefined => {
  const broad = new Set([
    'cutting',
    'cuttings',
    'graft',
    'grafted',
    'bud',
    'budded',
    'budding',
    'seed',
    'seedling',
    'layer',
    'layers',
  ])
  return broad.has(foldName(text)) ? undefined : methodByWord(text)
}
