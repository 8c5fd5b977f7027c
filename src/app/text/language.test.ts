import { expect, test } from 'vitest'
import { languageOfSystem } from './language.ts'

test.each([
  [['es-MX', 'en'], 'es'],
  [['ca-ES', 'es-ES', 'en'], 'es'],
  [['en-US', 'es'], 'en'],
  [['ES_es.UTF-8'], 'es'],
  [['de-CH', 'fr'], 'en'],
  [[], 'en'],
])(
  'a system that speaks %j is answered in %s: the first language with a catalogue, else English',
  (spoken, language) => {
    expect(languageOfSystem(spoken)).toBe(language)
  },
)
