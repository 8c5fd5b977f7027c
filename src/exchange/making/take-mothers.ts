import { canonicalJson, Mother, type Supply } from '../../record/index.ts'
import { monthsOfSupply, type Species, usualYield } from '../../trade/facts/index.ts'
import {
  type Cultivar,
  type Kind,
  Material,
  type MotherId,
  monthsAtLatitude,
  type Protocol,
} from '../../trade/index.ts'
import { monthsIn } from '../cells/months.ts'
import { materialsCalled, type SupplySaid, suppliesIn } from '../cells/supplies.ts'
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
import { mothers } from '../sheets/mothers.ts'
import { treeIn, withFruit } from './kind-of-row.ts'
import { cultivarNamed, rootstockNamed, starterOf, usualMethods } from './make-kind.ts'
import type { Making } from './making.ts'
import type { TreeNamed } from './name-tree.ts'
import { freeId, slug } from './slug.ts'

const takesMaterial = ({ takes }: Protocol, material: Material): boolean =>
  takes.some(taking => taking.what === 'material' && taking.material === material)

/** The protocols that this mother's material can serve: of the kinds of its cultivar, else of its fruit's usual ways. */
function protocolsServed(
  making: Making,
  species: Species,
  cultivar: Cultivar | null,
  stock: Kind | null,
  tree: TreeNamed,
): Protocol[] {
  const kinds =
    stock !== null
      ? [stock]
      : [...making.kinds.values()].filter(kind => cultivar !== null && kind.cultivars.includes(cultivar.id))
  const own = kinds.flatMap(kind => kind.ways.flatMap(({ protocol }) => making.protocols.get(protocol) ?? []))
  if (own.length > 0) return own
  return usualMethods(making, { ...tree, species }).map(method => starterOf(making, method, species, 'tree'))
}

const materialCalled = materialsCalled(mothers.fields)

/** A stick is a stick: what is said of scions serves budding, and the other way round, where only the other is used. */
function asServed(making: Making, said: SupplySaid, served: readonly SupplySaid[], name: string): SupplySaid {
  const other: Partial<Record<Material, Material>> = { 'scion sticks': 'budwood', budwood: 'scion sticks' }
  const meant = other[said.material]
  const isServed = (material: Material) => served.some(one => one.material === material)
  if (meant === undefined || isServed(said.material) || !isServed(meant)) return said
  making.assume(
    `${said.material} of ${name}`,
    `The ${said.material} of ${name} are taken as ${meant}: that is what its ways use.`,
  )
  return { ...said, material: meant }
}

