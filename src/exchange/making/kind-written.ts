import { productsOf, type Species, severalUnions, type Unions, unionsId } from '../../trade/facts/index.ts'
import { Kind, type KindId, type Protocol, TreeForm } from '../../trade/index.ts'
import { numberIn, type RowTold, type SheetRow, textIn } from '../reading/sheet-row.ts'
import { kindOfRow, treeIn, withFruit } from './kind-of-row.ts'
import { besideNamed, cultivarNamed, HOLDING_SHARE_A_WEEK, starterOf } from './make-kind.ts'
import type { Making } from './making.ts'
import type { TreeNamed } from './name-tree.ts'

/** The protocol of this id: the nursery's own, or the one of the facts, for so many unions where it is for several. */
function protocolWritten(
  making: Making,
  species: Species,
  id: string,
  { others, interstem }: TreeNamed,
): Protocol | undefined {
  const own = making.protocols.get(id as Protocol['id'])
  if (own) return own
  const unions: Unions = { cultivars: 1 + others.length, hasInterstem: interstem !== null }
  for (const { method } of species.ways)
    for (const product of productsOf(species, method)) {
      const one = starterOf(making, method, species, product)
      const isOne = one.id === id
      if (!isOne && unionsId(one.id, unions) !== id) continue
      const protocol = isOne ? one : severalUnions(one, unions)
      making.setProtocol(protocol)
      return protocol
    }
  return undefined
}

/** A kind as a table that was written out has it, by its own id and name, its cultivars and ways by theirs. */
export function kindWritten(
  making: Making,
  row: SheetRow,
  told: RowTold,
  id: KindId,
): ReturnType<typeof kindOfRow> {
  const form = TreeForm.safeParse(textIn(row, 'form'))
  const name = textIn(row, 'tree')
  if (!form.success || name === null) return kindOfRow(making, row, told)
  const found = withFruit(making, treeIn(making, row), row, told)
  if (found.kind === 'bad') return found
  const { species } = found.tree
  // The name is but a name here: what is worked on what stands in columns of its own.
  const tree: TreeNamed = {
    ...found.tree,
    ...(textIn(row, 'cultivar') === null ? { cultivar: null, others: [] } : {}),
    ...(textIn(row, 'interstem') === null ? { interstem: null } : {}),
  }
  const stock = textIn(row, 'rootstock') as KindId | null
  const ways = (textIn(row, 'ways') ?? '').split(/\s*;\s*/u).filter(Boolean)
  const protocols = ways.flatMap(way => protocolWritten(making, species, way, tree) ?? [])
  if (protocols.length < ways.length)
    told.noted('ways', 'not every protocol is known here', 'those that are known were taken')
  const cultivars = [
    ...(tree.cultivar === null ? [] : [cultivarNamed(making, species, tree.cultivar)]),
    ...tree.others.map(other => besideNamed(making, species, other)),
  ]
  const price = Math.max(0, numberIn(row, 'price') ?? 0)
  const kindOfTree = Kind.parse({
    id,
    name,
    species: species.id,
    cultivars: cultivars.map(one => one.id),
    form: form.data,
    rootstock: stock,
    interstem: tree.interstem === null ? null : besideNamed(making, species, tree.interstem).id,
    size: textIn(row, 'size') ?? '',
    price,
    holdingCostPerWeek: Math.max(0, numberIn(row, 'holding') ?? price * HOLDING_SHARE_A_WEEK),
    ways: protocols.map(protocol => ({
      protocol: protocol.id,
      rootstocks: stock !== null && protocol.takes.some(({ what }) => what === 'rootstock') ? [stock] : [],
    })),
  })
  making.setKind(kindOfTree)
  return { kind: 'kind', kindOfTree }
}
