import type { Season } from '../season.ts'
import type { Run, Runs } from './runs.ts'

/**
 * Kinds whose plants serve the same orders, or any of which will do as a rootstock: what is on hand of one changes what is
 * taken of another. Between units nothing passes but how many rootstocks a graft got.
 */
export interface Unit {
  /** Of the runs: stock of its kinds. */
  readonly lines: readonly number[]
  readonly orders: readonly number[]
  readonly free: readonly Run[]
  /** Those that take their rootstocks here, and those whose trees come here, in order of the week in which they take. */
  readonly grafts: readonly Graft[]
}

export interface Graft {
  readonly run: Run
  readonly takesHere: boolean
  readonly comesHere: boolean
}

/** The units of a season in an order in which rootstocks come before what is worked on them. */
export function unitsOf(season: Season, { free, grafts, lines }: Runs): Unit[] {
  const root = season.kinds.map((_, kind) => kind)
  const find = (kind: number): number => {
    let at = kind
    while (root[at] !== at) at = root[at]!
    return at
  }
  const kindOf = (line: number) => lines[line]!.kind
  for (const { kinds } of season.orders) for (const { kind } of kinds) root[find(kind)] = find(kinds[0]!.kind)
  for (const { rootstockLines: taken } of grafts)
    for (const { line } of taken) root[find(kindOf(line))] = find(kindOf(taken[0]!.line))

  /** Units that rest on each other are one. */
  const inTurn = (): number[] => {
    const restsOn = new Map<number, Set<number>>()
    for (const line of lines) restsOn.set(find(line.kind), new Set())
    for (const { kinds } of season.orders) restsOn.set(find(kinds[0]!.kind), new Set())
    for (const { line, rootstockLines } of grafts) {
      const [from, to] = [find(kindOf(rootstockLines[0]?.line ?? line)), find(kindOf(line))]
      if (from !== to) restsOn.get(to)!.add(from)
    }
    const turn: number[] = []
    for (let ready = true; ready; ) {
      ready = false
      for (const [unit, before] of restsOn) {
        if ([...before].some(each => restsOn.has(each))) continue
        turn.push(unit)
        restsOn.delete(unit)
        ready = true
      }
    }
    if (restsOn.size === 0) return turn
    const [first, ...others] = restsOn.keys()
    for (const other of others) root[other] = first!
    return inTurn()
  }

  const units = new Map(
    inTurn().map(unit => [
      unit,
      { lines: [] as number[], orders: [] as number[], free: [] as Run[], grafts: [] as Graft[] },
    ]),
  )
  const unitOf = (kind: number) => units.get(find(kind))!
  lines.forEach(({ kind }, line) => {
    unitOf(kind).lines.push(line)
  })
  season.orders.forEach(({ kinds }, o) => {
    unitOf(kinds[0]!.kind).orders.push(o)
  })
  for (const run of free) unitOf(kindOf(run.line)).free.push(run)
  for (const run of grafts) {
    const to = unitOf(kindOf(run.line))
    const from = run.rootstockLines.length > 0 ? unitOf(kindOf(run.rootstockLines[0]!.line)) : to
    if (from !== to) from.grafts.push({ run, takesHere: true, comesHere: false })
    to.grafts.push({ run, takesHere: from === to, comesHere: true })
  }
  return [...units.values()]
}
