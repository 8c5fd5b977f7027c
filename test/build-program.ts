import { buildApp, buildServer } from '../scripts/setup/build.js'
import { packedBrowser } from './browser.ts'
import { root } from './source-files.ts'

/**
 * Before the first test: the program as people get it, and the browser that comes with the libraries, which each process
 * would unpack for itself. What is built and unpacked already is left alone.
 */
export default async function buildProgram(): Promise<void> {
  // On a machine for which none is packed, the tests look for its own.
  await Promise.all([buildServer(root), buildApp(root), packedBrowser().catch(() => undefined)])
}
