import { defineConfig } from 'vitest/config'

/**
 * Three kinds of test, told apart by the file's name:
 * `x.test.ts` beside the code (rules and properties), `x.db.test.ts` (a real database on disk),
 * `x.browser.test.ts` (a real browser against a real server).
 *
 * Files share their worker, and with it the modules that are loaded: starting a process and loading the libraries anew
 * for each of a hundred files took three times as long as the tests. So a test leaves nothing behind in a module.
 */
export default defineConfig({
  test: {
    pool: 'forks',
    isolate: false,
    // What one run has translated, the next one reads.
    experimental: { fsModuleCache: true },
    maxWorkers: 2,
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
          name: 'db',
          include: ['src/**/*.db.test.ts', 'test/**/*.db.test.ts'],
          globalSetup: 'test/build-program.ts',
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['src/**/*.browser.test.ts', 'test/**/*.browser.test.ts'],
          globalSetup: 'test/build-program.ts',
          fileParallelism: false,
        },
      },
    ],
  },
})
