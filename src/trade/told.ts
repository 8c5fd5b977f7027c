import type { Part, Phrase } from './phrase.ts'

/** How a language says things. */
export interface Telling {
  /** The words in that language, their places in braces as in the English ones. */
  readonly words: (says: string) => string
  readonly number: (value: number) => string
  readonly day: (day: string) => string
  /** In the units of the reader, of a measure in the metric one. */
  readonly measure: (amount: number, unit: string) => string
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** What is said, as text. A place without its part stays as it is. */
export function told(what: Phrase, telling: Telling): string {
  const part = (one: Part): string => {
    if (typeof one === 'string') return one
    if (typeof one === 'number') return telling.number(one)
    if ('says' in one) return told(one, telling)
    if ('amount' in one) return telling.measure(one.amount, one.unit)
    return 'day' in one ? telling.day(one.day) : one.map(each => told(each, telling)).join(', ')
  }
  return telling.words(what.says).replace(/\{(\w+)\}/g, (place, name: string) => {
    const low = name.charAt(0).toLowerCase() + name.slice(1)
    const one = what.of[low]
    if (one === undefined) return place
    return low === name ? part(one) : capital(part(one))
  })
}

const plainEnglish: Telling = {
  words: says => says,
  number: String,
  day: day => day,
  measure: (amount, unit) => `${amount} ${unit}`,
}

/** What is said, in English, numbers and days as programs write them. */
export const inEnglish = (what: Phrase): string => told(what, plainEnglish)
