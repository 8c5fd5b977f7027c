import { fileURLToPath, pathToFileURL } from 'node:url'
import { buildApp, buildServer } from './build.js'
import { installLibraries } from './install.js'
import { checkNode } from './node-version.js'

/** The project's own folder. */
export const root = fileURLToPath(new URL('../..', import.meta.url)).replace(/[\\/]$/, '')

/** Makes all ready to run: the right Node, the libraries, the server and the app. What is ready is left alone. */
export async function prepare() {
  checkNode(root)
  await installLibraries(root)
  await Promise.all([buildServer(root), buildApp(root)])
}

/**
 * Runs the built program in this process, so that signals and exit codes are its own.
 * @param {string[]} args as given on the command line
 */
export async function runProgram(args) {
  const main = `${root}/dist/server/main.js`
  process.argv = [process.execPath, main, ...args]
  process.setSourceMapsEnabled(true)
  await import(pathToFileURL(main).href)
}
