import * as z from 'zod'

/**
 * Words in English, with the places of its parts in braces, so that it can be said in another language too:
 * `batch {name} counted {taken}`. A place with a capital, `{Name}`, has its part begin with one.
 */
export interface Phrase {
  readonly says: string
  readonly of: Readonly<Record<string, Part>>
}
/** A name, as it is; a number; a day; words that are said in the language too, one or a list of them. */
export type Part = string | number | { readonly day: string } | Phrase | readonly Phrase[]

export const Phrase: z.ZodType<Phrase> = z
  .object({ says: z.string(), of: z.record(z.string(), z.any()) })
  .readonly()

export const phrase = (says: string, of: Phrase['of'] = {}): Phrase => ({ says, of })

/** How a language says things. */
export interface Telling {
  /** The words in that language, their places in braces as in the English ones. */
  readonly words: (says: string) => string
  readonly number: (value: number) => string
  readonly day: (day: string) => string
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** What is said, as text. A place without its part stays as it is. */
export function told(what: Phrase, telling: Telling): string {
  const part = (one: Part): string => {
    if (typeof one === 'string') return one
    if (typeof one === 'number') return telling.number(one)
    if ('says' in one) return told(one, telling)
    return 'day' in one ? telling.day(one.day) : one.map(each => told(each, telling)).join(', ')
  }
  return telling.words(what.says).replace(/\{(\w+)\}/g, (place, name: string) => {
    const low = name.charAt(0).toLowerCase() + name.slice(1)
    const one = what.of[low]
    if (one === undefined) return place
    return low === name ? part(one) : capital(part(one))
  })
}

const plainEnglish: Telling = { words: says => says, number: String, day: day => day }

/** What is said, in English, numbers and days as programs write them. */
export const inEnglish = (what: Phrase): string => told(what, plainEnglish)

/** "grafting", "grafting and cuttings", "grafting, cuttings and seed". */
export const listed = (items: readonly Phrase[]): Phrase => {
  const last = items.at(-1)
  if (last === undefined) return phrase('')
  return items.length === 1 ? last : phrase('{some} and {last}', { some: items.slice(0, -1), last })
}
