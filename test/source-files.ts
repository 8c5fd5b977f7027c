import { readdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

/** The project's own folder, ending in a slash. */
export const root = fileURLToPath(new URL('..', import.meta.url))

const notOurs = new Set(['.git', 'node_modules', 'dist', 'data', '.cache', 'coverage'])

/** The path of every file of the project below a folder, from the root, with slashes. */
export function sourceFiles(folder = ''): string[] {
  return readdirSync(root + folder, { withFileTypes: true }).flatMap(item => {
    const path = folder + item.name
    if (!item.isDirectory()) return [path]
    return notOurs.has(item.name) && folder === '' ? [] : sourceFiles(`${path}/`)
  })
}
