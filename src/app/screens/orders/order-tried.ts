import type { Order } from '../../../record/index.ts'

/** An order as it is tried: how many, how sure, due when. */
export interface OrderTried {
  readonly number: number
  readonly percent: number
  readonly due: string
}

export const asOrdered = ({ number, sure, due }: Order): OrderTried => ({
  number,
  percent: Math.round(100 * sure),
  due,
})

/** As it stands in the address of the page. */
export const triedAs = ({ number, percent, due }: OrderTried): string => `${number}/${percent}/${due}`

/** Reads it back; the order as it is where it is not so written. */
export function triedIn(text: string, order: Order): OrderTried {
  const [, number, percent, due] = /^(\d+)\/(\d\d)\/(\d{4}-\d\d-\d\d|)$/.exec(text) ?? []
  return number === undefined || percent === undefined || due === undefined || Number(number) === 0
    ? asOrdered(order)
    : { number: Number(number), percent: Number(percent), due }
}
