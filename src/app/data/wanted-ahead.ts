import type { WeekPlanned, WorkList } from '../../api/index.ts'
import type { Task } from '../../planning/index.ts'

/** So many batches are held ready, some six megabytes: a week's work of a large nursery, or all of a small one. */
const MOST_BATCHES = 400
const MOST_MOTHERS = 100
const MOST_BENCHES = 100

export interface WantedAhead {
  readonly batches: readonly string[]
  readonly mothers: readonly string[]
  readonly benches: readonly string[]
}

const firstOf = (ids: readonly (string | null)[], most: number): readonly string[] =>
  [...new Set(ids)].filter(id => id !== null).slice(0, most)

/**
 * What is to be at hand where no server answers, what is needed first standing first: what the open tasks of this week are
 * about, those of the person who works here before those of others, then all else.
 */
export const wantedAhead = (
  {
    tasks,
    done,
    starts,
  }: { readonly tasks: readonly Task[] } & Pick<WorkList, 'done'> & Pick<WeekPlanned, 'starts'>,
  person: string | null,
  all: WantedAhead,
): WantedAhead => {
  const isDone = new Set(done.map(({ task }) => task))
  const open = tasks.filter(({ id }) => !isDone.has(id))
  const inTurn = [
    ...open.filter(task => task.person === person),
    ...open.filter(task => task.person !== person),
  ]
  const startById = new Map<string | null, (typeof starts)[number]>(starts.map(start => [start.id, start]))
  const mothersOf = inTurn.flatMap(
    ({ start }) => startById.get(start)?.mothers.map(({ mother }) => mother) ?? [],
  )
  return {
    batches: firstOf([...inTurn.map(({ batch }) => batch), ...all.batches], MOST_BATCHES),
    mothers: firstOf([...mothersOf, ...all.mothers], MOST_MOTHERS),
    benches: firstOf([...inTurn.map(({ bench }) => bench), ...all.benches], MOST_BENCHES),
  }
}
