import type { ProtocolSummary } from '../../../api/index.ts'
import type { Body, Source } from '../../../record/index.ts'
import type { BatchId, BenchId, KindId, MotherId, PersonId, StepId } from '../../../trade/index.ts'

/** A batch as it is being typed: begun by hand, or standing already. */
export interface BatchTyped {
  readonly name: string
  readonly number: number | null
  /** Empty: not said. */
  readonly bench: string
  readonly startedOn: string
  /** The step in which the plants stand now; the first one for a batch that is begun. */
  readonly step: string
  /** Since when, of a later step. */
  readonly since: string
  /** Where wood, seed or shoots, and where rootstocks come from: `mother …`, `batch …`, `bought`, or empty. */
  readonly materialFrom: string
  readonly rootstockFrom: string
  readonly supplier: string
}

export type BatchLack = 'name' | 'number' | 'startedOn' | 'future' | 'since' | 'supplier'

const idIn = (from: string): string => from.slice(from.indexOf(' ') + 1)

/** What still lacks, or cannot be. */
export function batchLacks(typed: BatchTyped, firstStep: string, today: string): BatchLack | null {
  if (typed.name.trim() === '') return 'name'
  if (typed.number === null) return 'number'
  if (typed.startedOn === '') return 'startedOn'
  if (typed.startedOn > today) return 'future'
  if (typed.step !== firstStep && (typed.since < typed.startedOn || typed.since > today)) return 'since'
  if ([typed.materialFrom, typed.rootstockFrom].includes('bought') && typed.supplier.trim() === '')
    return 'supplier'
  return null
}

const sourcesOf = (typed: BatchTyped, number: number, takes: ProtocolSummary['takes']): readonly Source[] =>
  takes.flatMap((taking): Source[] => {
    const from = taking.what === 'material' ? typed.materialFrom : typed.rootstockFrom
    if (from === '' || (taking.what === 'material' && taking.part === 'rootstock')) return []
    const material = taking.what === 'material' ? taking.material : 'rootstocks'
    const some = number * taking.perPlant
    if (from === 'bought') return [{ from, supplier: typed.supplier.trim(), material, number: some }]
    return taking.what === 'material'
      ? [{ from: 'mother', mother: idIn(from) as MotherId, material: taking.material, number: some }]
      : [{ from: 'batch', batch: idIn(from) as BatchId, as: 'rootstock', number: some }]
  })

/** The entry by which the record begins with the batch, said of the day on which it was begun. */
export function batchStarted(
  typed: BatchTyped & { readonly number: number },
  of: {
    readonly id: string
    readonly kind: KindId
    readonly protocol: Pick<ProtocolSummary, 'id' | 'takes' | 'steps'>
    readonly by: PersonId | null
  },
): Body {
  const isBegun = typed.step === of.protocol.steps[0]?.id
  return {
    kind: 'batch-started/1',
    batch: of.id as BatchId,
    name: typed.name.trim(),
    kindOfTree: of.kind,
    protocol: of.protocol.id,
    number: typed.number,
    sources: sourcesOf(typed, typed.number, of.protocol.takes),
    bench: typed.bench === '' ? null : (typed.bench as BenchId),
    // Who takes a batch over says nothing of who made it.
    workedBy: of.by === null || !isBegun ? [] : [of.by],
    candidates: [],
    ...(isBegun ? {} : { takenOver: { step: typed.step as StepId, since: typed.since } }),
  }
}
