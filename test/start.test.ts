import { spawn } from 'node:child_process'
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { root } from './source-files.ts'

/** A project with our own scripts and libraries and a program of a few lines, started for real. */
let house: string

beforeEach(() => {
  house = mkdtempSync(join(tmpdir(), 'small-program-'))
  for (const path of ['package.json', 'package-lock.json', 'tsconfig.json', 'scripts']) {
    cpSync(root + path, join(house, path), { recursive: true })
  }
  symlinkSync(`${root}node_modules`, join(house, 'node_modules'), 'junction')
  mkdirSync(join(house, 'src/cli'), { recursive: true })
})

afterEach(() => rmSync(house, { recursive: true }))

const program = (text: string) => writeFileSync(join(house, 'src/cli/main.ts'), text)

/** Runs a script to its end, or sends it a signal once it has printed something. */
function run(script: string, args: string[], signal?: NodeJS.Signals, env: NodeJS.ProcessEnv = {}) {
  return new Promise<{ code: number | null; data: string; said: string }>(done => {
    let data = ''
    let said = ''
    const child = spawn(process.execPath, [join(house, 'scripts', script), ...args], {
      env: { ...process.env, ...env },
    })
    child.stdout.on('data', (chunk: Buffer) => {
      if (signal && data === '') child.kill(signal)
      data += chunk
    })
    child.stderr.on('data', (chunk: Buffer) => {
      said += chunk
    })
    child.on('close', code => done({ code, data, said }))
  })
}

test('start runs the command "serve" with the flags as given, and builds only what has changed', async () => {
  program('const told: string = process.argv.slice(2).join(" "); console.log(told)')
  const first = await run('start.js', ['--port', '8090', '--no-open'])
  expect(first).toEqual({
    code: 0,
    data: 'serve --port 8090 --no-open\n',
    said: expect.stringContaining('Built the server'),
  })

  const again = await run('start.js', [])
  expect(again).toEqual({ code: 0, data: 'serve\n', said: '' })

  program('console.log("new")')
  const changed = await run('start.js', [])
  expect(changed).toEqual({ code: 0, data: 'new\n', said: expect.stringContaining('Built the server') })
})

test('the command runs with its own exit code, and with nothing but data on standard output', async () => {
  program('console.log(JSON.stringify(process.argv.slice(2))); process.exitCode = 2')
  expect(await run('budstick.js', ['plan', '--json'])).toMatchObject({ code: 2, data: '["plan","--json"]\n' })
})

test('a signal reaches the program, which ends in its own way', async () => {
  program(`
    process.once('SIGTERM', () => { console.log('closed well'); clearInterval(waiting) })
    const waiting = setInterval(() => undefined, 1000)
    console.log('open')
  `)
  expect(await run('start.js', [], 'SIGTERM')).toMatchObject({ code: 0, data: 'open\nclosed well\n' })
})

test('a worker file is built beside the program and found from there', async () => {
  mkdirSync(join(house, 'src/planning'))
  writeFileSync(
    join(house, 'src/planning/solve.worker.ts'),
    'import { parentPort } from "node:worker_threads"; parentPort!.postMessage("solved")',
  )
  program(`
    import { Worker } from 'node:worker_threads'
    new Worker(new URL('./solve.worker.js', import.meta.url)).on('message', answer => console.log(answer))
  `)
  expect(await run('start.js', [])).toMatchObject({ code: 0, data: 'solved\n' })
})

test('a program that cannot be built says where, and the next start tries again', async () => {
  program('import { nothing } from "./not-there.ts"; nothing()')
  const broken = await run('start.js', [])
  expect(broken).toMatchObject({ code: 1, data: '', said: expect.stringContaining('src/cli/main.ts:1') })

  program('console.log("mended")')
  expect(await run('start.js', [])).toMatchObject({ code: 0, data: 'mended\n' })
})

test('a Node that is too old is refused with the version that is needed, before anything else is done', async () => {
  const settings = JSON.parse(readFileSync(join(house, 'package.json'), 'utf8'))
  writeFileSync(join(house, 'package.json'), JSON.stringify({ ...settings, engines: { node: '>=99.1' } }))
  for (const script of ['start.js', 'test.js', 'budstick.js']) {
    const { code, data, said } = await run(script, [])
    expect([code, data]).toEqual([1, ''])
    expect(said).toMatch(
      /^\nBudstick needs Node 99\.1 or newer, and this is Node \d+[\s\S]*run the same command again\.\n$/,
    )
  }
})

test('without a network the libraries cannot be fetched, and what to do is said instead of what npm says', {
  timeout: 120_000,
}, async () => {
  unlinkSync(join(house, 'node_modules'))
  const { code, data, said } = await run('start.js', [], undefined, {
    npm_config_registry: 'http://127.0.0.1:9/',
    npm_config_fetch_retries: '0',
    npm_config_cache: join(house, 'npm-cache'),
  })
  expect([code, data]).toEqual([1, ''])
  expect(said).toMatch(
    /\nInstalling the libraries failed: the package registry cannot be reached\. Connect to the internet/,
  )
})
