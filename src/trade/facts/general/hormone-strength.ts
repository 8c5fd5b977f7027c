import { fromMemory, published } from './published.ts'

/** Strength of rooting hormone (IBA) in ppm, by use. More is not better. The label of the product binds. */
export const ibaPpm = {
  softwoodQuickDip: fromMemory(500, 1000, 3000, 'guava softwood 4000 (AYYASH1992)'),
  semiHardwoodQuickDip: published(
    1000,
    3000,
    6000,
    ['AYYASH1992', 'OLIVE_MOSUL', 'KIWI_BROCK', 'KIWI_TURK'],
    {
      typicalBasis: 'interpolated',
      note: 'guava 1000, olive 3000 to 5000, kiwifruit 4000 to 8000',
    },
  ),
  hardwoodQuickDip: published(
    1000,
    2500,
    12000,
    ['ACTA54_PRUNUS', 'NECAS2016', 'RYALS2025', 'OLIVE_HW', 'SASSO2010B', 'MEHTA2018', 'POM_CIHEAM'],
    { note: 'plum and peach 2000, pear 2500, grape 500 to 2000, pomegranate to 12000' },
  ),
  longSoak: fromMemory(20, 100, 200, '4 to 24 hours, mg to the litre'),
  airLayerPaste: published(1000, 2500, 6000, ['RAHMAN2002', 'PAUL2009', 'SAROJ2021'], {
    note: 'lychee 2500, water apple 1000, guava 6000',
  }),
  moundLayerRinged: published(750, 1500, 2500, ['ERDOGAN2005', 'LITCHI_LESSON2019'], {
    typicalBasis: 'interpolated',
    note: 'hazel 750, lychee 2500',
  }),
} as const
