import { useState } from 'react'
import { type BenchCountDraft, emptyCount } from './bench-count-draft.ts'

const keptAs = (bench: string) => `budstick.bench-count.${bench}`

const kept = (bench: string): BenchCountDraft => {
  const text = localStorage.getItem(keptAs(bench))
  return text === null ? emptyCount : (JSON.parse(text) as BenchCountDraft)
}

/** A count that was begun is kept on this device until it is accepted, whatever happens between. */
export const useBenchCount = (
  bench: string,
): readonly [BenchCountDraft, (draft: BenchCountDraft) => void] => {
  const [draft, setDraft] = useState(() => kept(bench))
  return [
    draft,
    next => {
      setDraft(next)
      if (next === emptyCount) localStorage.removeItem(keptAs(bench))
      else localStorage.setItem(keptAs(bench), JSON.stringify(next))
    },
  ]
}
