/** The languages that there is a catalogue for, each by its own name. */
export const LANGUAGES = { en: 'English', es: 'Español' } as const
export type Language = keyof typeof LANGUAGES

export const asLanguage = (said: string | null): Language | null =>
  said !== null && Object.hasOwn(LANGUAGES, said) ? (said as Language) : null

/** Of the languages that the reader's system speaks, in its order, the first that there is a catalogue for. */
export function languageOfSystem(spoken: readonly string[]): Language {
  for (const tag of spoken) {
    const language = asLanguage(tag.split(/[-_]/)[0]!.toLowerCase())
    if (language !== null) return language
  }
  return 'en'
}

const KEPT = 'budstick.language'

/** The language chosen on this device; null where the system's is followed. */
export const languageChosen = (): Language | null => asLanguage(localStorage.getItem(KEPT))

export const keepLanguage = (chosen: Language | null): void => {
  if (chosen === null) localStorage.removeItem(KEPT)
  else localStorage.setItem(KEPT, chosen)
}
