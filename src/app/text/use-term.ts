import i18next from 'i18next'
import { useTranslation } from 'react-i18next'

type Terms = Readonly<Record<string, string>>

/** A word of the trade that stands in records and facts in English, in the language spoken; as it stands where there is none. */
export type Term = (text: string) => string

const termIn = (language: string): Term => {
  const terms = (i18next.getResourceBundle(language, 'terms') as Terms | undefined) ?? {}
  return text => (Object.hasOwn(terms, text) ? terms[text]! : text)
}

const byLanguage = new Map<string, Term>()

/** The same function as long as the same language is spoken. */
export function useTerm(): Term {
  const { language } = useTranslation().i18n
  const term = byLanguage.get(language) ?? termIn(language)
  byLanguage.set(language, term)
  return term
}
