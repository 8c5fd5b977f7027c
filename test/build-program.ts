import { buildApp, buildServer } from '../scripts/setup/build.js'
import { root } from './source-files.ts'

/** Before the first test: the program as people get it. What is built already is left alone. */
export default async function buildProgram(): Promise<void> {
  await Promise.all([buildServer(root), buildApp(root)])
}
