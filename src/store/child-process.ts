/** Runs `appending-child.ts` or `keeping-child.ts` in a process of its own, for tests. */
import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process'
import { mkdirSync, mkdtempSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

/** One file with everything but the database, so that a process starts in a few hundredths of a second. */
export async function bundleChild(name = 'appending-child'): Promise<string> {
  const cache = fileURLToPath(new URL('../../.cache', import.meta.url))
  mkdirSync(cache, { recursive: true })
  const outfile = join(mkdtempSync(join(cache, `${name}-`)), 'child.mjs')
  await build({
    entryPoints: [fileURLToPath(new URL(`${name}.ts`, import.meta.url))],
    outfile,
    bundle: true,
    minify: true,
    platform: 'node',
    format: 'esm',
    external: ['@photostructure/sqlite'],
    logLevel: 'error',
  })
  return outfile
}

export const startChild = (
  bundle: string,
  folder: string,
  run: number,
  wrap: readonly string[] = [],
): ChildProcessWithoutNullStreams => {
  const [command, ...rest] = [...wrap, process.execPath, bundle, folder, String(run)]
  return spawn(command!, rest)
}

/** Whole lines that a process says until it ends; a last line that was cut off is left out. */
export function linesOf(child: ChildProcessWithoutNullStreams): Promise<string[]> {
  let text = ''
  child.stdout.on('data', (data: Buffer) => {
    text += data.toString()
  })
  return new Promise(resolve => child.on('close', () => resolve(text.split('\n').slice(0, -1))))
}
