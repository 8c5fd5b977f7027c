import type { Task } from '../../../planning/index.ts'
import type { Bench } from '../../../record/index.ts'
import type { PlaceKind } from '../../../trade/index.ts'

export interface WorkPlace {
  readonly bench: string | null
  /** Wood is cut and shoots are prepared at the mother trees, before anything else of the day. */
  readonly isAtMothers: boolean
  readonly tasks: readonly Task[]
}

export interface WorkDay {
  /** Null: what does not fit into the week. */
  readonly day: string | null
  readonly minutes: number
  readonly places: readonly WorkPlace[]
}

/** Kinds of place in the order in which one walks. */
const ON_THE_WAY: Record<PlaceKind, number> = {
  'mother block': 0,
  'seed house': 1,
  'mist bed': 2,
  'hot bed': 3,
  'healing tent': 4,
  'cold store': 5,
  'shade house': 6,
  tunnel: 7,
  'standing ground': 8,
  'field row': 9,
}

/** From the mother block through the houses to the field, then along the benches as they stand, then by name. */
const alongTheBenches = (benches: ReadonlyMap<string, Bench>) => (a: string | null, b: string | null) => {
  const [first, second] = [a, b].map(id => (id === null ? undefined : benches.get(id)))
  if (first === undefined || second === undefined)
    return (first === undefined ? 1 : 0) - (second === undefined ? 1 : 0)
  return (
    ON_THE_WAY[first.place] - ON_THE_WAY[second.place] ||
    (first.position?.yMetres ?? 0) - (second.position?.yMetres ?? 0) ||
    (first.position?.xMetres ?? 0) - (second.position?.xMetres ?? 0) ||
    first.name.localeCompare(second.name, undefined, { numeric: true })
  )
}

const isAtMothers = ({ bench, kindOfTask }: Task): boolean =>
  bench === null && (kindOfTask === 'collect' || kindOfTask === 'prepare')

const put = (groups: Map<string | null, Task[]>, key: string | null, task: Task): void => {
  const group = groups.get(key)
  if (group === undefined) groups.set(key, [task])
  else group.push(task)
}

/** The week's tasks by day and, within a day, in the order in which one walks past them. */
export const walkingOrder = (
  tasks: readonly Task[],
  benches: ReadonlyMap<string, Bench>,
): readonly WorkDay[] => {
  const days = new Map<string | null, Task[]>()
  for (const task of tasks) put(days, task.day, task)
  const along = alongTheBenches(benches)
  return [...days]
    .sort(([a], [b]) => (a === null ? 1 : b === null ? -1 : a.localeCompare(b)))
    .map(([day, ofDay]) => {
      const atMothers = ofDay.filter(isAtMothers)
      const places = new Map<string | null, Task[]>()
      for (const task of ofDay) if (!isAtMothers(task)) put(places, task.bench, task)
      return {
        day,
        minutes: ofDay.reduce((sum, { minutes }) => sum + minutes, 0),
        places: [
          ...(atMothers.length > 0 ? [{ bench: null, isAtMothers: true, tasks: atMothers }] : []),
          ...[...places]
            .sort(([a], [b]) => along(a, b))
            .map(([bench, here]) => ({ bench, isAtMothers: false, tasks: here })),
        ],
      }
    })
}
