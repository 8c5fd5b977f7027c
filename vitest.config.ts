import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'

const kinds = ['.browser.test.', '.db.test.', '.test.']
const kindOf = ({ moduleId }: TestSpecification) => kinds.findIndex(kind => moduleId.includes(kind))

/**
 * The longest files first, kind by kind: those in a browser, which take longest, and in the end the many small ones,
 * which fill what is left. A worker goes on with its modules and its browser.
 */
class KindByKind extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files)
    return sorted.sort((a, b) => kindOf(a) - kindOf(b))
  }
}

/** The hours by which noon is ahead of the time at Greenwich now: there no day ends while the tests run. */
const hoursToNoon = 12 - new Date().getUTCHours()
// The tests, the servers and the browsers that they start take the day from the clock, each for itself. (In names of this
// kind east is minus.)
process.env.TZ = `Etc/GMT${hoursToNoon > 0 ? '-' : '+'}${Math.abs(hoursToNoon)}`

/**
 * Three kinds of test, told apart by the file's name:
 * `x.test.ts` beside the code (rules and properties), `x.db.test.ts` (a real database on disk),
 * `x.browser.test.ts` (a real browser against a real server). The last two run the program as it is built.
 *
 * Files share their worker, and with it the modules that are loaded: starting a process and loading the libraries anew
 * for each of a hundred files took three times as long as the tests. So a test leaves nothing behind in a module.
 */
export default defineConfig({
  test: {
    pool: 'forks',
    isolate: false,
    // Room for young objects, as the program has; the solver is done with a small season before it would be optimised, and of
    // what runs once or twice less is optimised.
    execArgv: ['--max-semi-space-size=32', '--liftoff-only', '--interrupt-budget=1000000'],
    // What one run has translated, the next one reads.
    experimental: { fsModuleCache: true },
    // One more than there are processors: the tests in a browser leave a part idle, waiting for the page and the server.
    maxWorkers: availableParallelism() + 1,
    sequence: { sequencer: KindByKind },
    // How long a machine under load may take: limits are there for what hangs.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    expect: { poll: { timeout: 20_000 } },
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['src/**/*.test.ts', 'src/**/*.test.tsx', 'test/**/*.test.ts'],
          exclude: ['**/*.db.test.ts', '**/*.browser.test.ts', 'node_modules/**'],
        },
      },
      {
        extends: true,
        test: {
          name: 'served',
          include: ['{src,test}/**/*.{db,browser}.test.ts'],
          globalSetup: ['test/build-program.ts', 'test/share-folder.ts'],
        },
      },
    ],
  },
})
