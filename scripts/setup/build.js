import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { runTool } from './run-tool.js'
import { say, Trouble, troubleFrom } from './trouble.js'

/** What every build depends on besides its sources. */
const ground = ['package-lock.json', 'tsconfig.json', 'scripts/setup/build.js']

/**
 * Every source file below a folder, without tests.
 * @param {string} root
 * @param {string} folder
 * @returns {string[]}
 */
function sourceFiles(root, folder) {
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap(item => {
    const path = `${folder}/${item.name}`
    if (item.isDirectory()) return sourceFiles(root, path)
    return /\.test\.tsx?$/.test(item.name) ? [] : [path]
  })
}

/**
 * One hash over the names and contents of files: another hash means that something changed.
 * @param {string} root
 * @param {string[]} files
 */
function hashOf(root, files) {
  const hash = createHash('sha256')
  for (const file of [...files].sort()) {
    hash.update(`${file}\0`)
    hash.update(readFileSync(join(root, file)))
  }
  return hash.digest('hex')
}

/**
 * Builds into a folder of dist/, unless what is there was made from the very same files.
 * The stamp is written last: a build that was cut short is done again.
 * @param {string} root
 * @param {{ name: string, into: string, files: string[], make: (into: string) => Promise<void> }} build
 */
async function buildWhenChanged(root, { name, into, files, make }) {
  const stamp = join(root, into, '.made-from')
  const hash = hashOf(root, [...ground, ...files])
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === hash) return
  const began = Date.now()
  rmSync(join(root, into), { recursive: true, force: true })
  mkdirSync(join(root, into), { recursive: true })
  await make(join(root, into))
  writeFileSync(stamp, hash)
  say(`Built the ${name} (${((Date.now() - began) / 1000).toFixed(1)} s).`)
}

/** Libraries from before modules ask for parts of Node by `require`, which a module does not have. */
const requireForLibraries =
  "import { createRequire as requireFrom } from 'node:module'; const require = requireFrom(import.meta.url);"

/**
 * Bundles the command and the server into dist/server: main.js from src/cli/main.ts, and beside it one file for
 * every src/…/x.worker.ts, so that `new URL('./x.worker.js', import.meta.url)` finds it. Libraries are
 * bundled too: reading some hundred small files took half of the time of a start.
 */
export async function buildServer(/** @type {string} */ root) {
  const main = 'src/cli/main.ts'
  if (!existsSync(join(root, main))) throw new Trouble(`There is nothing to run: ${main} is missing.`)
  const files = sourceFiles(root, 'src').filter(file => !file.startsWith('src/app/'))
  const workers = files.filter(file => file.endsWith('.worker.ts'))
  await buildWhenChanged(root, {
    name: 'server',
    into: 'dist/server',
    files,
    make: async into => {
      const esbuild = await import('esbuild')
      try {
        await esbuild.build({
          absWorkingDir: root,
          entryPoints: [main, ...workers].map(file => ({ in: file, out: basename(file, '.ts') })),
          outdir: into,
          chunkNames: 'shared-[hash]',
          bundle: true,
          splitting: true,
          // Found beside their own files: what is compiled for the machine, and what brings WebAssembly.
          external: ['@photostructure/sqlite', 'highs'],
          banner: { js: requireForLibraries },
          platform: 'node',
          format: 'esm',
          target: 'node20',
          sourcemap: true,
          logLevel: 'silent',
        })
      } catch (error) {
        throw troubleFrom('Building the server', error instanceof Error ? error.message : String(error))
      } finally {
        await esbuild.stop()
      }
    },
  })
}

/**
 * Packs what is text of the pages, once, so that the server need not: a page's scripts are then a third as large on their way.
 * @param {string} folder
 */
function packPages(folder) {
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' }))
    if (/\.(js|css|html|svg)$/.test(name))
      writeFileSync(join(folder, `${name}.gz`), gzipSync(readFileSync(join(folder, name)), { level: 9 }))
}

/** Builds the pages into dist/app. */
export async function buildApp(/** @type {string} */ root) {
  if (!existsSync(join(root, 'src/app/index.html'))) return
  await buildWhenChanged(root, {
    name: 'app',
    into: 'dist/app',
    files: ['vite.config.ts', ...sourceFiles(root, 'src')],
    make: async into => {
      const vite = join(root, 'node_modules/vite/bin/vite.js')
      const { code, output } = await runTool(process.execPath, [vite, 'build', '--logLevel', 'warn'], {
        cwd: root,
        // Whoever builds, a test too, builds the pages as people get them.
        env: { ...process.env, NODE_ENV: 'production' },
      })
      if (code !== 0) throw troubleFrom('Building the app', output)
      packPages(into)
    },
  })
}
