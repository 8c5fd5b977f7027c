import { expect, test } from 'vitest'
import { localeFor, readerLocale } from './reader-locale.ts'

test.each([
  ['de-CH', 'de-CH'],
  ['EN-us', 'en-US'],
  // The names of locales of POSIX, as a browser without a desktop passes them on.
  ['en-US@posix', 'en-US'],
  ['pt_BR.UTF-8', 'pt-BR'],
  ['', 'en'],
  ['C', 'en'],
])('a browser that says %j is read as %s', (said, locale) => {
  expect(readerLocale(said)).toBe(locale)
})

test.each([
  ['es', 'es-MX', 'es-MX'],
  ['es', 'en-US', 'es-US'],
  ['en', 'de', 'en-DE'],
  ['es', 'en', 'es-US'],
])(
  '%s for a reader of %s is written as in %s: the language chosen, the region kept',
  (language, reader, locale) => {
    expect(localeFor(language, reader)).toBe(locale)
  },
)
