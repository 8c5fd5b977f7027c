/** `npm test`: sets up what is missing, then runs every kind of test and ends with `N passed, N failed`. */
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildApp, buildServer } from './setup/build.js'
import { installLibraries } from './setup/install.js'
import { checkNode } from './setup/node-version.js'
import { root } from './setup/prepare.js'
import { runTool } from './setup/run-tool.js'
import { orSayTrouble, Trouble } from './setup/trouble.js'

/** @typedef {{ passed: number, failed: number, output: string }} Outcome */

const reports = mkdtempSync(join(tmpdir(), 'budstick-test-'))
process.once('exit', () => rmSync(reports, { recursive: true, force: true }))

/** The same tests in the same way everywhere: with CI set, a focused test or an unwritten snapshot fails here too. */
const environment = { ...process.env, CI: 'true' }

/**
 * A tool that is one check as a whole.
 * @param {string} script
 * @param {string[]} args
 * @returns {Promise<Outcome>}
 */
async function oneCheck(script, ...args) {
  const { code, output } = await runTool(process.execPath, [join(root, script), ...args], {
    cwd: root,
    env: environment,
  })
  return { passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1, output }
}

/**
 * Every test, counted one by one. A file that does not load, and a run without tests, have failed.
 * @returns {Promise<Outcome>}
 */
async function tests() {
  const report = join(reports, 'tests.json')
  const { code, output } = await runTool(
    process.execPath,
    [
      join(root, 'node_modules/vitest/vitest.mjs'),
      'run',
      '--reporter=dot',
      '--reporter=json',
      `--outputFile.json=${report}`,
    ],
    { cwd: root, env: environment },
  )
  if (!existsSync(report)) return { passed: 0, failed: 1, output }
  const { numPassedTests: passed, numFailedTests, testResults } = JSON.parse(readFileSync(report, 'utf8'))
  const notLoaded = testResults.filter(
    (/** @type {{ status: string, assertionResults: unknown[] }} */ file) =>
      file.status === 'failed' && file.assertionResults.length === 0,
  ).length
  const failed = numFailedTests + notLoaded
  if (passed + failed === 0) return { passed, failed: 1, output: `No test ran.\n${output}` }
  return { passed, failed: failed === 0 && code !== 0 ? 1 : failed, output }
}

/** @returns {Promise<Outcome>} */
async function builds() {
  try {
    await Promise.all([buildServer(root), buildApp(root)])
    return { passed: 1, failed: 0, output: '' }
  } catch (error) {
    if (!(error instanceof Trouble)) throw error
    return { passed: 0, failed: 1, output: error.message }
  }
}

/**
 * Runs one check to its end and says how it went.
 * @param {string} name
 * @param {() => Promise<Outcome>} run
 * @returns {Promise<Outcome>}
 */
async function step(name, run) {
  const began = Date.now()
  const outcome = await run()
  const { passed, failed, output } = outcome
  const seconds = ((Date.now() - began) / 1000).toFixed(1)
  console.log(
    `${failed === 0 ? 'ok    ' : 'FAILED'} ${name}: ${passed} passed, ${failed} failed, ${seconds} s`,
  )
  if (failed > 0) console.log(`\n${output.trim()}\n`)
  return outcome
}

await orSayTrouble(async () => {
  checkNode(root)
  await installLibraries(root)
  console.log('Running every kind of test:')
  const began = Date.now()
  const biome = () => oneCheck('node_modules/@biomejs/biome/bin/biome', 'check')
  // One checker: each of several works out the types of the libraries and of the API anew, and the tests take the other cores.
  const types = () => oneCheck('node_modules/typescript/bin/tsc', '-p', '.', '--checkers', '1')
  // What starts the program waits for one build of it.
  const building = step('build', builds)
  const outcomes = await Promise.all([
    building,
    step('lint and format', biome),
    step('types', types),
    building.then(() => step('rules, properties, outside checks, a real database, a real browser', tests)),
  ])
  const passed = outcomes.reduce((sum, outcome) => sum + outcome.passed, 0)
  const failed = outcomes.reduce((sum, outcome) => sum + outcome.failed, 0)
  console.log(`All ended after ${Math.round((Date.now() - began) / 1000)} s.`)
  console.log(`${passed} passed, ${failed} failed`)
  process.exitCode = failed === 0 && passed > 0 ? 0 : 1
})
