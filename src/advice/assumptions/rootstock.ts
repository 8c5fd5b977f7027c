/** A usual rootstock, and what it does to the tree upon it. Names are the trade's for kinds of stock, never one clone. */
export interface Rootstock {
  readonly id: string
  readonly name: string
  /** Canopy in full growth against that of the full-sized tree. */
  readonly vigourShare: number
  /** Years to first fruit against the fruit's own figure for grafted trees. */
  readonly yearsToFruitTimes: number
  /** Degrees by which it lets the tree bear more cold (+) or less (−). */
  readonly hardierCelsius: number
  /** Roots too weak to stand without a stake for life. */
  readonly stakeForLife: boolean
}

const stock = (
  id: string,
  name: string,
  vigourShare: number,
  yearsToFruitTimes: number,
  more: Partial<Pick<Rootstock, 'hardierCelsius' | 'stakeForLife'>> = {},
): Rootstock => ({
  id,
  name,
  vigourShare,
  yearsToFruitTimes,
  hardierCelsius: 0,
  stakeForLife: false,
  ...more,
})

/**
 * Which kinds of stock are usual is in the facts of each fruit; how strongly they grow is from memory but for three:
 * - apple by the room that its trees are given, 12, 18 and 25 feet each way, and years to fruit 2 to 3, 4 to 6 and 6 to 10;
 * - the hybrid stock of cherry, about 50 to 55 in 100 of mazzard;
 * - the clonal stock of pear, about 30 in 100 less than a seedling.
 * @source University of Arizona Cooperative Extension, Master Gardener Manual, ch. 11, table 1; NC-140 regional rootstock
 *   project, western sweet cherry, observations after seven seasons; T. Einhorn (Oregon State University) as reported in
 *   "Promising pear rootstocks"
 */
const usual: Readonly<Record<string, readonly Rootstock[]>> = {
  apple: [
    stock('dwarfing', 'a dwarfing clonal stock', 0.23, 0.75, { stakeForLife: true }),
    stock('semi-dwarfing', 'a semi-dwarfing clonal stock', 0.52, 1.2),
    stock('vigorous', 'a vigorous clonal or seedling stock', 1, 2.2),
  ],
  pear: [
    stock('quince', 'quince', 0.35, 0.8),
    stock('clonal-pear', 'a clonal pear stock', 0.7, 1),
    stock('seedling', 'seedling pear', 1, 1.3),
  ],
  cherry: [
    stock('semi-dwarfing', 'a semi-dwarfing hybrid', 0.53, 0.75),
    stock('seedling', 'mazzard or mahaleb seedling', 1, 1.3),
  ],
  plum: [
    stock('semi-dwarfing', 'a semi-dwarfing plum stock', 0.6, 0.9),
    stock('vigorous', 'a vigorous plum stock', 1, 1.1),
  ],
  peach: [
    stock('seedling', 'peach seedling', 1, 1),
    stock('plum', 'a plum-type clonal stock, for wet ground', 0.8, 1),
  ],
  apricot: [
    stock('seedling', 'apricot or peach seedling', 1, 1),
    stock('plum', 'a plum-type stock', 0.75, 0.95),
  ],
  orange_sweet: [
    stock('trifoliate', 'trifoliate orange or a citrange', 0.75, 0.95, { hardierCelsius: 1.5 }),
    stock('rough-lemon', 'rough lemon or its like', 1.1, 0.95, { hardierCelsius: -0.5 }),
  ],
  lemon: [
    stock('rough-lemon', 'rough lemon or its like', 1.1, 0.95),
    stock('tested', 'a tested selection that suits the cultivar', 1, 1),
  ],
  lime: [
    stock('rough-lemon', 'rough lemon or its like', 1.1, 0.95),
    stock('trifoliate', 'a trifoliate type', 0.75, 0.95, { hardierCelsius: 1 }),
  ],
  loquat: [stock('seedling', 'loquat seedling', 1, 1), stock('quince', 'quince', 0.5, 0.75)],
  cherimoya_atemoya: [
    stock('seedling', 'cherimoya seedling', 1, 1),
    stock('dwarfing', 'sugar-apple seedling, to dwarf', 0.6, 0.9),
  ],
  avocado: [
    stock('seedling', 'avocado seedling', 1, 1),
    stock('clonal', 'a clonal stock that bears root rot', 0.9, 1),
  ],
}

const ofTheSameFruit: readonly Rootstock[] = [stock('usual', 'the usual stock', 1, 1)]

export const rootstocksOf = (species: string): readonly Rootstock[] => usual[species] ?? ofTheSameFruit
