import { type RateBook, readRateBook } from '../../planning/index.ts'
import type { Nursery } from '../../record/index.ts'

const books = new WeakMap<Nursery, { readonly today: string; readonly book: RateBook }>()

/** The rate book of a nursery as it stands today, read once until the log grows or the day ends. */
export const rateBookOf = (nursery: Nursery, today: string): RateBook => {
  const kept = books.get(nursery)
  if (kept?.today === today) return kept.book
  const book = readRateBook(nursery, today)
  books.set(nursery, { today, book })
  return book
}
