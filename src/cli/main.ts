import { type Command, helpOf, readFlags, Trouble } from './command.ts'
import { backup } from './commands/backup.ts'
import { exportRecord } from './commands/export.ts'
import { importRecord } from './commands/import.ts'
import { plan } from './commands/plan.ts'
import { read } from './commands/read.ts'
import { restore } from './commands/restore.ts'
import { serve } from './commands/serve.ts'
import { sheets } from './commands/sheets.ts'
import { verify } from './commands/verify.ts'

/** In the order in which a nursery meets them. */
const commands: readonly Command[] = [
  serve,
  sheets,
  read,
  plan,
  verify,
  backup,
  restore,
  exportRecord,
  importRecord,
]

const overview = (): string => {
  const width = Math.max(...commands.map(({ name }) => name.length))
  return [
    'budstick: which fruit trees to start, how many, which week, from which mother tree.',
    '',
    ...commands.map(({ name, says }) => `  ${name.padEnd(width)}  ${says}`),
    '',
    'budstick COMMAND --help tells more of each. Data goes to standard output, everything else to standard error.',
    'Ends with 0 when done, 1 when it could not be done, 2 when asked wrongly.',
    '',
  ].join('\n')
}

const [asked, ...rest] = process.argv.slice(2)
const command = commands.find(({ name }) => name === asked)
try {
  if (asked === undefined || asked === '--help' || asked === 'help') process.stdout.write(overview())
  else if (command === undefined) throw new Trouble(`There is no command "${asked}". Try: budstick --help`, 2)
  else if (rest.includes('--help')) process.stdout.write(helpOf(command))
  else {
    const { flags, taken } = readFlags(command, rest)
    await command.run(flags, taken)
  }
} catch (problem) {
  process.stderr.write(`${problem instanceof Error ? problem.message : String(problem)}\n`)
  if (!(problem instanceof Trouble) && problem instanceof Error && process.env.BUDSTICK_TRACE)
    process.stderr.write(`${problem.stack}\n`)
  process.exitCode = problem instanceof Trouble ? problem.exitCode : 1
}
