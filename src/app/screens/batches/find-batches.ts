import type { BatchRow } from '../../../api/index.ts'
import { folded } from '../../data/folded.ts'

type Said = Pick<BatchRow, 'name' | 'kindName' | 'stage'> & { readonly benches: readonly string[] }

/** What a batch is found by, made once for each: while the page is idle, or when something is looked for. */
export const batchTexts = (
  nameOfBench: (id: string) => string,
  /** A step in the language spoken. */
  term: (step: string) => string,
): ((row: Said) => string) => {
  const texts = new WeakMap<Said, string>()
  return row => {
    const before = texts.get(row)
    if (before !== undefined) return before
    const text = folded(
      `${row.name} ${row.kindName} ${term(row.stage)} ${row.benches.map(nameOfBench).join(' ')}`,
    )
    texts.set(row, text)
    return text
  }
}

/** The batches that have every word, in their order; without a word the very list. */
export const batchesWith = <T extends Said>(
  rows: readonly T[],
  said: string,
  textOf: (row: T) => string,
): readonly T[] => {
  const words = folded(said).split(/\s+/).filter(Boolean)
  return words.length === 0 ? rows : rows.filter(row => words.every(word => textOf(row).includes(word)))
}
