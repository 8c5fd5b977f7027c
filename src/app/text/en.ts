import { batch } from './en/batch.ts'
import { benches } from './en/benches.ts'
import { common } from './en/common.ts'
import { holds } from './en/holds.ts'
import { imports } from './en/import.ts'
import { journal } from './en/journal.ts'
import { lineage } from './en/lineage.ts'
import { methods } from './en/methods.ts'
import { mothers } from './en/mothers.ts'
import { nursery } from './en/nursery.ts'
import { orders } from './en/orders.ts'
import { pictures } from './en/pictures.ts'
import { protocols } from './en/protocols.ts'
import { rates } from './en/rates.ts'
import { season } from './en/season.ts'
import { settings } from './en/settings.ts'
import { shell } from './en/shell.ts'
import { species } from './en/species.ts'
import { suppose } from './en/suppose.ts'
import { trade } from './en/trade.ts'
import { whichTree } from './en/which-tree.ts'
import { work } from './en/work.ts'
import { year } from './en/year.ts'

/** Every word on the screens, in English. A translation is one more such tree. */
export const en = {
  common,
  shell,
  trade,
  pictures,
  work,
  orders,
  season,
  batch,
  mothers,
  benches,
  holds,
  rates,
  protocols,
  methods,
  journal,
  lineage,
  year,
  nursery,
  settings,
  imports,
  whichTree,
  species,
  suppose,
} as const
