import type { MethodId, TreeForm } from '../trade/index.ts'

/** A line of the nursery's own list: what is grown, by which ways, on what, and how many a year are asked for. */
export interface Line {
  readonly species: string
  /** Invented names. Empty for a rootstock or seedlings of no name. */
  readonly cultivars: readonly string[]
  readonly form: TreeForm
  readonly ways: readonly MethodId[]
  /** Name of the rootstock line that it is worked on. */
  readonly on?: string
  readonly size: string
  readonly price: number
  readonly yearly: number
  /** Of a protected cultivar: trees a year that its owner allows. */
  readonly licensed?: number
}

const stock = (species: string, way: MethodId, size: string, price: number): Line => ({
  species,
  cultivars: [],
  form: 'rootstock',
  ways: [way],
  size,
  price,
  yearly: 0,
})

const worked = (
  species: string,
  cultivar: string,
  ways: readonly MethodId[],
  on: string,
  price: number,
  yearly: number,
  licensed?: number,
): Line => ({
  species,
  cultivars: [cultivar],
  form: 'worked',
  ways,
  on,
  size:
    on.startsWith('Apple') || on.startsWith('Pear') || on.startsWith('Plum') || on.startsWith('Cherry')
      ? 'bare root, one year'
      : '5 l pot',
  price,
  yearly,
  ...(licensed === undefined ? {} : { licensed }),
})

const ownRooted = (
  form: 'cutting-grown' | 'layered',
  species: string,
  cultivar: string,
  ways: readonly MethodId[],
  size: string,
  price: number,
  yearly: number,
): Line => ({ species, cultivars: [cultivar], form, ways, size, price, yearly })

/** Rootstocks, by name. They are raised for the nursery's own use, and bought in when they run short. */
export const stockLines: Readonly<Record<string, Line>> = {
  'Apple layer stock': stock('apple', 'mound_layer', '7 to 10 mm', 1.6),
  'Pear cutting stock': stock('pear', 'hardwood_cutting', '7 to 10 mm', 1.7),
  'Plum cutting stock': stock('plum', 'hardwood_cutting', '7 to 10 mm', 1.5),
  'Cherry layer stock': stock('cherry', 'mound_layer', '7 to 10 mm', 1.8),
  'Citrus seedling stock': stock('orange_sweet', 'seed', '6 to 10 mm', 1.9),
  'Avocado seedling stock': stock('avocado', 'seed', '6 to 10 mm', 2.4),
  'Persimmon seedling stock': stock('persimmon', 'seed', '6 to 10 mm', 1.8),
  'Loquat seedling stock': stock('loquat', 'seed', '6 to 9 mm', 1.7),
  'Cherimoya seedling stock': stock('cherimoya_atemoya', 'seed', '6 to 10 mm', 2),
}