export function takeMother(making: Making, row: SheetRow, told: RowTold): RowOutcome {
  const stockName = textIn(row, 'gives rootstock')
  const fruit = withFruit(making, treeIn(making, row), row, told)
  if (fruit.kind === 'bad') return fruit
  const { tree } = fruit
  const { species } = tree
  const stock =
    stockName !== null || tree.form === 'rootstock'
      ? rootstockNamed(making, species, stockName ?? tree.cultivar)
      : null
  const cultivar = cultivarNamed(making, species, tree.cultivar ?? stock?.name ?? `${tree.said}, unnamed`)
  const served = protocolsServed(making, species, cultivar, stock, tree)
  const trees = Math.max(1, numberIn(row, 'trees') ?? 1)
  const whole = wholeSaid(row, told)
  const months = monthsSaid(row, told)
  const said: readonly SupplySaid[] =
    whole ??
    Material.options.flatMap(material => {
      const perTree = numberIn(row, material)
      return perTree === null
        ? []
        : [{ material, perYear: Math.max(0, perTree) * trees, perWeek: null, months }]
    })
  const named = textIn(row, 'mother')
  const id = named ?? freeId(slug(cultivar.name), one => making.mothers.has(one as MotherId))
  const before = making.mothers.get(id as MotherId)
  const assumed = [
    ...new Set(
      served.flatMap(({ takes }) =>
        takes.flatMap(t => (t.what === 'material' && t.part !== 'rootstock' ? [t.material] : [])),
      ),
    ),
  ].map(
    (material): SupplySaid => ({
      material,
      perYear: usualYield(material) * trees,
      perWeek: null,
      months,
    }),
  )
  const supplies =
    said.length > 0
      ? said.map(supply => (supply.months ? supply : asServed(making, supply, assumed, cultivar.name)))
      : assumed
  if (said.length === 0 && before === undefined && assumed.length > 0)
    making.assume(
      'what mother trees give',
      `Where it is not said what a mother tree may give, it is taken as what a grown tree gives without harm: ${[
        ...new Set(assumed.map(({ material }) => `${usualYield(material)} ${material} a year`)),
      ].join(', ')} and the like (common practice). Count and correct them: the plan leans on it.`,
    )
  const gives: Supply[] = supplies.map(supply => ({
    ...supply,
    months:
      supply.months ??
      monthsOfSupply(
        served
          .filter(protocol => takesMaterial(protocol, supply.material))
          .map(({ window }) => monthsAtLatitude(window, making.latitudeDegrees).months),
      ),
  }))
  const kept =
    said.length > 0 || before === undefined
      ? gives
      : before.gives.map(supply => (months === null ? supply : { ...supply, months }))
  const x = numberIn(row, 'x')
  const y = numberIn(row, 'y')
  const mother = Mother.safeParse({
    ...before,
    id,
    name:
      textIn(row, 'name') ??
      before?.name ??
      (named === null || /^[\dA-Z.\-/ ]{1,8}$/u.test(named)
        ? `${cultivar.name}${named === null ? '' : ` ${named}`}`
        : named),
    cultivar: cultivar.id,
    rootstockKind: stock?.id ?? before?.rootstockKind ?? null,
    block: textIn(row, 'block') ?? before?.block ?? '',
    position:
      x !== null && y !== null && x >= 0 && y >= 0 ? { xMetres: x, yMetres: y } : (before?.position ?? null),
    planted: textIn(row, 'planted') ?? before?.planted ?? null,
    provenance: textIn(row, 'provenance') ?? before?.provenance ?? '',
    gives: kept,
  })
  if (!mother.success) return bad('mother', mother.error.issues[0]?.message ?? 'it cannot be a mother tree')
  if (isTwice(making, mother.data, before))
    return bad('mother', `the number ${id} comes twice, for another tree or another place`)
  const isNew = making.setMother(mother.data)
  return retireAsSaid(making, mother.data.id, textIn(row, 'retired')) || isNew ? made : known
}

/** All that it gives, as one cell says it; null where none does, or where it cannot be read. */
function wholeSaid(row: SheetRow, told: RowTold): readonly SupplySaid[] | null {
  const text = textIn(row, 'gives')
  if (text === null) return null
  const read = suppliesIn(text, materialCalled)
  if ('supplies' in read) return read.supplies
  told.noted(
    'gives',
    `"${read.wrong}" does not say how much of what: 300 cuttings in May to Jul`,
    'taken as if nothing were said',
  )
  return null
}

function monthsSaid(row: SheetRow, told: RowTold): readonly number[] | null {
  const text = textIn(row, 'months')
  if (text === null) return null
  const months = monthsIn(text)
  if (months === null)
    told.noted('months', `"${text}" are no months: May to Jul, or 5, 6, 7`, 'taken as if nothing were said')
  return months
}

/** Given up on a day of which the record knows nothing yet. */
function retireAsSaid(making: Making, mother: MotherId, on: string | null): boolean {
  if (on === null || making.nursery.mothers.get(mother)?.retired != null) return false
  making.tell(on, { kind: 'mother-retired/1', mother, why: '' })
  return true
}

/** An earlier row gave the number to another tree: the two would be taken for one. */
const isTwice = (making: Making, now: Mother, before: Mother | undefined): boolean =>
  before !== undefined &&
  before !== making.nursery.mothers.get(now.id)?.mother &&
  canonicalJson([before.cultivar, before.block, before.position]) !==
    canonicalJson([now.cultivar, now.block, now.position])
