import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { root } from '../source-files.ts'

const MOST_KILOBYTES = 300
/** What is opened all day and in the tunnel. The others draw or reckon more at once, and fetch the facts with them. */
const ALL_DAY = [
  'work',
  'batches',
  'count',
  'bench-count',
  'benches',
  'new-orders',
  'checks',
  'journal',
  'lineage',
  'settings',
]

const built = join(root, 'dist/app')
const assets = join(built, 'assets')
const kilobytes = new Map<string, number>()
const imported = new Map<string, readonly string[]>()
for (const file of readdirSync(assets).filter(name => name.endsWith('.js'))) {
  const code = readFileSync(join(assets, file), 'utf8')
  kilobytes.set(file, statSync(join(assets, `${file}.gz`)).size / 1000)
  imported.set(
    file,
    [...code.matchAll(/(?:from|import)\s*"\.\/([^"]+\.js)"/g)].map(([, name]) => name!),
  )
}

/** The scripts that are fetched before these can run. */
const withAllImported = (files: readonly string[]): ReadonlySet<string> => {
  const all = new Set<string>()
  const take = (file: string): void => {
    if (all.has(file)) return
    all.add(file)
    for (const other of imported.get(file) ?? []) take(other)
  }
  for (const file of files) take(file)
  return all
}

const page = readFileSync(join(built, 'index.html'), 'utf8')
const first = [...page.matchAll(/src="\/assets\/([^"]+\.js)"/g)].map(([, file]) => file!)
const screenOf = (name: string): string =>
  [...kilobytes.keys()].find(file => file.startsWith(`${name}-screen-`)) ?? `no script of ${name}`

test('the first load of what is opened all day is under 300 kB of compressed scripts', () => {
  expect(first).toHaveLength(1)
  const sizes = ALL_DAY.map(name => {
    const files = [...withAllImported([...first, screenOf(name)])]
    return { name, kilobytes: files.reduce((sum, file) => sum + (kilobytes.get(file) ?? Number.NaN), 0) }
  })
  expect(sizes.filter(one => !(one.kilobytes < MOST_KILOBYTES))).toEqual([])
})

test('no file is built that no page, script or style asks for', () => {
  const files = readdirSync(assets)
  const asking = [
    ...['index.html', 'plant.html'].map(file => join(built, file)),
    ...files.filter(file => /\.(js|css)$/.test(file)).map(file => join(assets, file)),
  ]
  const said = asking.map(path => ({ path, text: readFileSync(path, 'utf8') }))
  const isAskedFor = (file: string) =>
    said.some(({ path, text }) => !path.endsWith(file) && text.includes(file))
  // A packed file goes instead of the one beside it.
  expect(files.filter(file => !isAskedFor(file.replace(/\.gz$/, '')))).toEqual([])
})
