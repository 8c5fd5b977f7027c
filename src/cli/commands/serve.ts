import { spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { uuidv7 } from 'uuidv7'
import { makeDemoEntries } from '../../demo/index.ts'
import {
  createApp,
  createPlanJobs,
  createWhatIfs,
  keepState,
  listen,
  nurseryThread,
  openNurseryMemory,
} from '../../server/index.ts'
import { openLog } from '../../store/index.ts'
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
    const log = await openLog(folder, { write: true })
    const now = (): string => new Date().toISOString()
    if (log.lastSeq() === 0 && !flags.empty) {
      process.stderr.write(`No data in ${folder} yet: making an invented nursery.\n`)
      log.append(makeDemoEntries({ seed: 1, today: today() }), now())
    }
    const memory = openNurseryMemory(log)
    const thread = nurseryThread(folder)
    const kept = keepState(memory, thread)
    const plans = createPlanJobs(memory, thread, uuidv7)
    const whatIfs = createWhatIfs(memory, thread, uuidv7)
    const app = createApp({ memory, plans, whatIfs, today, now, newId: uuidv7 })
    const listening = await listen(app, appFolder(), port)
    if (listening.kind === 'port taken') {
      memory.close()
      log.close()
      throw new Trouble(
        `Port ${listening.port} is taken by another program. Use another: npm start -- --port ${listening.port + 1}`,
      )
    }
    process.stdout.write(`${listening.address}\n`)
    process.stderr.write(
      `Budstick serves ${folder} at ${listening.address} on this computer only. Ctrl+C ends it.\n`,
    )
    if (!flags['no-open']) openInBrowser(listening.address)
    if (plans.latest() === null && memory.nursery().orders.size > 0) plans.begin(today())

    await new Promise<void>(resolve => {
      for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve())
    })
    listening.server.close()
    listening.server.closeAllConnections()
    plans.close()
    whatIfs.close()
    await thread.close()
    kept.close()
    memory.close()
    log.close()
  },
}
