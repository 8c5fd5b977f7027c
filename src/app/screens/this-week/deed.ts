import type { BatchRow, ProtocolSummary } from '../../../api/index.ts'
import type { PlannedStart, Task } from '../../../planning/index.ts'
import type { Body, Source } from '../../../record/index.ts'
import type { BatchId, Material, PersonId, StepId } from '../../../trade/index.ts'

/** What is known when a task is ticked. */
export interface DeedGround {
  readonly start: PlannedStart | undefined
  /** Batches of the task's kind with finished plants, the oldest first. */
  readonly finished: readonly Pick<BatchRow, 'id' | 'finished'>[]
  readonly protocol: ProtocolSummary | undefined
  readonly by: string | null
  readonly newBatch: () => { readonly id: BatchId; readonly name: string }
  /** How a number other than the planned one is noted where no entry has a place for it. */
  readonly noteOf: (task: Task, number: number) => string
}

const scaled = (planned: number, of: number, number: number): number =>
  of > 0 ? Math.max(1, Math.round((planned * number) / of)) : number

const sourcesOf = (start: PlannedStart, number: number): readonly Source[] => [
  ...start.mothers.map(
    ({ mother, material, number: planned }): Source => ({
      from: 'mother',
      mother,
      material: material as Material,
      number: scaled(planned, start.number, number),
    }),
  ),
  ...start.rootstocks.flatMap(({ batch, number: planned }): Source[] =>
    batch === null
      ? []
      : [{ from: 'batch', batch, as: 'rootstock', number: scaled(planned, start.number, number) }],
  ),
]

/** The step after this one; null after the last. */
const stepAfter = (protocol: ProtocolSummary | undefined, step: StepId): StepId | null => {
  const at = protocol?.steps.findIndex(({ id }) => id === step) ?? -1
  return at === -1 ? null : (protocol?.steps[at + 1]?.id ?? null)
}

/** From the batch named, or from the finished ones of that kind, the oldest first; what is beyond all stays with the last. */
const dispatchedFrom = (task: Task, number: number, finished: DeedGround['finished']): readonly Body[] => {
  const { order } = task
  const out = (batch: BatchId, some: number): Body => ({
    kind: 'dispatched/1',
    batch,
    order,
    number: some,
    to: '',
  })
  if (task.batch !== null) return [out(task.batch, number)]
  let left = number
  return finished.flatMap(({ id, finished: here }, index) => {
    const some = index === finished.length - 1 ? left : Math.min(left, here)
    left -= some
    return some > 0 ? [out(id, some)] : []
  })
}

/** What a ticked task says happened, with the number that really happened. The task itself is said done last. */
export const deedOf = (task: Task, number: number, ground: DeedGround): readonly Body[] => {
  const done: Body = { kind: 'task-done/2', task: task.id, number, minutes: null }
  const noted = (): readonly Body[] =>
    number === Math.round(task.number)
      ? []
      : [{ kind: 'noted/1', about: task.batch ?? task.id, text: ground.noteOf(task, number) }]
  if (number === 0) return [...noted(), done]
  switch (task.kindOfTask) {
    case 'start': {
      const { start } = ground
      if (start === undefined) return [...noted(), done]
      const { id, name } = ground.newBatch()
      const by = task.person ?? (ground.by as PersonId | null)
      return [
        {
          kind: 'batch-started/1',
          batch: id,
          name,
          kindOfTree: start.kind,
          protocol: start.protocol,
          number,
          sources: sourcesOf(start, number),
          bench: task.bench ?? start.bench,
          workedBy: by === null ? [] : [by],
          candidates: [],
        },
        done,
      ]
    }
    case 'advance': {
      const to = task.step === null ? null : stepAfter(ground.protocol, task.step)
      if (task.batch === null || task.step === null || to === null) return [...noted(), done]
      return [{ kind: 'advanced/1', batch: task.batch, from: task.step, to, number, bench: task.bench }, done]
    }
    case 'finish':
      if (task.batch === null) return [...noted(), done]
      return [{ kind: 'finished/1', batch: task.batch, number, grade: '' }, done]
    case 'dispatch':
      return [...dispatchedFrom(task, number, ground.finished), done]
    default:
      return [...noted(), done]
  }
}

/** The next free name of a batch in a year: `26-119` after `26-118`. */
export const nextBatchName = (names: readonly string[], today: string): string => {
  const year = today.slice(2, 4)
  const taken = names.flatMap(name => {
    const parts = /^(\d{2})-(\d+)$/.exec(name)
    return parts !== null && parts[1] === year ? [Number(parts[2])] : []
  })
  return `${year}-${String(Math.max(0, ...taken) + 1).padStart(3, '0')}`
}
