import type { Nursery } from '../../record/index.ts'

/**
 * Every device asks the same after every entry, and a nursery is never changed once folded: its last answer is kept with it.
 * The question says all that the answer rests on besides the nursery.
 */
export const onceForState = <Answer>() => {
  const last = new WeakMap<Nursery, { readonly question: string; readonly answer: Answer }>()
  return (nursery: Nursery, question: string, find: () => Answer): Answer => {
    const known = last.get(nursery)
    if (known?.question === question) return known.answer
    const answer = find()
    last.set(nursery, { question, answer })
    return answer
  }
}
