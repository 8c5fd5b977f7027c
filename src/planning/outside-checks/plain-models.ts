import { casesOf, type Fixture, type OutsideCheck, outsideCheck, sourceOf } from '../../science/index.ts'
import plain from '../fixtures/plain-models.json' with { type: 'json' }
import { type Drafting, drafting } from '../model/drafting.ts'
import { loadSolver, openModel } from '../model/open-model.ts'

const fixture: Fixture = plain

/** Teaching models that are no season, drafted and handed to the solver as seasons are: optima known from elsewhere. */
export async function plainModels(): Promise<readonly OutsideCheck[]> {
  const [product] = casesOf<unknown, { z: number; x: number; y: number }>(fixture, 'wyndor')
  const mix = await solved(draft => {
    const doors = draft.column({ name: 'x', part: 'made', cost: -3, upper: 4 })
    const windows = draft.column({ name: 'y', part: 'made', cost: -5 })
    atMost(draft, 'second plant', 12, [[windows, 2]])
    atMost(draft, 'third plant', 18, [
      [doors, 3],
      [windows, 2],
    ])
  }, true)

  const [knapsack] = casesOf<{ weights: number[]; profits: number[]; capacity: number }, { profit: number }>(
    fixture,
    'knapsack',
  )
  const { weights, profits, capacity } = knapsack!.inputs
  const packed = await solved(draft => {
    const columns = profits.map((profit, i) =>
      draft.column({ name: `item ${i}`, part: 'packed', cost: -profit, upper: 1, isWhole: true }),
    )
    atMost(
      draft,
      'weight',
      capacity,
      columns.map((column, i) => [column, weights[i]!]),
    )
  })

  const [stock] = casesOf<
    { master: number; widths: number[]; demand: number[] },
    { rolls: number; totalLength: number; wastePercent: number }
  >(fixture, 'cutting-stock')
  const { master, widths, demand } = stock!.inputs
  const totalLength = widths.reduce((sum, width, i) => sum + width * demand[i]!, 0)
  const patterns = patternsOf(widths, master)
  const cut = await solved(draft => {
    const columns = patterns.map((_, p) =>
      draft.column({ name: `pattern ${p}`, part: 'rolls', cost: 1, isWhole: true }),
    )
    widths.forEach((_, w) => {
      const row = draft.row({ rule: 'demand', subject: w, about: String(w), week: -1, lower: demand[w]! })
      for (const [p, pattern] of patterns.entries()) draft.put(row, columns[p]!, pattern[w]!)
    })
  })

  const [project] = casesOf<ProjectInputs, { makespan: number }>(fixture, 'psplib')
  const makespan = await shortestProject(project!.inputs)

  const checkOf = <Expected extends object>(
    what: string,
    known: { id: string; basis: string; note: string; expected: Expected } | undefined,
    got: Readonly<Record<string, number>>,
  ): OutsideCheck =>
    outsideCheck({
      what: `${what} (${known!.id})`,
      source: sourceOf(fixture, known!),
      basis: known!.basis,
      expected: Object.fromEntries(Object.entries(known!.expected).filter(([name]) => name in got)),
      got,
      tolerance: { wastePercent: 0.001, other: 1e-6 },
    })
  return [
    checkOf('Product mix by the season solver', product, {
      z: -mix.cost,
      x: mix.values[0]!,
      y: mix.values[1]!,
    }),
    checkOf('Knapsack by the season solver', knapsack, { profit: -packed.cost }),
    checkOf('Cutting stock by the season solver, every pattern written down', stock, {
      rolls: cut.cost,
      totalLength,
      wastePercent: 100 * (1 - totalLength / (cut.cost * master)),
    }),
    checkOf('Project of 30 tasks on four resources by the season solver', project, { makespan }),
  ]
}

