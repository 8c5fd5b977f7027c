import { describe, expect, test } from 'vitest'
import * as science from './index.ts'

const sources = import.meta.glob<string>('./**/*.ts', { query: '?raw', import: 'default', eager: true })
const names = Object.keys(science)
const functions = Object.entries(science).flatMap(([name, value]) =>
  typeof value === 'function' ? [name] : [],
)
/** What checks are made of: no rule of the field to show. */
const plumbing = ['casesOf', 'sourceOf', 'outsideCheck']
/** Its example names a published series, which its outside check has in full. */
const byName = ['fitByLikelihood']

/** The comment above a public function. */
function docOf(name: string): string {
  for (const source of Object.values(sources)) {
    const at = source.search(new RegExp(`export (async )?(function|const) ${name}\\b`))
    if (at < 0) continue
    const before = source.slice(0, at).trimEnd()
    return before.endsWith('*/') ? before.slice(before.lastIndexOf('/**')) : ''
  }
  return ''
}

/** `@example expression // what it gives`, over several lines. */
const exampleOf = (doc: string) =>
  /@example ([\s\S]*?) \/\/ ([\s\S]*?)\s*(\*\/|\n \* @)/.exec(doc.replace(/\n \* {2,}/g, ' '))

const numbersIn = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : value !== null && typeof value === 'object'
      ? Object.values(value).flatMap(numbersIn)
      : []

/** Whether a number printed in a comment is the value, rounded as printed. */
function isPrinted(text: string, value: number): boolean {
  const decimals = /\.(\d+)/.exec(text)?.[1]?.length ?? 0
  return Math.abs(Number(text) - value) <= 0.5000001 * 10 ** -decimals
}

describe('the example in the words above every public function gives what it says:', () => {
  for (const name of functions.filter(each => ![...plumbing, ...byName].includes(each)))
    test(name, () => {
      const example = exampleOf(docOf(name))
      expect(example, 'an example stands above it').not.toBeNull()
      const [, expression, said] = example!
      const value: unknown = new Function(...names, `return (${expression})`)(...Object.values(science))
      if (typeof value === 'string') expect(said).toBe(`'${value}'`)
      else if (typeof value === 'boolean') expect(said).toBe(String(value))
      else if (Array.isArray(value) && typeof value[0] === 'string')
        expect(said).toBe(`[${value.map(text => `'${text}'`).join(', ')}]`)
      else {
        const got = numbersIn(value)
        const printed = said!.replaceAll('−', '-').match(/-?\d+(\.\d+)?/g) ?? []
        expect(printed.length).toBeGreaterThan(0)
        for (const text of printed)
          expect(
            got.some(number => isPrinted(text, number)),
            `${text} among ${got.slice(0, 12).join(', ')}`,
          ).toBe(true)
      }
    })
})
