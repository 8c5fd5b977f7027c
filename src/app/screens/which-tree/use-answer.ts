import { useDeferredValue, useEffect, useMemo, useState } from 'react'
import {
  type Answer,
  type Question,
  type TurningPoint,
  turningPoints,
  whichTree,
} from '../../../advice/index.ts'
import type { Species } from '../../../trade/facts/index.ts'

/** An answer with what it answers, which while somebody types may lie a moment behind what is asked. */
export interface Answered {
  readonly question: Question
  readonly species: Species
  readonly answer: Answer
}

/** The answer to a question, at once; typing does not wait for it. */
export function useAnswered(question: Question, species: Species): Answered {
  const asked = useMemo(() => ({ question, species }), [question, species])
  const answered = useDeferredValue(asked)
  return useMemo(() => ({ ...answered, answer: whichTree(answered.question, answered.species) }), [answered])
}

/** Quiet before the search begins, and the longest it works without letting the page breathe. */
const QUIET_MS = 500
const STRETCH_MS = 12

/** What would turn an answer, found little by little once the question rests. */
export function useTurns(
  question: Question,
  species: Species,
  answer: Answer,
): { readonly turns: readonly TurningPoint[]; readonly isLooking: boolean } {
  const [found, setFound] = useState<{
    readonly of: Answer | undefined
    readonly turns: readonly TurningPoint[]
    readonly isLooking: boolean
  }>({ of: undefined, turns: [], isLooking: true })

  useEffect(() => {
    const search = turningPoints(question, species, answer)
    const turns: TurningPoint[] = []
    let waiting: ReturnType<typeof setTimeout>
    const goOn = () => {
      const until = performance.now() + STRETCH_MS
      while (performance.now() < until) {
        const next = search.next()
        if (next.done) return setFound({ of: answer, turns, isLooking: false })
        if (next.value !== undefined) turns.push(next.value)
      }
      waiting = setTimeout(goOn)
    }
    waiting = setTimeout(goOn, QUIET_MS)
    return () => clearTimeout(waiting)
  }, [question, species, answer])

  return found.of === answer ? found : { turns: [], isLooking: true }
}
