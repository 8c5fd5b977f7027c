import { expect, test } from 'vitest'
import { en } from './en.ts'
import { es } from './es.ts'
import { type Tree, withEveryForm } from './plural-forms.ts'

/** Every text by its whole key. */
const textsOf = (tree: Tree, under = ''): [key: string, said: string][] =>
  Object.entries(tree).flatMap(([key, said]) =>
    typeof said === 'string' ? [[under + key, said] as [string, string]] : textsOf(said, `${under}${key}.`),
  )
const keysOf = (tree: Tree) => textsOf(tree).map(([key]) => key)
const variablesOf = (said: string) => [...said.matchAll(/\{\{(\w+)\}\}/g)].map(([, name]) => name).sort()

/** The same word, number or unit in both languages. */
const SAME_IN_SPANISH = new Set([
  'mothers.column.cultivar',
  'imports.csv',
  'imports.xlsx',
  'whichTree.assumptions.typical',
  'whichTree.making.minutes',
])

const english = new Map(textsOf(en))
const spanish = textsOf(es)

test('the Spanish catalogue has each key of the English one and none besides', () => {
  expect(keysOf(es).sort()).toEqual(keysOf(en).sort())
})

test('each Spanish text puts in what the English one does, no more and no less', () => {
  const otherwise = spanish.filter(
    ([key, said]) => String(variablesOf(said)) !== String(variablesOf(english.get(key) ?? '')),
  )
  expect(otherwise).toEqual([])
})

test('no Spanish text is the English one, but for words that are the same in both', () => {
  const hasWords = (said: string) => /\p{L}{2}/u.test(said.replace(/\{\{\w+\}\}/g, ''))
  const same = spanish
    .filter(([key, said]) => said === english.get(key) && hasWords(said))
    .map(([key]) => key)
  expect(same.filter(key => !SAME_IN_SPANISH.has(key))).toEqual([])
  expect([...SAME_IN_SPANISH].filter(key => !same.includes(key))).toEqual([])
})

// Plural categories of Spanish: Unicode CLDR, Language plural rules (one, many, other; many: whole millions).
test('a million plants are said in Spanish too: a form that the catalogue leaves out is its usual one', () => {
  const whole = new Map(textsOf(withEveryForm(es, 'es')))
  expect(new Intl.PluralRules('es').select(1_000_000)).toBe('many')
  expect(whole.get('common.plants_many')).toBe(whole.get('common.plants_other'))
  const bases = keysOf(es)
    .filter(key => key.endsWith('_other'))
    .map(key => key.slice(0, -'_other'.length))
  const forms = new Intl.PluralRules('es').resolvedOptions().pluralCategories
  expect(bases.flatMap(base => forms.map(form => `${base}_${form}`)).filter(key => !whole.has(key))).toEqual(
    [],
  )
})
