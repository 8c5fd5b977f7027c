import type { BatchRow } from '../../../api/index.ts'
import { folded } from '../../data/folded.ts'

type Said = Pick<BatchRow, 'name' | 'kindName' | 'stage'> & { readonly benches: readonly string[] }

/**
 * What a batch is found by, made once for each. Thousands are alike in all but their name: what they share is put into
 * plain letters once for all of them, so that the first key is as quick as the next.
 */
export const batchTexts = (
  nameOfBench: (id: string) => string,
  /** A step in the language spoken. */
  term: (step: string) => string,
): ((row: Said) => string) => {
  const texts = new WeakMap<Said, string>()
  const shared = new Map<string, string>()
  const sharedOf = ({ kindName, stage, benches }: Said): string => {
    const key = `${kindName}\n${stage}\n${benches.join('\n')}`
    let text = shared.get(key)
    if (text === undefined) {
      text = folded(`${kindName} ${term(stage)} ${benches.map(nameOfBench).join(' ')}`)
      shared.set(key, text)
    }
    return text
  }
  return row => {
    const before = texts.get(row)
    if (before !== undefined) return before
    const text = `${folded(row.name)} ${sharedOf(row)}`
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
