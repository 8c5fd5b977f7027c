import { spawn } from 'node:child_process'
import { stripVTControlCharacters } from 'node:util'

/** @type {Set<import('node:child_process').ChildProcess>} */
const running = new Set()

/** @type {readonly NodeJS.Signals[]} */
const endings = ['SIGINT', 'SIGTERM', 'SIGHUP']

/** A signal that ends us ends the tools too; then it does to us what it always does. */
function endAll(/** @type {NodeJS.Signals} */ signal) {
  for (const tool of running) tool.kill(signal)
  for (const ending of endings) process.removeListener(ending, endAll)
  process.kill(process.pid, signal)
}

/**
 * Runs another program to its end and keeps what it said, without colours.
 * @param {string} program
 * @param {string[]} args
 * @param {import('node:child_process').SpawnOptions} options
 * @returns {Promise<{ code: number, output: string }>} code 0 when all went well; both its outputs in order of arrival
 */
export function runTool(program, args, options) {
  return new Promise(done => {
    /** @type {Buffer[]} */
    const said = []
    const tool = spawn(program, args, { ...options, stdio: ['ignore', 'pipe', 'pipe'] })
    if (running.size === 0) for (const ending of endings) process.on(ending, endAll)
    running.add(tool)
    /** @param {number | null} code */
    const end = code => {
      running.delete(tool)
      if (running.size === 0) for (const ending of endings) process.removeListener(ending, endAll)
      done({ code: code ?? 1, output: stripVTControlCharacters(String(Buffer.concat(said))) })
    }
    tool.stdout?.on('data', chunk => said.push(chunk))
    tool.stderr?.on('data', chunk => said.push(chunk))
    tool.on('error', error => {
      said.push(Buffer.from(String(error)))
      end(1)
    })
    tool.on('close', end)
  })
}
