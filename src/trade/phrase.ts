/**
 * Words in English, with the places of its parts in braces, so that it can be said in another language too:
 * `batch {name} counted {taken}`. A place with a capital, `{Name}`, has its part begin with one.
 */
export interface Phrase {
  readonly says: string
  readonly of: Readonly<Record<string, Part>>
}
/** A name, as it is; a number; a day; a measure; words that are said in the language too, one or a list of them. */
export type Part =
  | string
  | number
  | { readonly day: string }
  | { readonly amount: number; readonly unit: string }
  | Phrase
  | readonly Phrase[]

export const phrase = (says: string, of: Phrase['of'] = {}): Phrase => ({ says, of })

/** "grafting", "grafting and cuttings", "grafting, cuttings and seed". */
export const listed = (items: readonly Phrase[]): Phrase => {
  const last = items.at(-1)
  if (last === undefined) return phrase('')
  return items.length === 1 ? last : phrase('{some} and {last}', { some: items.slice(0, -1), last })
}
