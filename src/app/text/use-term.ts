import i18next from 'i18next'
import { useTranslation } from 'react-i18next'

type Terms = Readonly<Record<string, string>>

/** A word of the trade that stands in records and facts in English, in the language spoken; as it stands where there is none. */
export type Term = (text: string) => string

/** @param terms by their English; a `#` in both stands for a number, one after the other */
export function termOf(terms: Terms): Term {
  const number = /\d+(?:\.\d+)?/g
  return text => {
    if (Object.hasOwn(terms, text)) return terms[text]!
    const said = terms[text.replace(number, '#')]
    if (said === undefined) return text
    const numbers = text.match(number) ?? []
    let next = 0
    return said.replace(/#/g, () => numbers[next++] ?? '#')
  }
}

const byLanguage = new Map<string, Term>()

/** The same function as long as the same language is spoken. */
export function useTerm(): Term {
  const { language } = useTranslation().i18n
  const term =
    byLanguage.get(language) ??
    termOf((i18next.getResourceBundle(language, 'terms') as Terms | undefined) ?? {})
  byLanguage.set(language, term)
  return term
}
