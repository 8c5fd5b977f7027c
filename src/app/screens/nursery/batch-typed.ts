import type { ProtocolSummary } from '../../../api/index.ts'
import type { Body, Source } from '../../../record/index.ts'
import type {
  BatchId,
  BenchId,
  CultivarId,
  Kind,
  Material,
  MotherId,
  PersonId,
  StepId,
} from '../../../trade/index.ts'

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
  /** Where each wood, by its key, seed or shoots come from: `mother …`, `bought`, or empty. */
  readonly woodFrom: Readonly<Record<string, string>>
  /** Where rootstocks come from: `batch …`, `bought`, or empty. */
  readonly rootstockFrom: string
  readonly supplier: string
}

export type BatchLack = 'name' | 'number' | 'startedOn' | 'future' | 'since' | 'supplier'

const idIn = (from: string): string => from.slice(from.indexOf(' ') + 1)

export const isAnyBought = ({ woodFrom, rootstockFrom }: BatchTyped): boolean =>
  [...Object.values(woodFrom), rootstockFrom].includes('bought')

/** What still lacks, or cannot be. */
export function batchLacks(typed: BatchTyped, firstStep: string, today: string): BatchLack | null {
  if (typed.name.trim() === '') return 'name'
  if (typed.number === null) return 'number'
  if (typed.startedOn === '') return 'startedOn'
  if (typed.startedOn > today) return 'future'
  if (typed.step !== firstStep && (typed.since < typed.startedOn || typed.since > today)) return 'since'
  if (isAnyBought(typed) && typed.supplier.trim() === '') return 'supplier'
  return null
}

type OfKind = Pick<Kind, 'id' | 'cultivars' | 'interstem'>

/** Wood, seed or shoots that a batch takes of one mother: of which cultivar, or with null of the kind itself. */
export interface Wood {
  readonly key: string
  readonly material: Material
  readonly isInterstem: boolean
  readonly perPlant: number
  readonly cultivar: CultivarId | null
}

/** What a batch of a kind takes from mother trees: of a tree of several cultivars, a stick of each. */
export const woodsOf = ({ cultivars, interstem }: OfKind, takes: ProtocolSummary['takes']): readonly Wood[] =>
  takes.flatMap(taking => {
    if (taking.what !== 'material' || taking.part === 'rootstock') return []
    const { part, material, perPlant } = taking
    const isInterstem = part === 'interstem'
    if (isInterstem && interstem === null) return []
    const named = isInterstem ? [interstem] : part === 'whole plant' ? cultivars.slice(0, 1) : cultivars
    return (named.length > 0 ? named : [null]).map(cultivar => ({
      key: `${part} ${cultivar ?? ''}`,
      material,
      isInterstem,
      perPlant,
      cultivar,
    }))
  })

const sourcesOf = (
  typed: BatchTyped,
  number: number,
  kind: OfKind,
  takes: ProtocolSummary['takes'],
): readonly Source[] => {
  const bought = (material: string, some: number): Source => ({
    from: 'bought',
    supplier: typed.supplier.trim(),
    material,
    number: some,
  })
  const rootstocks = takes.flatMap((taking): Source[] => {
    const from = typed.rootstockFrom
    if (taking.what !== 'rootstock' || from === '') return []
    const some = number * taking.perPlant
    return from === 'bought'
      ? [bought('rootstocks', some)]
      : [{ from: 'batch', batch: idIn(from) as BatchId, as: 'rootstock', number: some }]
  })
  const wood = woodsOf(kind, takes).flatMap(({ key, material, perPlant }): Source[] => {
    const from = typed.woodFrom[key] ?? ''
    if (from === '') return []
    const some = number * perPlant
    return from === 'bought'
      ? [bought(material, some)]
      : [{ from: 'mother', mother: idIn(from) as MotherId, material, number: some }]
  })
  return [...rootstocks, ...wood]
}

/** The entry by which the record begins with the batch, said of the day on which it was begun. */
export function batchStarted(
  typed: BatchTyped & { readonly number: number },
  of: {
    readonly id: string
    readonly kind: OfKind
    readonly protocol: Pick<ProtocolSummary, 'id' | 'takes' | 'steps'>
    readonly by: PersonId | null
  },
): Body {
  const isBegun = typed.step === of.protocol.steps[0]?.id
  return {
    kind: 'batch-started/1',
    batch: of.id as BatchId,
    name: typed.name.trim(),
    kindOfTree: of.kind.id,
    protocol: of.protocol.id,
    number: typed.number,
    sources: sourcesOf(typed, typed.number, of.kind, of.protocol.takes),
    bench: typed.bench === '' ? null : (typed.bench as BenchId),
    // Who takes a batch over says nothing of who made it.
    workedBy: of.by === null || !isBegun ? [] : [of.by],
    candidates: [],
    ...(isBegun ? {} : { takenOver: { step: typed.step as StepId, since: typed.since } }),
  }
}
