/** What the browser says of the reader's language, as `Intl` takes it: some systems say more, as in `en-US@posix`. */
export function readerLocale(said: string = navigator.language): string {
  for (const tag of [said, said.split(/[@.]/)[0]!.replaceAll('_', '-')]) {
    try {
      const [locale] = Intl.getCanonicalLocales(tag)
      if (locale !== undefined) return locale
    } catch {
      // Not a language tag.
    }
  }
  return 'en'
}

/** Words in a language, dates and numbers as in the reader's region: a German who reads English has `en-DE`. */
export function localeFor(language: string, reader: string = readerLocale()): string {
  const said = new Intl.Locale(reader)
  const { region } = said.maximize()
  if (said.language === language) return reader
  return new Intl.Locale(language, region === undefined ? {} : { region }).toString()
}
