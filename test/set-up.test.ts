import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { isInstalled } from '../scripts/setup/install.js'
import { isNewEnough } from '../scripts/setup/node-version.js'
import { runTool } from '../scripts/setup/run-tool.js'
import { troubleFrom } from '../scripts/setup/trouble.js'
import { root } from './source-files.ts'

test.each([
  ['20.19.0', true],
  ['20.20.2', true],
  ['24.0.0', true],
  ['20.18.3', false],
  ['18.20.0', false],
  ['8.19.0', false],
])('Node %s is new enough for "at least 20.19": %s', (version, answer) => {
  expect(isNewEnough(version, '20.19')).toBe(answer)
})

const lock = {
  packages: {
    '': {},
    'node_modules/hono': { version: '4.13.19', integrity: 'sha512-a' },
    'node_modules/@esbuild/aix-ppc64': { version: '0.28.2', integrity: 'sha512-b', optional: true },
  },
}
const installed = { packages: { 'node_modules/hono': { version: '4.13.19', integrity: 'sha512-a' } } }

test('libraries that match the lock are not installed again; those for other systems may be absent', () => {
  expect(isInstalled(lock, installed)).toBe(true)
})

test('a missing library, another version of it, and one that the lock does not know are installed anew', () => {
  expect(isInstalled(lock, { packages: {} })).toBe(false)
  expect(
    isInstalled(lock, { packages: { 'node_modules/hono': { version: '4.13.18', integrity: 'sha512-a' } } }),
  ).toBe(false)
  expect(
    isInstalled(lock, { packages: { ...installed.packages, 'node_modules/left': { version: '1.0.0' } } }),
  ).toBe(false)
})

test("this folder's own libraries, under which the tests run, are those of the lock", () => {
  const read = (path: string) => JSON.parse(readFileSync(root + path, 'utf8'))
  expect(isInstalled(read('package-lock.json'), read('node_modules/.package-lock.json'))).toBe(true)
})

test.each([
  ['npm error code ENOTFOUND', /registry cannot be reached/],
  ['npm error code ENOTCACHED', /registry cannot be reached/],
  ['npm error code ENOSPC\nnpm error nospc There is not enough space', /disk is full/],
  ['EACCES: permission denied, mkdir', /may not be written to/],
  ['npm error something else entirely', /something else entirely/],
])('what npm says as "%s" is told to people in words they can act on', (output, words) => {
  expect(troubleFrom('Installing the libraries', output).message).toMatch(words)
})

test('a tool that is not on the machine is an outcome with its reason, not a crash', async () => {
  expect(await runTool('no-such-tool-here', [], {})).toEqual({
    code: 1,
    output: expect.stringContaining('ENOENT'),
  })
})

test('a tool that is killed from outside has failed', async () => {
  const { code } = await runTool(process.execPath, ['-e', 'process.kill(process.pid, "SIGKILL")'], {})
  expect(code).toBe(1)
})
