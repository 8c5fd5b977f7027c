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
 * One kind of test, counted test by test. A file that does not load, and a run without tests, have failed.
 * @param {string} project as named in vitest.config.ts
 * @param {string} part which of how many parts of its files, `1/3`
 * @returns {Promise<Outcome>}
 */
async function tests(project, part = '1/1') {
  const report = join(reports, `${project}-${part.replace('/', '-of-')}.json`)
  const { code, output } = await runTool(
    process.execPath,
    [
      join(root, 'node_modules/vitest/vitest.mjs'),
      'run',
      `--project=${project}`,
      `--shard=${part}`,
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
 * Runs the next step that nobody runs yet until none is left, each to its end whatever became of those before.
 * @param {[name: string, run: () => Promise<Outcome>][]} steps
 * @returns {Promise<Outcome[]>}
 */
async function inTurn(steps) {
  const outcomes = []
  for (let next = steps.shift(); next !== undefined; next = steps.shift()) {
    const [name, run] = next
    const began = Date.now()
    const outcome = await run()
    const { passed, failed, output } = outcome
    const seconds = ((Date.now() - began) / 1000).toFixed(1)
    console.log(
      `${failed === 0 ? 'ok    ' : 'FAILED'} ${name}: ${passed} passed, ${failed} failed, ${seconds} s`,
    )
    if (failed > 0) console.log(`\n${output.trim()}\n`)
    outcomes.push(outcome)
  }
  return outcomes
}

await orSayTrouble(async () => {
  checkNode(root)
  await installLibraries(root)
  // Of two cores the tests in a browser leave a part idle, which waits for the page and the server.
  console.log('Running every kind of test, three at a time:')
  const began = Date.now()
  // What starts the program waits for one build of it.
  const building = builds()
  /** @param {string} project @param {string} [part] */
  const ofProgram = (project, part) => building.then(() => tests(project, part))
  /** @type {[name: string, run: () => Promise<Outcome>][]} */
  const steps = [
    ['build', () => building],
    ['types', () => oneCheck('node_modules/typescript/bin/tsc', '-p', '.')],
    ['lint and format', () => oneCheck('node_modules/@biomejs/biome/bin/biome', 'check')],
    ['rules, properties, outside checks and floors', () => tests('unit')],
    ...[1, 2, 3, 4, 5].map(
      part =>
        /** @type {[string, () => Promise<Outcome>]} */ ([
          `tests in a browser, part ${part} of 5`,
          () => ofProgram('browser', `${part}/5`),
        ]),
    ),
    ['tests on a real database', () => ofProgram('db')],
  ]
  const lanes = await Promise.all([inTurn(steps), inTurn(steps), inTurn(steps)])
  const outcomes = lanes.flat()
  const passed = outcomes.reduce((sum, outcome) => sum + outcome.passed, 0)
  const failed = outcomes.reduce((sum, outcome) => sum + outcome.failed, 0)
  console.log(`All ended after ${Math.round((Date.now() - began) / 1000)} s.`)
  console.log(`${passed} passed, ${failed} failed`)
  process.exitCode = failed === 0 && passed > 0 ? 0 : 1
})
