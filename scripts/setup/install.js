import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { runTool } from './run-tool.js'
import { isNetworkMissing, say, troubleFrom } from './trouble.js'

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

/**
 * Runs npm, the one that runs us if there is one.
 * @param {string} root
 * @param {string[]} args
 */
function npm(root, ...args) {
  const script = process.env.npm_execpath
  return script?.endsWith('.js')
    ? runTool(process.execPath, [script, ...args], { cwd: root })
    : runTool('npm', args, { cwd: root, shell: process.platform === 'win32' })
}

/**
 * Installs the libraries that package-lock.json names, unless exactly those are there. Without a network npm would try
 * each of them for minutes: one question to the registry tells, and then only what npm has kept is used.
 */
export async function installLibraries(/** @type {string} */ root) {
  const done = join(root, 'node_modules', '.package-lock.json')
  if (existsSync(done) && isInstalled(readLock(join(root, 'package-lock.json')), readLock(done))) return
  say('Installing the libraries (about a minute, the first time only)…')
  const began = Date.now()
  const ping = await npm(root, 'ping', '--fetch-retries=0')
  const { code, output } = await npm(
    root,
    'ci',
    isNetworkMissing(ping.output) ? '--offline' : '--prefer-offline',
  )
  if (code !== 0) throw troubleFrom('Installing the libraries', output)
  say(`Libraries installed (${Math.round((Date.now() - began) / 1000)} s).`)
}
