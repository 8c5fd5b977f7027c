/** A real browser for tests: one of this machine, or else the one that comes with the libraries. */
import { spawnSync } from 'node:child_process'
import {
  chmodSync,
  createReadStream,
  createWriteStream,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { createRequire } from 'node:module'
import { delimiter, dirname, join } from 'node:path'
import { pipeline } from 'node:stream/promises'
import { fileURLToPath } from 'node:url'
import { brotliDecompressSync, createBrotliDecompress } from 'node:zlib'
import { type Browser, chromium, type LaunchOptions } from 'playwright-core'

/** No sandbox, for it needs rights that root and many containers lack: only our own pages are opened. No calls home. */
export const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

/**
 * With more room for young objects, a long check of a page copies few of them about. A page of a test lives for seconds:
 * to optimise its code takes a fifth of its time, and does not win that back.
 */
const forShortLives = '--js-flags=--min-semi-space-size=32 --max-semi-space-size=64 --no-turbofan --no-maglev'

const names = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'microsoft-edge-stable',
]

/** Starts the first browser that works, with a fresh profile. Close it after use. */
export async function openBrowser(more: readonly string[] = []): Promise<Browser> {
  const refusals: string[] = []
  for (const [name, find] of candidates()) {
    try {
      const found = await find()
      return await chromium.launch({ args: [...flags, ...more], ...found })
    } catch (error) {
      refusals.push(`- ${name}: ${String(error).split('\n').slice(0, 3).join(' ')}`)
    }
  }
  throw new Error(
    `No browser for the tests works on this machine. Tried:\n${refusals.join('\n')}\n` +
      'Install Chromium, Chrome or Edge (on Debian or Ubuntu: apt-get install chromium), ' +
      'or set CHROMIUM_PATH to the browser that you have, and run the tests again.',
  )
}

let shared: Promise<Browser> | undefined

/** One browser for all files that a process tests: each opens contexts of its own, with a fresh profile, and closes those. */
export const sharedBrowser = (): Promise<Browser> => {
  shared ??= openBrowser([forShortLives])
  return shared
}

type Candidate = readonly [name: string, find: () => LaunchOptions | Promise<LaunchOptions>]

/** Where a browser may be, the wished-for one first. With CHROMIUM_PATH set, no other is tried. */
function candidates(): Candidate[] {
  const wished = process.env.CHROMIUM_PATH
  if (wished) return [[`CHROMIUM_PATH (${wished})`, () => ({ executablePath: wished })]]
  const onPath = (process.env.PATH ?? '')
    .split(delimiter)
    .flatMap(folder => names.map(name => join(folder, name)))
    .filter(path => existsSync(path))
  return [
    ...onPath.map((path): Candidate => [path, () => ({ executablePath: path })]),
    ['Chrome in its usual place', () => ({ channel: 'chrome' })],
    ['Edge in its usual place', () => ({ channel: 'msedge' })],
    ['Chromium from the library @sparticuz/chromium', packedBrowser],
  ]
}

/** Unpacks the browser that comes with the libraries (Linux on x64 only), once for each version of it. */
export async function packedBrowser(): Promise<LaunchOptions> {
  if (process.platform !== 'linux' || process.arch !== 'x64') {
    throw new Error(`it runs on Linux x64, and this is ${process.platform} ${process.arch}`)
  }
  const packed = join(dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium')), '../../bin')
  const { version } = JSON.parse(readFileSync(join(packed, '../package.json'), 'utf8')) as { version: string }
  const cache = fileURLToPath(new URL('../.cache', import.meta.url))
  const home = join(cache, `chromium-${version}`)
  if (!existsSync(home)) {
    mkdirSync(cache, { recursive: true })
    const half = mkdtempSync(`${home}-half-`)
    await pipeline(
      createReadStream(join(packed, 'chromium.br')),
      createBrotliDecompress(),
      createWriteStream(join(half, 'chromium')),
    )
    chmodSync(join(half, 'chromium'), 0o755)
    for (const archive of ['al2023.tar.br', 'fonts.tar.br']) {
      const tar = brotliDecompressSync(readFileSync(join(packed, archive)))
      const { status, stderr, error } = spawnSync('tar', ['-x', '--no-same-owner', '-C', half], {
        input: tar,
      })
      if (status !== 0) throw new Error(`tar could not unpack ${archive}: ${error ?? stderr}`)
    }
    try {
      renameSync(half, home)
    } catch (error) {
      rmSync(half, { recursive: true })
      if (!existsSync(home)) throw error
    }
  }
  const executablePath = join(home, 'chromium')
  return {
    executablePath,
    env: { ...process.env, ...librariesFor(executablePath, home), ...fontsFrom(home) },
  }
}

/** The packed browser's own copies of system libraries, for a machine that lacks them. */
function librariesFor(executablePath: string, home: string): Record<string, string> {
  const { status } = spawnSync(executablePath, ['--version'])
  if (status === 0) return {}
  const before = process.env.LD_LIBRARY_PATH
  return { LD_LIBRARY_PATH: [join(home, 'lib'), ...(before ? [before] : [])].join(delimiter) }
}

/** The packed browser's own letters, for a machine without any. */
function fontsFrom(home: string): Record<string, string> {
  if (existsSync('/etc/fonts/fonts.conf')) return {}
  const config = join(home, 'our-fonts.conf')
  writeFileSync(
    config,
    `<fontconfig><dir>${join(home, 'fonts')}</dir><cachedir>${join(home, 'fonts-cache')}</cachedir></fontconfig>`,
  )
  return { FONTCONFIG_FILE: config }
}
