import { readFileSync } from 'node:fs'
import { parseSync } from '@swc/core'
import { expect, test } from 'vitest'
import { root, sourceFiles } from './source-files.ts'

type Node = { readonly type: string } & Readonly<Record<string, unknown>>

/** Attributes that a person sees or hears. */
const SPOKEN = new Set(['aria-label', 'aria-description', 'alt', 'title', 'placeholder', 'label', 'text'])
/** The program's own name is the same in every language. */
const NAME = 'Budstick'
const hasWords = (said: unknown) => typeof said === 'string' && said !== NAME && /\p{L}{2}/u.test(said)

/** Strings that an expression may come to be. */
function comesToBe(node: Node): unknown[] {
  switch (node.type) {
    case 'StringLiteral':
      return [node.value]
    case 'TemplateLiteral':
      return (node.quasis as { raw: string }[]).map(({ raw }) => raw)
    case 'ParenthesisExpression':
      return comesToBe(node.expression as Node)
    case 'ConditionalExpression':
      return [...comesToBe(node.consequent as Node), ...comesToBe(node.alternate as Node)]
    case 'BinaryExpression':
      return ['&&', '||', '??', '+'].includes(node.operator as string)
        ? [...comesToBe(node.left as Node), ...comesToBe(node.right as Node)]
        : []
    default:
      return []
  }
}

function wordsIn(node: unknown): unknown[] {
  if (Array.isArray(node)) return node.flatMap(wordsIn)
  if (typeof node !== 'object' || node === null) return []
  const said = node as Node
  const here =
    said.type === 'JSXText'
      ? [said.value]
      : said.type === 'JSXAttribute' && SPOKEN.has((said.name as { value: string }).value)
        ? attributeWords(said.value as Node | null)
        : said.type === 'JSXElement'
          ? (said.children as Node[]).flatMap(child =>
              child.type === 'JSXExpressionContainer' ? comesToBe(child.expression as Node) : [],
            )
          : []
  return [...here, ...Object.values(said).flatMap(wordsIn)]
}

const attributeWords = (value: Node | null): unknown[] =>
  value === null
    ? []
    : comesToBe(value.type === 'JSXExpressionContainer' ? (value.expression as Node) : value)

test.each([
  ['<p>Two words</p>', 'Two words'],
  ['<p>{isLate ? "late" : t("work.today")}</p>', 'late'],
  ['<p>{`up to`}</p>', 'up to'],
  ['<input placeholder="Find" />', 'Find'],
])('a component that says %s is found out', (code, said) => {
  expect(wordsIn(parseSync(code, { syntax: 'typescript', tsx: true }).body)).toContain(said)
})

test('no component says a word of its own: each stands in the catalogue', () => {
  const components = sourceFiles('src/app/').filter(path => path.endsWith('.tsx'))
  expect(components.length).toBeGreaterThan(100)
  const own = components.flatMap(path =>
    wordsIn(parseSync(readFileSync(root + path, 'utf8'), { syntax: 'typescript', tsx: true }).body)
      .filter(hasWords)
      .map(said => `${path}: ${said}`),
  )
  expect(own).toEqual([])
})
