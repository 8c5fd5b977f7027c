import { Mother } from '../record/index.ts'
import { type Species, severalUnions, speciesById, starterProtocol } from '../trade/facts/index.ts'
import {
  Cultivar,
  CultivarId,
  Kind,
  type Material,
  MotherId,
  type Protocol,
  SpeciesId,
  windowMonths,
} from '../trade/index.ts'
import { type Line, stockLines, treeLines } from './fruits.ts'

/** A line of the list with everything that follows from it. */
export interface Grown {
  readonly line: Line
  readonly kind: Kind
  readonly cultivars: readonly Cultivar[]
  readonly protocols: readonly Protocol[]
  readonly yearly: number
}

export interface NurseryList {
  readonly stocks: readonly Grown[]
  readonly trees: readonly Grown[]
  readonly mothers: readonly Mother[]
}

const slug = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/’/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')

export const typicalSurvival = (protocol: Protocol): number =>
  protocol.steps.reduce((share, step) => share * step.survival.typical, 1)

const BUY_IN_NOTICE_WEEKS = 8

const theFruit = (line: Line): Species => {
  const species = speciesById(SpeciesId.parse(line.species))
  if (species === undefined) throw new Error(`The facts know no fruit "${line.species}".`)
  return species
}

const grown = (line: Line, name: string, yearly: number, on: Grown | undefined): Grown => {
  const species = theFruit(line)
  const product = line.form === 'rootstock' ? 'rootstock' : 'tree'
  const unions = { cultivars: line.cultivars.length, hasInterstem: false }
  const protocols = line.ways.map(method => {
    const one = starterProtocol(method, species, product)
    return unions.cultivars > 1 ? severalUnions(one, unions) : one
  })
  const cultivars = line.cultivars.map((cultivar, at) =>
    Cultivar.parse({
      id: CultivarId.parse(`${line.species}-${slug(cultivar)}`),
      name: cultivar,
      species: species.id,
      pollination: species.reproduction.pollination.text,
      licence:
        line.licensed === undefined || at > 0
          ? null
          : { owner: 'the raiser', treesPerYear: line.licensed, until: null, feePerTree: 0.8 },
    }),
  )
  const kind = Kind.parse({
    id: slug(name),
    name,
    species: species.id,
    cultivars: cultivars.map(({ id }) => id),
    form: line.form,
    rootstock: on?.kind.id ?? null,
    size: line.size,
    price: line.price,
    holdingCostPerWeek: Math.round(line.price * 0.4) / 100,
    buyIn:
      product === 'rootstock'
        ? { price: line.price * 1.6, weeksNotice: BUY_IN_NOTICE_WEEKS, mostPerWeek: 150 }
        : null,
    ways: protocols.map(({ id }) => ({ protocol: id, rootstocks: on === undefined ? [] : [on.kind.id] })),
  })
  return { line, kind, cultivars, protocols, yearly }
}

