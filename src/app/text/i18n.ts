import i18next from 'i18next'
import { initReactI18next } from 'react-i18next'
import { en } from './en.ts'
import { keepLanguage, type Language, languageChosen, languageOfSystem } from './language.ts'
import { type Tree, withEveryForm } from './plural-forms.ts'

declare module 'i18next' {
  interface CustomTypeOptions {
    defaultNS: 'text'
    resources: { text: typeof en }
  }
}

/** A language that comes when it is asked for: every text by key, and the words that stand in records and facts in English. */
interface Translation {
  readonly text: Tree
  readonly terms: Readonly<Record<string, string>>
}
const translations: Readonly<Record<Exclude<Language, 'en'>, () => Promise<Translation>>> = {
  es: () => import('./es.ts').then(({ es, terms }) => ({ text: es, terms })),
}

const RIGHT_TO_LEFT = new Set(['ar', 'fa', 'he', 'ur'])

/** Fetches the words of a language, if they are not here yet, and speaks it from now on. */
async function speak(language: Language): Promise<void> {
  if (language !== 'en' && !i18next.hasResourceBundle(language, 'text')) {
    const { text, terms } = await translations[language]()
    i18next.addResourceBundle(language, 'text', withEveryForm(text, language))
    i18next.addResourceBundle(language, 'terms', terms)
  }
  await i18next.changeLanguage(language)
  document.documentElement.lang = language
  document.documentElement.dir = RIGHT_TO_LEFT.has(language) ? 'rtl' : 'ltr'
}

/** @param asked the language that the page's address asks for; else the one chosen on this device, or the system's. */
export async function startText(asked: Language | null = null): Promise<void> {
  await i18next.use(initReactI18next).init({
    lng: 'en',
    fallbackLng: 'en',
    defaultNS: 'text',
    ns: ['text'],
    resources: { en: { text: en } },
    interpolation: { escapeValue: false },
  })
  const wanted = asked ?? languageChosen() ?? languageOfSystem(navigator.languages)
  // Without the server, a language that was never fetched cannot be spoken: better English than nothing.
  await speak(wanted).catch(() => speak('en'))
}

/** Kept on this device; null follows the system. */
export async function chooseLanguage(chosen: Language | null): Promise<void> {
  await speak(chosen ?? languageOfSystem(navigator.languages))
  keepLanguage(chosen)
}
