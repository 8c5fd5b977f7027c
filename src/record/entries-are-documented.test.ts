import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { bodies } from './entry.ts'
import { historyText, readHistory } from './history.ts'

const page = readFileSync(new URL('../../docs/entries.md', import.meta.url), 'utf8')
const kinds = Object.values(bodies).map(schema => schema.unwrap().shape.kind.value)

test('every kind of entry has a heading in docs/entries.md with words under it, and no heading is of a kind that is not', () => {
  const headings = [...page.matchAll(/^### (.+)\n(\S.*)$/gm)].map(([, kind]) => kind)
  expect(headings.sort()).toEqual([...kinds].sort())
})

test('every sign in the table of docs/entries.md can be read, and is written as it stands there', () => {
  const signs = [...page.matchAll(/^\| (`.+) \|.*\|$/gm)].flatMap(([, cell]) => [
    ...cell!.matchAll(/`([^`]+)`/g),
  ])
  expect(signs.length).toBeGreaterThan(10)
  for (const [, sign] of signs) {
    const history = `B1[10] ${sign}`
    expect(readHistory(history).length, sign).toBeGreaterThan(0)
    if (sign !== 'B9:' && sign !== '»80')
      expect(historyText(readHistory(history)).replace('\n', ' ')).toBe(history)
  }
})
