import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { root } from './source-files.ts'

const read = (path: string) => readFileSync(root + path, 'utf8')
const { dependencies, devDependencies, engines } = JSON.parse(read('package.json')) as {
  dependencies: Record<string, string>
  devDependencies: Record<string, string>
  engines: { node: string }
}

/** The first cell of each row of the tables in docs/dependencies.md: one library each, or several with commas. */
const explained = [...read('docs/dependencies.md').matchAll(/^\| (`[^|]+`) \|/gm)]
  .flatMap(([, cell]) => [...cell!.matchAll(/`([^`]+)`/g)].map(([, name]) => name))
  .sort()

test('docs/dependencies.md says of every library what it is for, and of no library that is not there', () => {
  expect(explained).toEqual(Object.keys({ ...dependencies, ...devDependencies }).sort())
})

test('every library is pinned to one version', () => {
  const loose = Object.entries({ ...dependencies, ...devDependencies }).filter(
    ([, version]) => !/^\d+\.\d+\.\d+$/.test(version),
  )
  expect(loose).toEqual([])
})

test('the README names the Node that package.json asks for', () => {
  expect(read('README.md')).toContain(`Node ${engines.node.replace('>=', '')}`)
})
