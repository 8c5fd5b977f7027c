import type { BenchStand } from '../../../api/index.ts'
import type { Body } from '../../../record/index.ts'
import type { BatchId, BenchId, StepId } from '../../../trade/index.ts'

/** Why there are fewer or more than the record has. `words` is said in own words, `moved` names the bench. */
export const CAUSES_FEWER = ['dead', 'sold', 'stolen', 'miscounted', 'moved', 'words'] as const
export const CAUSES_MORE = ['came', 'miscounted', 'words'] as const
export type Cause = (typeof CAUSES_FEWER)[number] | (typeof CAUSES_MORE)[number]

/** What was said of one line so far. */
export interface LineSaid {
  /** As typed; empty: not counted. */
  readonly seen: string
  readonly cause: Cause | ''
  readonly words: string
  readonly onto: string
}

export const nothingSaid: LineSaid = { seen: '', cause: '', words: '', onto: '' }

export interface CountLine {
  readonly batch: BatchId
  readonly name: string
  readonly kindName: string
  readonly step: StepId
  readonly stepName: string
  /** By the record. */
  readonly number: number
}

/** A bench being counted: lines that the record does not have there, and what was said of each line. */
export interface BenchCountDraft {
  readonly added: readonly CountLine[]
  readonly said: Readonly<Record<string, LineSaid>>
}

export const emptyCount: BenchCountDraft = { added: [], said: {} }

export const keyOf = ({ batch, step }: Pick<CountLine, 'batch' | 'step'>): string => `${batch} ${step}`

export const linesOf = (stand: BenchStand, draft: BenchCountDraft): readonly CountLine[] => [
  ...stand.lines,
  ...draft.added.filter(added => !stand.lines.some(line => keyOf(line) === keyOf(added))),
]

/** A whole number from 0; null while nothing is typed; undefined where it is none. */
export const seenIn = (text: string): number | null | undefined =>
  text.trim() === '' ? null : /^\d{1,7}$/.test(text.trim()) ? Number(text) : undefined

export interface Counted {
  readonly line: CountLine
  readonly seen: number
  readonly said: LineSaid
}

/** The lines of which a number was written, in their order. */
export const countedIn = (stand: BenchStand, draft: BenchCountDraft): readonly Counted[] =>
  linesOf(stand, draft).flatMap(line => {
    const said = draft.said[keyOf(line)] ?? nothingSaid
    const seen = seenIn(said.seen)
    return seen === null || seen === undefined ? [] : [{ line, seen, said }]
  })

const isExplained = ({ line, seen, said: { cause, words, onto } }: Counted): boolean =>
  seen === line.number ||
  (cause !== '' && (cause !== 'words' || words.trim() !== '') && (cause !== 'moved' || onto !== ''))

/**
 * The entries of a counted bench, all at once: plants that stand on another bench are moved there, and then the bench
 * is counted as it was seen. Null while a difference has no cause.
 */
export function bodiesOfCount(
  bench: BenchId,
  counted: readonly Counted[],
  causeText: (cause: Exclude<Cause, 'words' | 'moved'>) => string,
): readonly Body[] | null {
  if (counted.length === 0 || !counted.every(isExplained)) return null
  const moves: Body[] = []
  const lines = counted.map(({ line: { batch, step, number: stood }, seen, said }) => {
    const { cause, words, onto } = said
    if (cause === 'moved' && seen < stood) {
      moves.push({ kind: 'moved/1', batch, step, number: stood - seen, to: onto as BenchId })
      return { batch, step, stood: seen, counted: seen, cause: '' }
    }
    const because =
      seen === stood || cause === '' || cause === 'moved'
        ? ''
        : cause === 'words'
          ? words.trim()
          : causeText(cause)
    return { batch, step, stood, counted: seen, cause: because }
  })
  return [...moves, { kind: 'bench-counted/1', bench, lines }]
}
