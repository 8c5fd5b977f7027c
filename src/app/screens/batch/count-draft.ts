/** A count as it is being typed: text, empty where nothing was said. */
export interface CountDraft {
  readonly taken: string
  readonly dead: string
  readonly undecided: string
}
export const COUNT_FIELDS = ['taken', 'dead', 'undecided'] as const
export type CountField = (typeof COUNT_FIELDS)[number]

export const EMPTY_COUNT: CountDraft = { taken: '', dead: '', undecided: '' }

export interface ReadCount {
  readonly taken: number
  readonly dead: number
  readonly undecided: number
  /** More (above nought) or fewer than stood there. */
  readonly differs: number
}

const MOST_FIGURES = 7

/** Nothing said about those not yet to tell means: the rest of those that stood there. */
export const restOf = (draft: CountDraft, standing: number): number =>
  Math.max(0, standing - Number(draft.taken) - Number(draft.dead))

/** The three numbers of the count, or null while neither taken nor dead was said. */
export const readCount = (draft: CountDraft, standing: number): ReadCount | null => {
  if (draft.taken === '' && draft.dead === '' && draft.undecided === '') return null
  const taken = Number(draft.taken)
  const dead = Number(draft.dead)
  const undecided = draft.undecided === '' ? restOf(draft, standing) : Number(draft.undecided)
  return { taken, dead, undecided, differs: taken + dead + undecided - standing }
}

/** One figure more at the end, or one fewer. */
export const typed = (draft: CountDraft, field: CountField, key: string): CountDraft => {
  const was = draft[field]
  const now =
    key === 'erase' ? was.slice(0, -1) : `${was}${key}`.replace(/^0+(?=\d)/, '').slice(0, MOST_FIGURES)
  return { ...draft, [field]: now }
}
