import { canonicalJson, Order } from '../../record/index.ts'
import { dayNumber, dayText } from '../../science/index.ts'
import type { OrderId } from '../../trade/index.ts'
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
import { kindOfRow } from './kind-of-row.ts'
import type { Making } from './making.ts'

/** How long before and after its day an order is taken, and how sure it is to be, where nothing is said. Common practice. */
const USUAL = { daysBefore: 42, daysAfter: 28, sure: 0.9 }
const SURE = { least: 0.5, most: 0.99 }

const isOver =
  /^(delivered|done|closed|complete[d]?|shipped|sent|cancelled|canceled|void|geliefert|erledigt|storniert|livr[ée]e?|annul[ée]e?|entregad[oa]|cancelad[oa]|anulad[oa]|consegnat[oa]|annullat[oa]|geleverd|geannuleerd)$/iu

const later = (day: string, days: number): string => dayText(dayNumber(day) + days)

/** Numbers of orders that come in several rows of the same files: each row is then an order of its own. */
export interface OrderNumbers {
  readonly isShared: (number: string) => boolean
  readonly taken: Set<string>
}

export function takeOrder(making: Making, row: SheetRow, told: RowTold, numbers: OrderNumbers): RowOutcome {
  const status = textIn(row, 'status')
  if (status !== null && isOver.test(status)) return bad('status', `it is over: ${status}`)
  const number = numberIn(row, 'number') ?? 0
  if (number < 1) return bad('number', 'an order asks for at least one tree')
  const named = kindOfRow(making, row, told)
  if (named.kind === 'bad') return named
  const kind = named.kindOfTree
  const due = textIn(row, 'due')!
  const span = spanOf(row, told, due)
  const sure = sureOf(row, told)
  const price = numberIn(row, 'price')
  const id = idOf(row, kind.id, due, numbers)
  const before = making.orders.get(id)
  const order = Order.safeParse({
    instead: [],
    ...before,
    id,
    buyer: textIn(row, 'buyer') ?? before?.buyer ?? '',
    kind: kind.id,
    number,
    due,
    ...span,
    sure,
    price: price === null || price < 0 ? null : price,
    placed: textIn(row, 'placed') ?? before?.placed ?? null,
    note: textIn(row, 'note') ?? before?.note ?? '',
  })
  if (!order.success) return bad('due', order.error.issues[0]?.message ?? 'it cannot be an order')
  if (due < making.today)
    told.noted('due', 'this day is over', 'taken as it stands; the plan shows it as late')
  if (before !== undefined && canonicalJson(before) === canonicalJson(order.data)) return known
  making.orders.set(id, order.data)
  making.tell(
    making.today,
    before === undefined
      ? { kind: 'order-placed/1', order: order.data }
      : { kind: 'order-changed/1', order: order.data, why: 'read from a list' },
  )
  return made
}

function spanOf(row: SheetRow, told: RowTold, due: string): { earliest: string; latest: string } {
  let earliest = textIn(row, 'earliest') ?? later(due, -USUAL.daysBefore)
  let latest = textIn(row, 'latest') ?? later(due, USUAL.daysAfter)
  if (earliest > due) {
    told.noted('earliest', 'it is after the day on which the order is due', `taken as ${due}`)
    earliest = due
  }
  if (latest < due) {
    told.noted('latest', 'it is before the day on which the order is due', `taken as ${due}`)
    latest = due
  }
  return { earliest, latest }
}

function sureOf(row: SheetRow, told: RowTold): number {
  const said = numberIn(row, 'sure')
  if (said === null) return USUAL.sure
  const sure = Math.min(SURE.most, Math.max(SURE.least, said))
  if (sure !== said)
    told.noted('sure', 'an order can be 50 to 99 % sure', `taken as ${Math.round(sure * 100)} %`)
  return sure
}

/** Its number; with the kind where several rows share it; without one, its buyer, kind and day. The same rows give the same names. */
function idOf(row: SheetRow, kind: string, due: string, { isShared, taken }: OrderNumbers): OrderId {
  const said = textIn(row, 'order')
  const wanted = (
    said === null
      ? [textIn(row, 'buyer') ?? 'stock', kind, due].join(' ')
      : isShared(said)
        ? `${said} ${kind}`
        : said
  ).slice(0, 110)
  let id = wanted
  for (let nth = 2; taken.has(id); nth++) id = `${wanted} #${nth}`
  taken.add(id)
  return id as OrderId
}
