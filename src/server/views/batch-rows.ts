import { type BatchRow, type Table, toTable } from '../../api/index.ts'
import { type Batch, heldBatches, type Nursery } from '../../record/index.ts'
import { type BatchId, markOfMethod } from '../../trade/index.ts'
import { onceForState } from './once-for-state.ts'

const standingOf = (batch: Batch): number => batch.portions.reduce((sum, portion) => sum + portion.number, 0)

const stageOf = (nursery: Nursery, batch: Batch): string => {
  const most = [...batch.portions].sort((a, b) => b.number - a.number)[0]
  if (most !== undefined && most.number > 0)
    return nursery.protocols.get(batch.protocol)?.steps.find(step => step.id === most.step)?.name ?? most.step
  return batch.finished > 0 ? 'finished' : 'gone'
}

/** Queries by batch, and holds, looked up once for a whole list. */
export const rowMaker = (nursery: Nursery): ((batch: Batch) => BatchRow) => {
  const queries = new Map<BatchId, number>()
  for (const { about } of nursery.queries)
    if (about.batch !== undefined) queries.set(about.batch, (queries.get(about.batch) ?? 0) + 1)
  const held = heldBatches(nursery)
  return batch => {
    const protocol = nursery.protocols.get(batch.protocol)
    const method = protocol?.method ?? 'seed'
    const countedOn = batch.portions.reduce<string | null>(
      (latest, { countedOn }) =>
        countedOn !== null && (latest === null || countedOn > latest) ? countedOn : latest,
      null,
    )
    return {
      id: batch.id,
      name: batch.name,
      kind: batch.kind,
      kindName: nursery.kinds.get(batch.kind)?.name ?? batch.kind,
      method,
      mark: markOfMethod(method),
      protocol: batch.protocol,
      startedOn: batch.startedOn,
      number: batch.number,
      standing: standingOf(batch),
      finished: batch.finished,
      lost: batch.losses.reduce((sum, loss) => sum + loss.number, 0),
      stage: stageOf(nursery, batch),
      benches: [
        ...new Set(
          batch.portions.flatMap(({ bench, number }) => (bench !== null && number > 0 ? [bench] : [])),
        ),
      ],
      countedOn,
      onHold: held.has(batch.id),
      queries: queries.get(batch.id) ?? 0,
    }
  }
}

/** Days as they are written follow each other as texts do. */
const later = (a: string, b: string): number => (a > b ? -1 : a < b ? 1 : 0)
const byName = new Intl.Collator()

const folded = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase()

interface Asked {
  readonly find?: string | undefined
  readonly state: 'alive' | 'past' | 'all'
  readonly limit: number
}

const lists = onceForState<Table<BatchRow>>()

/** Batches by state and words, those begun last first. */
export const batchTable = (nursery: Nursery, asked: Asked): Table<BatchRow> => {
  const find = () => toTable(batchRows(nursery, asked))
  return asked.find ? find() : lists(nursery, `${asked.state} ${asked.limit}`, find)
}

const batchRows = (nursery: Nursery, asked: Asked): BatchRow[] => {
  const row = rowMaker(nursery)
  const words = folded(asked.find ?? '')
    .split(/\s+/)
    .filter(Boolean)
  const found: BatchRow[] = []
  for (const batch of nursery.batches.values()) {
    const alive = batch.finished > 0 || standingOf(batch) > 0
    if (asked.state !== 'all' && alive !== (asked.state === 'alive')) continue
    const made = row(batch)
    if (words.length > 0) {
      const benches = made.benches.map(bench => nursery.benches.get(bench)?.name ?? bench)
      const text = folded([made.name, made.kindName, made.stage, batch.id, ...benches].join(' '))
      if (!words.every(word => text.includes(word))) continue
    }
    found.push(made)
  }
  return found
    .sort((a, b) => later(a.startedOn, b.startedOn) || byName.compare(b.name, a.name))
    .slice(0, asked.limit)
}
