import { batch } from './es/batch.ts'
import { benches } from './es/benches.ts'
import { common } from './es/common.ts'
import { holds } from './es/holds.ts'
import { imports } from './es/import.ts'
import { journal } from './es/journal.ts'
import { lineage } from './es/lineage.ts'
import { methods } from './es/methods.ts'
import { mothers } from './es/mothers.ts'
import { nursery } from './es/nursery.ts'
import { orders } from './es/orders.ts'
import { pictures } from './es/pictures.ts'
import { protocols } from './es/protocols.ts'
import { rates } from './es/rates.ts'
import { season } from './es/season.ts'
import { settings } from './es/settings.ts'
import { shell } from './es/shell.ts'
import { species } from './es/species.ts'
import { suppose } from './es/suppose.ts'
import { trade } from './es/trade.ts'
import { whichTree } from './es/which-tree.ts'
import { work } from './es/work.ts'
import { year } from './es/year.ts'

/** Every word on the screens, in Spanish: usted, plain and short, with the words of the trade. */
export const es = {
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
}
export { terms } from './es/terms.ts'
