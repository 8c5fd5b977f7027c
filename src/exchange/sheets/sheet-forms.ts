import { batches } from './batches.ts'
import { benches } from './benches.ts'
import { cultivars } from './cultivars.ts'
import { history } from './history.ts'
import { kinds } from './kinds.ts'
import { mothers } from './mothers.ts'
import { nursery } from './nursery.ts'
import { orders } from './orders.ts'
import { passport } from './passport.ts'
import { people } from './people.ts'
import type { SheetForm, SheetKind } from './sheet-form.ts'

/** In the order in which they are taken in: what others speak of comes first. */
export const sheetForms: readonly SheetForm[] = [
  nursery,
  benches,
  people,
  cultivars,
  kinds,
  orders,
  mothers,
  passport,
  batches,
  history,
]

const byKind = new Map(sheetForms.map(form => [form.kind, form]))
export const sheetForm = (kind: SheetKind): SheetForm => byKind.get(kind)!
export const isSheetKind = (text: string): text is SheetKind => byKind.has(text as SheetKind)
