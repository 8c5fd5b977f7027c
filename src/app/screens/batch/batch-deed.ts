import type { BatchView } from '../../../api/index.ts'
import type { Body } from '../../../record/index.ts'
import type { BenchId, StepId } from '../../../trade/index.ts'

/** What can be said about a batch besides a count. */
export const DEEDS = ['advance', 'lost', 'move', 'note', 'hold'] as const
export type DeedKind = (typeof DEEDS)[number]

export interface DeedDraft {
  readonly step: StepId | null
  readonly number: string
  readonly bench: string
  readonly words: string
}

export const NEEDS: Readonly<Record<DeedKind, readonly ('number' | 'bench' | 'words')[]>> = {
  advance: ['number'],
  lost: ['number', 'words'],
  move: ['number', 'bench'],
  note: ['words'],
  hold: ['words'],
}

/** The entry that a deed makes, or null while something is missing. */
export const bodyOfDeed = (view: BatchView, kind: DeedKind, draft: DeedDraft): Body | null => {
  const { id: batch } = view.row
  const number = Number(draft.number)
  const words = draft.words.trim()
  const bench = draft.bench === '' ? null : (draft.bench as BenchId)
  for (const need of NEEDS[kind]) {
    if (need === 'number' && !(Number.isInteger(number) && number >= 1 && draft.step !== null)) return null
    if (need === 'bench' && bench === null) return null
    if (need === 'words' && words === '') return null
  }
  const step = draft.step!
  switch (kind) {
    case 'advance': {
      const next = view.steps[view.steps.findIndex(one => one.step === step) + 1]
      return next === undefined
        ? { kind: 'finished/1', batch, number, grade: '' }
        : { kind: 'advanced/1', batch, from: step, to: next.step, number, bench }
    }
    case 'lost':
      return { kind: 'lost/1', batch, step, number, cause: words }
    case 'move':
      return { kind: 'moved/1', batch, step, number, to: bench! }
    case 'note':
      return { kind: 'noted/1', about: batch, text: words }
    case 'hold':
      return { kind: 'hold-placed/1', on: { what: 'batch', batch }, why: words }
  }
}
