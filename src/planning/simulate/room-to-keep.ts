/** Bytes that may still be kept from one simulation to the next. */
export interface Room {
  left: number
}

const MOST_BYTES = 64 * 2 ** 20

export const emptyRoom = (): Room => ({ left: MOST_BYTES })
