import { type ChildProcess, spawn } from 'node:child_process'
import { root } from './source-files.ts'

/**
 * The command as it is built and run; `build-program.ts` has built it before the first test. Its solver is done with a
 * small season before its code would be optimised, and what runs once or twice is not.
 */
export const BUILT = [
  '--max-semi-space-size=32',
  '--liftoff-only',
  '--interrupt-budget=1000000',
  'dist/server/main.js',
]

export interface RealServer {
  readonly address: string
  readonly process: ChildProcess
  /** What it has said for people so far. */
  said(): string
  /** Ends it as the system would, and gives its exit code. */
  end(signal?: NodeJS.Signals): Promise<number | null>
}

/** Runs the command to its end. */
export const runCommand = (program: readonly string[], args: readonly string[]) =>
  new Promise<{ code: number | null; data: string; said: string }>(resolve => {
    let data = ''
    let said = ''
    const child = spawn(process.execPath, [...program, ...args], { cwd: root })
    child.stdout.on('data', chunk => {
      data += chunk
    })
    child.stderr.on('data', chunk => {
      said += chunk
    })
    child.on('close', code => resolve({ code, data, said }))
  })

/** Starts `budstick serve` for real, on any free port unless one is named, and waits until it serves. */
export const startServer = (
  program: readonly string[],
  folder: string,
  ...flags: readonly string[]
): Promise<RealServer> =>
  new Promise((resolve, reject) => {
    const port = flags.includes('--port') ? [] : ['--port', '0']
    const child = spawn(
      process.execPath,
      [...program, 'serve', '--data', folder, '--no-open', ...port, ...flags],
      { cwd: root },
    )
    let data = ''
    let said = ''
    const ended = new Promise<number | null>(done => child.on('close', done))
    child.stderr.on('data', chunk => {
      said += chunk
    })
    child.stdout.on('data', chunk => {
      data += chunk
      const address = /^(http:\/\/\S+)\n/.exec(data)?.[1]
      if (address !== undefined)
        resolve({
          address,
          process: child,
          said: () => said,
          end: signal => {
            child.kill(signal ?? 'SIGTERM')
            return ended
          },
        })
    })
    void ended.then(code => reject(new Error(`The server ended with ${code} before it served.\n${said}`)))
  })
