import { readFileSync } from 'node:fs'
import { parseSync } from '@swc/core'
import { root, sourceFiles } from './source-files.ts'

export type Node = { readonly type: string } & Readonly<Record<string, unknown>>

/** Strings that an expression may come to be. */
export function comesToBe(node: Node): string[] {
  switch (node.type) {
    case 'StringLiteral':
      return [String(node.value)]
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

/** Every node of a file of code. */
export function* nodesOf(node: unknown): Generator<Node> {
  if (typeof node !== 'object' || node === null) return
  if (!Array.isArray(node)) yield node as Node
  for (const part of Object.values(node)) yield* nodesOf(part)
}

export const parsed = (code: string, tsx = false): unknown =>
  parseSync(code, { syntax: 'typescript', tsx }).body

const hasPlaces = (said: string) => /^[^/].*\{[A-Za-z]+\}|^\{[A-Za-z]+\}/.test(said)

/** What the office may say: the words of every phrase in its code, and whatever else has a place for a part. */
export function phrasesInCode(): string[] {
  const folders = ['record', 'planning', 'server', 'store', 'trade'].flatMap(room =>
    sourceFiles(`src/${room}/`),
  )
  const files = folders.filter(path => /\.ts$/.test(path) && !/\.test\.ts$|\/fixtures\//.test(path))
  const found = new Set<string>()
  for (const path of files) {
    const code = readFileSync(root + path, 'utf8')
    // Most files say nothing, and need not be parsed.
    if (!/\bphrase\(|'[^'\n]*\{[A-Za-z]+\}/.test(code)) continue
    for (const node of nodesOf(parsed(code))) {
      const callee = node.type === 'CallExpression' ? (node.callee as Node) : undefined
      if (callee?.type === 'Identifier' && callee.value === 'phrase') {
        const [words] = node.arguments as { expression: Node }[]
        for (const said of comesToBe(words!.expression)) found.add(said)
      } else if (node.type === 'StringLiteral' && hasPlaces(String(node.value))) found.add(String(node.value))
    }
  }
  found.delete('')
  return [...found]
}

/** The codes by which the code of the server and of the client says no. */
export function refusalsInCode(): ReadonlySet<string> {
  const files = ['server', 'api']
    .flatMap(room => sourceFiles(`src/${room}/`))
    .filter(path => !/\.test\.ts$/.test(path))
  const found = new Set<string>()
  for (const path of files)
    for (const node of nodesOf(parsed(readFileSync(root + path, 'utf8')))) {
      const callee = node.type === 'CallExpression' ? (node.callee as Node) : undefined
      if (callee?.type !== 'Identifier' || callee.value !== 'refusal') continue
      const [code] = node.arguments as { expression: Node }[]
      for (const said of comesToBe(code!.expression)) found.add(said)
    }
  return found
}
