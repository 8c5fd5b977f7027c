import { parseArgs } from 'node:util'
import { isDay } from '../science/index.ts'

/** One flag of a command: the table from which reading, checking and `--help` all follow. */
export interface Flag {
  readonly name: string
  /** What stands for its value in the help; a flag without one is a switch. */
  readonly value?: string
  readonly says: string
  readonly otherwise?: string
}

export type Answers = Readonly<Record<string, string | boolean | undefined>>

/** What went wrong for a person: one line for standard error, and the exit code (2: asked wrongly; 1: could not be done). */
export class Trouble extends Error {
  override readonly name = 'Trouble'
  readonly exitCode: 1 | 2
  constructor(message: string, exitCode: 1 | 2 = 1) {
    super(message)
    this.exitCode = exitCode
  }
}

export interface Command {
  readonly name: string
  readonly says: string
  /** Names of what stands after the command, in order; one ending in `…` takes all that is left. */
  readonly takes: readonly string[]
  readonly flags: readonly Flag[]
  readonly examples: readonly string[]
  run(flags: Answers, taken: readonly string[]): Promise<void>
}

/** `--no-x` is a switch of its own; every other flag takes its value. */
export const readFlags = (
  command: Command,
  args: readonly string[],
): { flags: Answers; taken: readonly string[] } => {
  const options = Object.fromEntries(
    command.flags.map(flag => [
      flag.name,
      { type: flag.value === undefined ? ('boolean' as const) : ('string' as const) },
    ]),
  )
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      options,
      allowPositionals: command.takes.length > 0,
      strict: true,
    })
    return { flags: values as Answers, taken: positionals }
  } catch (problem) {
    throw new Trouble(`${(problem as Error).message} Try: budstick ${command.name} --help`, 2)
  }
}

export const wholeNumber = (flags: Answers, name: string, low: number, high: number): number | undefined => {
  const said = flags[name]
  if (said === undefined) return undefined
  const number = Number(said)
  if (!Number.isInteger(number) || number < low || number > high)
    throw new Trouble(`--${name} takes a whole number from ${low} to ${high}, not "${said}".`, 2)
  return number
}

export const dayGiven = (flags: Answers, name: string): string | undefined => {
  const said = flags[name]
  if (said === undefined) return undefined
  if (!isDay(String(said))) throw new Trouble(`--${name} takes a day such as 2026-05-19, not "${said}".`, 2)
  return String(said)
}

export const helpOf = (command: Command): string => {
  const rows = command.flags.map(flag => [
    `--${flag.name}${flag.value === undefined ? '' : ` ${flag.value}`}`,
    `${flag.says}${flag.otherwise === undefined ? '' : ` (otherwise: ${flag.otherwise})`}`,
  ])
  const width = Math.max(0, ...rows.map(row => row[0]!.length))
  return [
    `budstick ${command.name}${command.takes.map(name => ` ${name}`).join('')}${command.flags.length ? ' [flags]' : ''}`,
    `  ${command.says}`,
    ...(rows.length ? ['', ...rows.map(([flag, says]) => `  ${flag!.padEnd(width)}  ${says}`)] : []),
    '',
    ...command.examples.map(example => `  ${example}`),
    '',
  ].join('\n')
}
