import { readFileSync } from 'node:fs'
import { Trouble } from './trouble.js'

/**
 * Whether a version of Node is the least one asked for, or newer.
 * @param {string} version as "20.19.1"
 * @param {string} least as "20.19"
 */
export function isNewEnough(version, least) {
  const [major = 0, minor = 0] = version.split('.').map(Number)
  const [leastMajor = 0, leastMinor = 0] = least.split('.').map(Number)
  return major > leastMajor || (major === leastMajor && minor >= leastMinor)
}

/** Refuses a Node that is too old for the program, by what package.json asks for. */
export function checkNode(/** @type {string} */ root) {
  const least = JSON.parse(readFileSync(`${root}/package.json`, 'utf8')).engines.node.replace('>=', '')
  if (isNewEnough(process.versions.node, least)) return
  throw new Trouble(
    `Budstick needs Node ${least} or newer, and this is Node ${process.versions.node}. ` +
      'Install a newer Node (https://nodejs.org has it for every system) and run the same command again.',
  )
}
