import { canonicalJson, Mother } from '../../record/index.ts'
import type { MotherId } from '../../trade/index.ts'
import { bad, known, made, type RowOutcome, type SheetRow, textIn } from '../reading/sheet-row.ts'
import { treeIn } from './kind-of-row.ts'
import { cultivarNamed } from './make-kind.ts'
import type { Making } from './making.ts'
import { freeId, slug } from './slug.ts'
import { foreignCultivar } from './take-kinds.ts'

/** An accession of a collection: what is said by descriptors is its passport, all else stands in its provenance. */
export function takeAccession(making: Making, row: SheetRow): RowOutcome {
  const genus = textIn(row, 'GENUS')
  const botanical =
    textIn(row, 'botanical') ??
    (genus === null ? null : [genus, textIn(row, 'SPECIES')].filter(Boolean).join(' '))
  const fruit = botanical ?? textIn(row, 'CROPNAME')
  const number = textIn(row, 'ACCENUMB')
  const name = textIn(row, 'ACCENAME') ?? number
  if (fruit === null || name === null)
    return bad(fruit === null ? 'GENUS' : 'ACCENUMB', 'an accession needs its fruit, and a number or a name')
  const tree = treeIn(making, {
    ...row,
    values: new Map([
      ['fruit', fruit],
      ['cultivar', name],
    ]),
  })
  const cultivar =
    tree.species === undefined
      ? foreignCultivar(making, fruit, name)
      : cultivarNamed(making, tree.species, name)
  const id = (number ?? freeId(slug(name), one => making.mothers.has(one as MotherId))) as MotherId
  const taken = making.mothers.get(id)
  const { passport, provenance } = toldOf(row, botanical)
  const isOther =
    canonicalJson([taken?.passport, taken?.provenance]) !== canonicalJson([passport, provenance])
  if (taken !== undefined && isOther && making.nursery.mothers.get(id) === undefined)
    return bad('ACCENUMB', `the number ${number} comes twice, with other data`)
  const mother = Mother.safeParse({
    ...taken,
    id,
    name: textIn(row, 'ACCENAME') ?? `${fruit} ${number}`,
    cultivar: cultivar.id,
    provenance: provenance === '' ? (taken?.provenance ?? '') : provenance,
    passport: { ...taken?.passport, ...passport },
    gives: taken?.gives ?? [],
  })
  if (!mother.success) return bad('ACCENUMB', mother.error.issues[0]?.message ?? 'it cannot be a mother tree')
  return making.setMother(mother.data) ? made : known
}

/**
 * What a row says of an accession. A botanical name of two words is the genus and the species; a longer one says more
 * than these, and is kept as it stands too.
 */
function toldOf(
  row: SheetRow,
  botanical: string | null,
): { readonly passport: Readonly<Record<string, string>>; readonly provenance: string } {
  const passport: Record<string, string> = {}
  const others = [...row.others]
  const words = botanical?.split(/\s+/) ?? []
  const isPlain = words.length === 2 && words.every(word => /^[\p{L}-]+$/u.test(word))
  for (const [field, value] of row.values) {
    if (field !== 'botanical') passport[field] = String(value)
    else if (!isPlain) others.push([field, String(value)])
  }
  return {
    passport: isPlain ? { GENUS: words[0]!, SPECIES: words[1]!, ...passport } : passport,
    provenance: others.map(([header, value]) => `${header} ${value}`).join('; '),
  }
}