export const treeLines: readonly Line[] = [
  worked('apple', 'Evening Bell', ['chip_bud', 'whip_tongue_graft'], 'Apple layer stock', 11, 620),
  worked('apple', 'Lantern Sweet', ['chip_bud', 'whip_tongue_graft'], 'Apple layer stock', 11, 480),
  worked('apple', 'Old Ferryman', ['whip_tongue_graft'], 'Apple layer stock', 12, 220),
  worked('apple', 'Saltwind', ['chip_bud'], 'Apple layer stock', 14, 260, 400),
  {
    species: 'apple',
    cultivars: ['Evening Bell', 'Lantern Sweet', 'Saltwind'],
    form: 'multi-worked',
    ways: ['whip_tongue_graft'],
    on: 'Apple layer stock',
    size: 'bare root, three kinds',
    price: 29,
    yearly: 60,
  },
  worked('pear', 'Honey Quay', ['chip_bud', 'whip_tongue_graft'], 'Pear cutting stock', 12, 320),
  worked('pear', 'Grey Abbot', ['whip_tongue_graft'], 'Pear cutting stock', 12, 160),
  worked('plum', 'Tidewater', ['chip_bud'], 'Plum cutting stock', 12, 340),
  worked('plum', 'Little Reeve', ['chip_bud', 'whip_tongue_graft'], 'Plum cutting stock', 12, 200),
  worked('plum', 'Amber Sluice', ['chip_bud'], 'Plum cutting stock', 13, 140),
  worked('peach', 'Southwall', ['t_bud'], 'Plum cutting stock', 13, 260),
  worked('peach', 'Candle Hill', ['t_bud', 'chip_bud'], 'Plum cutting stock', 13, 160),
  worked('apricot', 'Brass Bell', ['t_bud'], 'Plum cutting stock', 14, 150),
  worked('cherry', 'Magpie’s Share', ['chip_bud'], 'Cherry layer stock', 14, 240),
  worked('cherry', 'Long Vigil', ['chip_bud'], 'Cherry layer stock', 14, 160),
  ownRooted('cutting-grown', 'fig', 'Brown Pilgrim', ['hardwood_cutting', 'air_layer'], '3 l pot', 9, 700),
  ownRooted('cutting-grown', 'fig', 'Green Purse', ['hardwood_cutting'], '3 l pot', 9, 420),
  ownRooted('cutting-grown', 'fig', 'Night Market', ['hardwood_cutting', 'air_layer'], '3 l pot', 10, 260),
  ownRooted('cutting-grown', 'pomegranate', 'Red Ledger', ['hardwood_cutting'], '3 l pot', 9, 380),
  ownRooted('cutting-grown', 'pomegranate', 'Pale Sultan', ['hardwood_cutting'], '3 l pot', 9, 220),
  ownRooted(
    'cutting-grown',
    'mulberry',
    'Ink Pot',
    ['hardwood_cutting', 'semi_hardwood_cutting'],
    '3 l pot',
    10,
    260,
  ),
  worked('persimmon', 'Copper Noon', ['whip_tongue_graft', 'chip_bud'], 'Persimmon seedling stock', 17, 280),
  worked('persimmon', 'Late Harvester', ['whip_tongue_graft'], 'Persimmon seedling stock', 17, 140),
  worked('loquat', 'First Light', ['top_wedge_graft', 't_bud'], 'Loquat seedling stock', 16, 190),
  ownRooted('cutting-grown', 'feijoa', 'Green Lantern', ['semi_hardwood_cutting'], '3 l pot', 11, 340),
  ownRooted('cutting-grown', 'feijoa', 'Quay Mist', ['semi_hardwood_cutting'], '3 l pot', 11, 180),
  worked('avocado', 'Slow Harbour', ['top_wedge_graft'], 'Avocado seedling stock', 22, 420),
  worked('avocado', 'Storm Glass', ['top_wedge_graft'], 'Avocado seedling stock', 23, 240, 320),
  worked('lemon', 'Winter Lamp', ['t_bud', 'chip_bud'], 'Citrus seedling stock', 15, 460),
  worked('lemon', 'Pale Witness', ['chip_bud'], 'Citrus seedling stock', 15, 200),
  worked('orange_sweet', 'Sunday Coat', ['t_bud', 'chip_bud'], 'Citrus seedling stock', 15, 300),
  ownRooted('layered', 'lychee', 'Paper Dragon', ['air_layer'], '5 l pot', 24, 130),
  ownRooted('layered', 'lychee', 'Rose Drum', ['air_layer'], '5 l pot', 24, 90),
  ownRooted('layered', 'longan', 'Clear Well', ['air_layer'], '5 l pot', 23, 60),
  ownRooted('layered', 'guava', 'Pink Ledge', ['air_layer'], '3 l pot', 13, 160),
  ownRooted('cutting-grown', 'olive', 'Silver Stair', ['semi_hardwood_cutting'], '3 l pot', 8, 680),
  ownRooted(
    'cutting-grown',
    'olive',
    'Dry Chapel',
    ['semi_hardwood_cutting', 'hardwood_cutting'],
    '3 l pot',
    8,
    360,
  ),
  ownRooted('cutting-grown', 'grape', 'Terrace Black', ['hardwood_cutting'], 'bare root', 5, 800),
  ownRooted('cutting-grown', 'kiwifruit', 'Moss Coat', ['semi_hardwood_cutting'], '3 l pot', 12, 180),
  ownRooted(
    'cutting-grown',
    'blueberry',
    'Harbour Ink',
    ['softwood_cutting', 'hardwood_cutting'],
    '2 l pot',
    7,
    620,
  ),
  worked('cherimoya_atemoya', 'Velvet Step', ['top_wedge_graft'], 'Cherimoya seedling stock', 21, 110),
  {
    species: 'passionfruit',
    cultivars: [],
    form: 'seedling',
    ways: ['seed'],
    size: '1.5 l pot',
    price: 4,
    yearly: 520,
  },
]

/** Who buys: invented, all within a day's drive of the water. */
export const buyers = [
  'Gull Lane orchard',
  'Allotments of the Upper Ford',
  'Two Bridges garden shop',
  'School at Wether Cross',
  'Hill farm, Sister Rocks',
  'The market stall',
  'Community orchard, Nine Elms Field',
  'Landing Stage hotel gardens',
  'Quince House',
  'Cider barn at Low Reach',
  'Parish of Saint Ebb',
  'Kite Hill smallholding',
] as const
