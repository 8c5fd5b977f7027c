import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildSeasonModel } from '../src/planning/model/build-season-model.ts'
import { toMps } from '../src/planning/model/mps.ts'
import { openSolver } from '../src/planning/model/solve.ts'
import { readSeason } from '../src/planning/reading/read-season.ts'
import { firstMargins } from '../src/planning/sureness/first-margins.ts'
import { nurseryOf, TODAY } from './planned.ts'

const timed = <T>(work: () => T): { seconds: number; cpuSeconds: number; result: T } => {
  const began = performance.now()
  const cpu = process.cpuUsage()
  const result = work()
  const { user, system } = process.cpuUsage(cpu)
  return { seconds: (performance.now() - began) / 1000, cpuSeconds: (user + system) / 1e6, result }
}

/** Optima of one model are the same to this share of them. */
const SAME = 1e-6
/** What a shell says of a command that it does not find. */
const NOT_FOUND = 127

/** The last line of `times`: user and system time of the children, `0m1.25s 0m0.08s`. */
function cpuSaid(said: string): number {
  const [, minutes, seconds, more, rest] = /(\d+)m([\d.]+)s (\d+)m([\d.]+)s\s*$/.exec(said) ?? []
  return 60 * (Number(minutes) + Number(more)) + Number(seconds) + Number(rest)
}

/** The relaxation of 300 kinds: our run, cold and again from its basis, beside GLPK and CBC reading the same MPS. */
export default async () => {
  const season = readSeason(nurseryOf(300), TODAY)
  const margins = firstMargins(season)
  const model = buildSeasonModel(season, margins)
  // Once for the engine to compile the solver; the second is measured.
  for (let run = 0; run < 2; run++) {
    const warmUp = await openSolver(model)
    warmUp.solve()
    warmUp.dispose()
  }
  const solver = await openSolver(model)
  const cold = timed(() => solver.solve())
  solver.withMargins({
    ...margins,
    plannedNumber: margins.plannedNumber.map((n, o) => n * (1 + 0.03 * Math.sin(o))),
  })
  const warm = timed(() => solver.solve())
  const capacities = solver.addedRows().length
  const folder = mkdtempSync(join(tmpdir(), 'season-'))
  const file = join(folder, 'season.mps')
  writeFileSync(file, toMps(model, { capacities: solver.addedRows() }))
  const notes: string[] = []
  const rivals: Record<string, { seconds: number; cpuSeconds: number; objective: number }> = {}
  const peer = (name: string, command: string, args: string[], objective: (said: string) => number) => {
    try {
      const { seconds, result } = timed(() =>
        // The shell says last what processor time its children took.
        execFileSync('sh', ['-c', '"$0" "$@" || exit; times', command, ...args], {
          stdio: ['ignore', 'pipe', 'pipe'],
          timeout: 600_000,
          encoding: 'utf8',
        }),
      )
      rivals[name] = { seconds, cpuSeconds: cpuSaid(result), objective: objective(result) }
    } catch (problem) {
      const isAbsent = (problem as { status?: number }).status === NOT_FOUND
      notes.push(`${name}: ${isAbsent ? `${command} is not installed` : 'it failed'}`)
    }
  }
  const report = join(folder, 'glpk.txt')
  peer('glpk', 'glpsol', ['--freemps', file, '--nomip', '--write', report], () =>
    Number(/^s bas \d+ \d+ f f (\S+)/m.exec(readFileSync(report, 'utf8'))?.[1]),
  )
  peer('cbc', 'cbc', [file, 'initialSolve', 'quit'], said =>
    Number(/Optimal objective (\S+)/.exec(said)?.[1]),
  )
  for (const [name, { objective }] of Object.entries(rivals))
    if (!(Math.abs(objective - cold.result.objective) <= SAME * Math.abs(cold.result.objective)))
      throw new Error(`${name} comes to ${objective}, our own run to ${cold.result.objective}.`)
  solver.dispose()
  rmSync(folder, { recursive: true })
  return {
    figures: {
      columns: model.columns.count,
      rows: model.rows.count + capacities,
      entries: model.values.length,
      seconds: cold.seconds,
      cpuSeconds: cold.cpuSeconds,
      secondsAgainAfterEveryOrderChanged: warm.seconds,
      cpuSecondsAgain: warm.cpuSeconds,
      objective: cold.result.objective,
    },
    rivals,
    notes: ['the peers read and solve; ours finds the capacities that fill by itself', ...notes],
  }
}
