import type { BatchRow } from '../../../api/index.ts'
import { folded } from '../../data/folded.ts'

type Said = Pick<BatchRow, 'name' | 'kindName' | 'stage'> & { readonly benches: readonly string[] }

/**
 * Finds batches by words: those that have every word, in their order; without a word the very list. A word stands in a
 * batch's name or in what it shares with thousands of others, its kind, step and benches: whether it stands in one of these
 * is looked up once for all of them.
 */
export const batchFinder = (
  nameOfBench: (id: string) => string,
  /** A step in the language spoken. */
  term: (step: string) => string,
): (<T extends Said>(rows: readonly T[], said: string) => readonly T[]) => {
  const having = (word: string) => {
    const inKind = once((kind: string) => folded(kind).includes(word))
    const inStage = once((stage: string) => folded(term(stage)).includes(word))
    const onBench = once((benches: readonly string[]) =>
      benches.some(bench => folded(nameOfBench(bench)).includes(word)),
    )
    return ({ name, kindName, stage, benches }: Said): boolean =>
      inKind(kindName) || inStage(stage) || onBench(benches) || folded(name).includes(word)
  }
  return (rows, said) =>
    folded(said)
      .split(/\s+/)
      .filter(Boolean)
      .reduce((left, word) => left.filter(having(word)), rows)
}

/** Equal values of a column are one and the same: each is asked about once. */
const once = <T>(ask: (value: T) => boolean): ((value: T) => boolean) => {
  const known = new Map<T, boolean>()
  return value => {
    let answer = known.get(value)
    if (answer === undefined) {
      answer = ask(value)
      known.set(value, answer)
    }
    return answer
  }
}
