import type {
  BatchId,
  BenchId,
  CultivarId,
  KindId,
  MethodId,
  MotherId,
  PersonId,
  Protocol,
  ProtocolId,
  SpeciesId,
  StepId,
} from '../trade/index.ts'
import type { Batch, Nursery, StepOutcome } from './state.ts'

/** What one step did to the plants of one batch: a row of the table from which rates are learnt. */
export interface Observation {
  readonly protocol: ProtocolId
  /** Of the protocol as it stood when the batch was begun. */
  readonly protocolVersion: Protocol['version']
  readonly method: MethodId
  readonly step: StepId
  readonly species: SpeciesId
  readonly kind: KindId
  /** Null where the kind has none or several, as of all that follow that could be several. */
  readonly cultivar: CultivarId | null
  readonly rootstock: KindId | null
  /** When the first plants entered the step: calendar month, 1 to 12, and year. */
  readonly month: number
  readonly year: number
  readonly grafter: PersonId | null
  readonly bench: BenchId | null
  readonly mother: MotherId | null
  readonly batch: BatchId
  /** Of the plants whose fate is known. */
  readonly entered: number
  readonly survived: number
  /** Every plant has left the step or died in it. */
  readonly closed: boolean
}

/**
 * Above this share of plants not yet to tell, or moved without its being said, found or missing, the numbers of a
 * step say too little to learn from. A rule of ours; no source.
 */
const mostUnclearShare = 0.1

/**
 * The rows that are complete enough to teach:
 * - a closed step, where nothing stands any more: survived are those that left it, the rest did not;
 * - an open step, if every plant in it was counted by the sign that the step goes by and at most a tenth is not yet
 *   to tell. Those undecided are left out of both numbers, and the row says that it is not closed.
 * A plant that a count found missing did not survive; one that it found in excess did enter. A step whose numbers
 * were mended by more than a tenth teaches nothing. Plants that changed batch in mid-step, by a split or a join,
 * are told in one row, under the batch that brought the most.
 */
export function observations(nursery: Nursery): readonly Observation[] {
  const known = observed.get(nursery)
  if (known !== undefined) return known
  const rows: Observation[] = []
  for (const group of stepGroups(nursery)) {
    const row = rowOf(nursery, group)
    if (row) rows.push(row)
  }
  observed.set(nursery, rows)
  return rows
}

/** A nursery is never changed once folded: its rows are told once. */
const observed = new WeakMap<Nursery, readonly Observation[]>()

interface Member {
  readonly batch: Batch
  readonly outcome: StepOutcome
}

/** Each step of each batch; where plants went across between batches in that step, those batches together. */
function* stepGroups(nursery: Nursery): Generator<readonly Member[]> {
  const across = new Map<string, Member[]>()
  for (const batch of nursery.batches.values()) {
    for (const outcome of batch.outcomes) {
      const member = { batch, outcome }
      if (outcome.cameAcross === 0 && outcome.wentAcross === 0) {
        yield [member]
        continue
      }
      const key = `${outcome.step} ${batch.id}`
      const group = across.get(key) ?? []
      group.push(member)
      across.set(key, group)
      if (outcome.cameAcross === 0) continue
      for (const { id, as } of batch.origins) {
        if (as !== 'rest' && as !== 'joined') continue
        const other = `${outcome.step} ${id}`
        const joined = across.get(other) ?? []
        const mine = across.get(key)!
        if (joined === mine) continue
        mine.push(...joined)
        across.set(other, mine)
        for (const { batch: moved } of joined) across.set(`${outcome.step} ${moved.id}`, mine)
      }
    }
  }
  for (const group of new Set(across.values())) if (group.length > 0) yield group
}

function rowOf(nursery: Nursery, group: readonly Member[]): Observation | null {
  const brought = ({ outcome }: Member) => outcome.entered - outcome.cameAcross
  const lead = group.reduce((most, member) => (brought(member) > brought(most) ? member : most))
  const { batch, outcome } = lead
  const protocol = nursery.protocols.get(batch.protocol)
  const kind = nursery.kinds.get(batch.kind) ?? nursery.former.kinds.get(batch.kind)
  if (!protocol || !kind) return null
  const sum = (value: (member: Member) => number) => group.reduce((total, member) => total + value(member), 0)

  const standing = group.flatMap(member => member.batch.portions.filter(p => p.step === outcome.step))
  const undecided = standing.reduce((total, portion) => total + portion.number - portion.taken, 0)
  const taken = standing.reduce((total, portion) => total + portion.taken, 0)
  const all = sum(brought) + sum(({ outcome: o }) => o.found)
  const mended = sum(({ outcome: o }) => o.found + o.missing + o.unsaid)
  const entered = all - undecided
  if (entered <= 0 || mended > mostUnclearShare * all) return null

  const closed = standing.length === 0
  if (!closed) {
    const sign = protocol.steps.find(step => step.id === outcome.step)?.sign
    const counted = standing.every(portion => portion.countedOn !== null)
    const looks = group.flatMap(member => member.outcome.looks.slice(-1))
    if (!counted || undecided > mostUnclearShare * all || !looks.every(look => look.sign === sign))
      return null
  }
  const survived = sum(({ outcome: o }) => o.left - o.wentAcross) + taken
  const [year, month] = outcome.firstEntered.split('-').map(Number) as [number, number]
  return {
    protocol: batch.protocol,
    protocolVersion: versionAt(nursery, batch) ?? protocol.version,
    method: protocol.method,
    step: outcome.step,
    species: kind.species,
    kind: batch.kind,
    cultivar: only(kind.cultivars),
    rootstock: only(rootstocksOf(nursery, batch)) ?? kind.rootstock,
    month,
    year,
    grafter: only(batch.workedBy),
    bench: outcome.bench,
    mother: only(mothersOf(nursery, batch)),
    batch: batch.id,
    entered,
    survived: Math.min(survived, entered),
    closed,
  }
}

const only = <T>(items: readonly T[]): T | null => (new Set(items).size === 1 ? items[0]! : null)

/** A batch begun before its protocol was written down follows the first that was. */
function versionAt(nursery: Nursery, batch: Batch): Protocol['version'] | undefined {
  const versions = nursery.protocolVersions.get(batch.protocol) ?? []
  return (versions.findLast(({ on }) => on <= batch.startedOn) ?? versions[0])?.version
}

const rootstocksOf = (nursery: Nursery, batch: Batch): KindId[] =>
  batch.sources.flatMap(source => {
    const from =
      source.from === 'batch' && source.as === 'rootstock' ? nursery.batches.get(source.batch) : undefined
    return from ? [from.kind] : []
  })

const mothersOf = (nursery: Nursery, batch: Batch): MotherId[] =>
  batch.sources.flatMap(source => {
    if (source.from === 'mother') return [source.mother]
    const lot = source.from === 'lot' ? nursery.lots.get(source.lot) : undefined
    return lot ? [lot.mother] : []
  })