const nameOf = (line: Line): string => {
  const fruit = theFruit(line).commonName.replace(/ \(.*| and .*|, .*| \/ .*/, '')
  if (line.cultivars.length === 0) return `${fruit} seedling`
  if (line.cultivars.length > 1) return `${fruit}, family tree of ${line.cultivars.length}`
  return `${fruit} ‘${line.cultivars[0]}’`
}

/** A year's need of rootstocks follows from the trees worked on them. */
const stockNeed = (key: string): number =>
  Math.ceil(treeLines.filter(line => line.on === key).reduce((sum, line) => sum + line.yearly, 0) * 1.55)

/** Months in which material may be taken: those of the start, and one before for wood that is kept. */
const supplyMonths = (protocol: Protocol): number[] => {
  const months = windowMonths(protocol.window, 'north')
  return [...new Set(months.flatMap(month => [month, ((month + 10) % 12) + 1]))].sort((a, b) => a - b)
}

const mothersOf = (list: readonly Grown[]): Mother[] => {
  const need = new Map<
    string,
    { cultivar: Cultivar; byMaterial: Map<Material, { perYear: number; months: Set<number> }> }
  >()
  for (const item of list)
    for (const protocol of item.protocols)
      for (const taking of protocol.takes) {
        if (taking.what !== 'material') continue
        for (const cultivar of item.cultivars) {
          const known = need.get(cultivar.id) ?? { cultivar, byMaterial: new Map() }
          need.set(cultivar.id, known)
          const of = known.byMaterial.get(taking.material) ?? { perYear: 0, months: new Set<number>() }
          of.perYear += (item.yearly / typicalSurvival(protocol)) * taking.perPlant * 2.4
          for (const month of supplyMonths(protocol)) of.months.add(month)
          known.byMaterial.set(taking.material, of)
        }
      }
  const perTree: Partial<Record<Material, number>> = { branches: 160, seed: 900 }
  const mothers: Mother[] = []
  for (const { cultivar, byMaterial } of need.values()) {
    const trees = Math.min(
      2,
      Math.max(
        1,
        ...[...byMaterial].map(([material, { perYear }]) => Math.ceil(perYear / (perTree[material] ?? 700))),
      ),
    )
    for (let nth = 0; nth < trees; nth++) {
      const at = mothers.length
      mothers.push(
        Mother.parse({
          id: MotherId.parse(`M${String(at + 1).padStart(2, '0')}`),
          name: `${cultivar.name} ${nth + 1}`,
          cultivar: cultivar.id,
          block: at % 2 === 0 ? 'North block' : 'Wall block',
          position: { xMetres: 4 + (at % 10) * 6, yMetres: 4 + Math.floor(at / 10) * 5 },
          planted: `${2009 + ((at * 7) % 11)}-03-10`,
          provenance: 'Worked here from wood of a tree whose fruit was seen true to name.',
          gives: [...byMaterial].map(([material, { perYear, months }]) => ({
            material,
            months: [...months].sort((a, b) => a - b),
            perYear: Math.ceil(perYear / trees / 10) * 10,
          })),
        }),
      )
    }
  }
  return mothers
}

/** Stool beds and seed trees of the rootstocks: one each, with plenty to give. */
const stockMothers = (
  stocks: readonly Grown[],
  firstNumber: number,
): { mothers: Mother[]; cultivars: Cultivar[] } => {
  const cultivars: Cultivar[] = []
  const mothers = stocks.map((stock, nth) => {
    const cultivar = Cultivar.parse({
      id: `${stock.kind.id}-source`,
      name: stock.kind.name,
      species: stock.kind.species,
    })
    cultivars.push(cultivar)
    const taken = stock.protocols.flatMap(protocol =>
      protocol.takes.flatMap(taking => (taking.what === 'material' ? [{ taking, protocol }] : [])),
    )
    return Mother.parse({
      id: MotherId.parse(`M${String(firstNumber + nth).padStart(2, '0')}`),
      name: `${stock.kind.name}, source`,
      cultivar: cultivar.id,
      rootstockKind: stock.kind.id,
      block: 'Stool beds and seed trees',
      position: { xMetres: 4 + nth * 8, yMetres: 40 },
      planted: '2014-03-10',
      provenance: 'Raised here.',
      gives: taken.map(({ taking, protocol }) => ({
        material: taking.material,
        months: supplyMonths(protocol),
        perYear: Math.ceil((stock.yearly / typicalSurvival(protocol)) * taking.perPlant * 1.8),
      })),
    })
  })
  return { mothers, cultivars }
}

export const nurseryList = (): NurseryList & { readonly extraCultivars: readonly Cultivar[] } => {
  const byKey = new Map(
    Object.entries(stockLines).map(([key, line]) => [key, grown(line, key, stockNeed(key), undefined)]),
  )
  const stocks = [...byKey.values()]
  const trees = treeLines.map(line =>
    grown(line, nameOf(line), line.yearly, line.on === undefined ? undefined : byKey.get(line.on)),
  )
  const own = mothersOf(trees)
  const ofStocks = stockMothers(stocks, own.length + 1)
  return { stocks, trees, mothers: [...own, ...ofStocks.mothers], extraCultivars: ofStocks.cultivars }
}
