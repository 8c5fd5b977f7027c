import type { OrderRow } from '../../../api/index.ts'
import { answering } from '../../data/folded.ts'
import { isUnsure } from '../../pictures/chance/unsure.ts'

export const isOpen = ({ cancelled, dispatched, order }: OrderRow): boolean =>
  !cancelled && dispatched < order.number

/** The orders to show: open ones, those less sure than asked, or all; and of these the ones that answer to the words. */
export const chosenOrders = (
  rows: readonly OrderRow[],
  show: 'open' | 'risk' | 'all',
  find: string,
): readonly OrderRow[] => {
  const answers = answering(find)
  return rows.filter(row => {
    if (show !== 'all' && !isOpen(row)) return false
    if (show === 'risk' && !isUnsure(row.chance, row.order.sure)) return false
    return answers(`${row.order.id} ${row.kindName} ${row.order.buyer}`)
  })
}
