import { spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { uuidv7 } from 'uuidv7'
import { listen, serveFolder } from '../../server/index.ts'
import { type Command, dayGiven, Trouble, wholeNumber } from '../command.ts'
import { dataFlag, dataFolder } from '../data-folder.ts'

const PORT = 7320

/** The nursery's local date: that of this computer, unless a day was given. */
const dateOfComputer = (): string => {
  const now = new Date()
  return [
    now.getFullYear(),
    String(now.getMonth() + 1).padStart(2, '0'),
    String(now.getDate()).padStart(2, '0'),
  ].join('-')
}

/** The built pages stand beside the built server, or in dist/ when run from source. */
const appFolder = (): string | null =>
  ['../app', '../../../dist/app']
    .map(path => fileURLToPath(new URL(path, import.meta.url)))
    .find(existsSync) ?? null

const openInBrowser = (address: string): void => {
  const [command, ...args] =
    process.platform === 'darwin'
      ? ['open']
      : process.platform === 'win32'
        ? ['cmd', '/c', 'start', '']
        : ['xdg-open']
  const child = spawn(command!, [...args, address], { stdio: 'ignore', detached: true })
  child.on('error', () => undefined)
  child.unref()
}

export const serve: Command = {
  name: 'serve',
  says: 'Serves the app on this computer and opens it. Makes an invented nursery if there is no data yet.',
  takes: [],
  flags: [
    dataFlag,
    { name: 'port', value: 'N', says: 'where the app is served', otherwise: String(PORT) },
    { name: 'today', value: 'DAY', says: 'serve as if it were this day (2026-05-19)', otherwise: 'today' },
    { name: 'empty', says: 'begin with an empty nursery instead of the invented one' },
    { name: 'no-open', says: 'only print the address' },
  ],
  examples: ['budstick serve', 'budstick serve --port 8080 --data ./our-nursery --empty --no-open'],
  run: async flags => {
    const port = wholeNumber(flags, 'port', 0, 65_535) ?? PORT
    const given = dayGiven(flags, 'today')
    const today = (): string => given ?? dateOfComputer()
    const folder = dataFolder(flags)
    const now = (): string => new Date().toISOString()
    const served = await serveFolder(folder, { today, now, newId: uuidv7 })
    if (served.memory().throughSeq() === 0 && !flags.empty) {
      process.stderr.write(`No data in ${folder} yet: making an invented nursery.\n`)
      served.invent()
    }
    const listening = await listen(served, appFolder(), port)
    if (listening.kind === 'port taken') {
      await served.close()
      throw new Trouble(
        `Port ${listening.port} is taken by another program. Use another: npm start -- --port ${listening.port + 1}`,
      )
    }
    process.stdout.write(`${listening.address}\n`)
    process.stderr.write(
      `Budstick serves ${folder} at ${listening.address} on this computer only. Ctrl+C ends it.\n`,
    )
    if (!flags['no-open']) openInBrowser(listening.address)
    if (served.plans().latest() === null && served.memory().nursery().orders.size > 0)
      served.plans().begin(today())

    await new Promise<void>(resolve => {
      for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve())
    })
    listening.server.close()
    listening.server.closeAllConnections()
    await served.close()
  },
}
