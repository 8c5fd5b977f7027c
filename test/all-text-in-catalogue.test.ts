import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { comesToBe, type Node, nodesOf, parsed } from './phrases-in-code.ts'
import { root, sourceFiles } from './source-files.ts'

/** Attributes that a person sees or hears. */
const SPOKEN = new Set(['aria-label', 'aria-description', 'alt', 'title', 'placeholder', 'label', 'text'])
/** The program's own name is the same in every language. */
const NAME = 'Budstick'
const hasWords = (said: string) => said !== NAME && /\p{L}{2}/u.test(said)

function wordsOf(node: Node): string[] {
  switch (node.type) {
    case 'JSXText':
      return [String(node.value)]
    case 'JSXAttribute': {
      const value = node.value as Node | null
      if (value === null || !SPOKEN.has((node.name as { value: string }).value)) return []
      return comesToBe(value.type === 'JSXExpressionContainer' ? (value.expression as Node) : value)
    }
    case 'JSXElement':
      return (node.children as Node[]).flatMap(child =>
        child.type === 'JSXExpressionContainer' ? comesToBe(child.expression as Node) : [],
      )
    default:
      return []
  }
}

const wordsIn = (code: string): string[] => [...nodesOf(parsed(code, true))].flatMap(wordsOf)

test.each([
  ['<p>Two words</p>', 'Two words'],
  ['<p>{isLate ? "late" : t("work.today")}</p>', 'late'],
  ['<p>{`up to`}</p>', 'up to'],
  ['<input placeholder="Find" />', 'Find'],
])('a component that says %s is found out', (code, said) => {
  expect(wordsIn(code)).toContain(said)
})

test('no component says a word of its own: each stands in the catalogue', () => {
  const components = sourceFiles('src/app/').filter(path => path.endsWith('.tsx'))
  expect(components.length).toBeGreaterThan(100)
  const own = components.flatMap(path =>
    wordsIn(readFileSync(root + path, 'utf8'))
      .filter(hasWords)
      .map(said => `${path}: ${said}`),
  )
  expect(own).toEqual([])
})
