import type { Order } from '../../../record/index.ts'
import type { KindId, OrderId } from '../../../trade/index.ts'
import { dayAfter } from '../../text/format.ts'

/** An order as it is being typed: everything text. */
export interface OrderDraft {
  readonly id: string
  readonly kind: string | null
  readonly number: string
  readonly due: string
  readonly earliest: string
  readonly latest: string
  readonly buyer: string
  readonly surePercent: string
  readonly price: string
}

export type Wrong = Partial<Record<'kind' | 'number' | 'due' | 'dates' | 'sure', true>>

/** Two weeks before and four after the due day: common practice, no source; the buyer says otherwise. */
const EARLIER_DAYS = 14
const LATER_DAYS = 28

export const datesAround = (due: string) => ({
  earliest: dayAfter(due, -EARLIER_DAYS),
  latest: dayAfter(due, LATER_DAYS),
})

export const draftOf = (order: Order): OrderDraft => ({
  id: order.id,
  kind: order.kind,
  number: String(order.number),
  due: order.due,
  earliest: order.earliest,
  latest: order.latest,
  buyer: order.buyer,
  surePercent: String(Math.round(100 * order.sure)),
  price: order.price === null ? '' : String(order.price),
})

/** The next free number: one more than the greatest of those that end in digits. */
export const nextOrderId = (ids: readonly string[]): string => {
  const numbers = ids.flatMap(id => {
    const parts = /^(.*?)(\d+)$/.exec(id)
    return parts === null ? [] : [{ stem: parts[1]!, digits: parts[2]! }]
  })
  if (numbers.length === 0) return '1'
  const last = numbers.reduce((most, one) => (Number(one.digits) >= Number(most.digits) ? one : most))
  return last.stem + String(Number(last.digits) + 1).padStart(last.digits.length, '0')
}

/** The order as an entry takes it, or what is wrong with the draft. */
export const readDraft = (
  draft: OrderDraft,
  kept: Pick<Order, 'instead' | 'placed' | 'note'>,
): { readonly order: Order } | { readonly wrong: Wrong } => {
  const number = Number(draft.number)
  const sure = Number(draft.surePercent) / 100
  const dates = draft.due === '' ? null : datesAround(draft.due)
  const earliest = draft.earliest || dates?.earliest || ''
  const latest = draft.latest || dates?.latest || ''
  const wrong: Wrong = {
    ...(draft.kind === null ? { kind: true } : {}),
    ...(Number.isInteger(number) && number >= 1 ? {} : { number: true }),
    ...(draft.due === '' ? { due: true } : {}),
    ...(draft.due !== '' && !(earliest <= draft.due && draft.due <= latest) ? { dates: true } : {}),
    ...(sure >= 0.5 && sure <= 0.99 ? {} : { sure: true }),
  }
  if (Object.keys(wrong).length > 0 || draft.kind === null) return { wrong }
  return {
    order: {
      id: draft.id as OrderId,
      buyer: draft.buyer.trim(),
      kind: draft.kind as KindId,
      number,
      earliest,
      due: draft.due,
      latest,
      sure,
      price: draft.price.trim() === '' ? null : Number(draft.price.replace(',', '.')),
      ...kept,
    },
  }
}
