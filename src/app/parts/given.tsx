import { useTerm } from '../text/use-term.ts'

/** What the facts say in a sentence: in the language spoken where there are words for it, else marked as English. */
export function Given({ says }: { readonly says: string }) {
  const own = useTerm()(says)
  return own === says ? <span lang="en">{says}</span> : own
}
