import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { runTool } from './run-tool.js'
import { say, troubleFrom } from './trouble.js'

/**
 * @typedef {{ version?: string, integrity?: string, link?: boolean, optional?: boolean, devOptional?: boolean, peer?: boolean }} LockedPackage
 * @typedef {{ packages: Record<string, LockedPackage> }} Lock
 */

/**
 * Whether the libraries on disk are those of the lock: none missing, none of another version.
 * Packages for other systems are marked optional in the lock, and may be absent.
 * @param {Lock} lock package-lock.json
 * @param {Lock} installed node_modules/.package-lock.json, which npm writes when an install has ended well
 */
export function isInstalled(lock, installed) {
  const wanted = Object.entries(lock.packages).filter(([path]) => path !== '')
  const missing = wanted.some(
    ([path, { optional, devOptional }]) => !optional && !devOptional && !installed.packages[path],
  )
  const other = Object.entries(installed.packages).some(
    ([path, { version, integrity }]) =>
      lock.packages[path]?.version !== version || lock.packages[path]?.integrity !== integrity,
  )
  return !missing && !other
}

const readLock = (/** @type {string} */ path) => /** @type {Lock} */ (JSON.parse(readFileSync(path, 'utf8')))

/** Installs the libraries that package-lock.json names, unless exactly those are there. */
export async function installLibraries(/** @type {string} */ root) {
  const done = join(root, 'node_modules', '.package-lock.json')
  if (existsSync(done) && isInstalled(readLock(join(root, 'package-lock.json')), readLock(done))) return
  say('Installing the libraries (under a minute on a quick line, once)…')
  const began = Date.now()
  const npm = process.env.npm_execpath
  const { code, output } = npm?.endsWith('.js')
    ? await runTool(process.execPath, [npm, 'ci', '--prefer-offline'], { cwd: root })
    : await runTool('npm', ['ci', '--prefer-offline'], { cwd: root, shell: process.platform === 'win32' })
  if (code !== 0) throw troubleFrom('Installing the libraries', output)
  say(`Libraries installed (${Math.round((Date.now() - began) / 1000)} s).`)
}