/** Cost and values of the best answer of a model. */
async function solved(write: (draft: Drafting) => void, isRelaxed = false) {
  const draft = drafting()
  write(draft)
  const opened = openModel(await loadSolver(), draft.finished(), isRelaxed)
  opened.options.set({ mip_rel_gap: 0, mip_abs_gap: 0.999 * Number(!isRelaxed) })
  try {
    opened.run()
    return { cost: opened.getObjectiveValue(), values: [...opened.getSolution().colValue] }
  } finally {
    opened.dispose()
  }
}

function atMost(
  draft: Drafting,
  about: string,
  upper: number,
  terms: readonly (readonly [number, number])[],
) {
  const row = draft.row({ rule: 'at most', subject: 0, about, week: -1, upper })
  for (const [column, value] of terms) draft.put(row, column, value)
}

/** Every way to cut a roll that leaves no room for one more of any width. */
function patternsOf(widths: readonly number[], length: number): number[][] {
  const patterns: number[][] = []
  const narrowest = Math.min(...widths)
  const cutFrom = (w: number, left: number, pattern: number[]) => {
    if (w === widths.length) {
      if (left < narrowest) patterns.push([...pattern])
      return
    }
    for (let count = Math.floor(left / widths[w]!); count >= 0; count--)
      cutFrom(w + 1, left - count * widths[w]!, [...pattern, count])
  }
  cutFrom(0, length, [])
  return patterns
}

interface ProjectInputs {
  readonly durations: readonly number[]
  /** From 1. */
  readonly successors: readonly (readonly number[])[]
  readonly resources: readonly (readonly number[])[]
  readonly capacity: readonly number[]
}

/** No later than this, above the optimum. */
const LATEST = 46

/** The shortest time in which all tasks are done, a column for each task and time of its start. */
async function shortestProject(project: ProjectInputs): Promise<number> {
  const { durations, successors, resources, capacity } = project
  const tasks = durations.length
  const earliest = new Array<number>(tasks).fill(0)
  const latest = durations.map(() => LATEST)
  // Tasks are numbered after all that go before them.
  for (let j = 0; j < tasks; j++)
    for (const next of successors[j]!)
      earliest[next - 1] = Math.max(earliest[next - 1]!, earliest[j]! + durations[j]!)
  for (let j = tasks - 1; j >= 0; j--) {
    latest[j] = LATEST - durations[j]!
    for (const next of successors[j]!) latest[j] = Math.min(latest[j]!, latest[next - 1]! - durations[j]!)
  }
  const { cost } = await solved(draft => {
    const starts = durations.map((_, j) => {
      const columns = new Map<number, number>()
      for (let t = earliest[j]!; t <= latest[j]!; t++)
        columns.set(
          t,
          draft.column({
            name: `${j} at ${t}`,
            part: 'start',
            cost: j === tasks - 1 ? t : 0,
            upper: 1,
            isWhole: true,
          }),
        )
      const row = draft.row({ rule: 'once', subject: j, about: String(j), week: -1, lower: 1, upper: 1 })
      for (const column of columns.values()) draft.put(row, column, 1)
      return columns
    })
    successors.forEach((nexts, j) => {
      for (const next of nexts)
        for (let t = 0; t <= LATEST; t++) {
          // Who has begun by t has its forerunner begun a duration before.
          const row = draft.row({ rule: 'after', subject: j, about: `${j} ${next}`, week: t, upper: 0 })
          for (const [at, column] of starts[next - 1]!) if (at <= t) draft.put(row, column, 1)
          for (const [at, column] of starts[j]!) if (at <= t - durations[j]!) draft.put(row, column, -1)
        }
    })
    capacity.forEach((most, k) => {
      for (let t = 0; t < LATEST; t++) {
        const row = draft.row({ rule: 'resource', subject: k, about: String(k), week: t, upper: most })
        starts.forEach((columns, j) => {
          for (const [at, column] of columns)
            if (at <= t && t < at + durations[j]!) draft.put(row, column, resources[j]![k]!)
        })
      }
    })
  })
  return cost
}
