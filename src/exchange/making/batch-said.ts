import type { Source } from '../../record/index.ts'
import {
  type BatchId,
  type BenchId,
  foldName,
  formOfMethod,
  type Kind,
  type MotherId,
  type PersonId,
  type Protocol,
  type StepId,
} from '../../trade/index.ts'
import { type RowTold, type SheetRow, textIn } from '../reading/sheet-row.ts'
import { formByWord, methodByWord } from '../words/trade-words.ts'
import type { Making } from './making.ts'
import { freeId } from './slug.ts'
import { byName } from './take-places.ts'

/** What is known only of plants from before this record. */
export const BEFORE = 'before this record'

/** The protocol by which the row's plants are made: as its method says, else the kind's first. */
function protocolOf(making: Making, row: SheetRow, told: RowTold, kind: Kind): Protocol | null {
  const protocols = kind.ways.flatMap(({ protocol }) => making.protocols.get(protocol) ?? [])
  const said = textIn(row, 'form')
  if (said === null) return protocols[0] ?? null
  const method = methodByWord(said)
  const form = formByWord(said)
  const fitting =
    protocols.find(protocol => protocol.method === method || foldName(protocol.name) === foldName(said)) ??
    protocols.find(protocol => form !== undefined && formOfMethod(protocol.method) === form)
  if (fitting === undefined && protocols[0] !== undefined)
    told.noted('form', `${kind.name} is not made so`, `taken as made by ${protocols[0].name}`)
  return fitting ?? protocols[0] ?? null
}

export interface BatchSaid {
  readonly batch: BatchId
  readonly name: string
  readonly kind: Kind
  readonly protocol: Protocol
  readonly bench: BenchId | null
  readonly workedBy: readonly PersonId[]
  readonly sources: readonly Source[]
}

export function batchSaid(
  making: Making,
  row: SheetRow,
  told: RowTold,
  kind: Kind,
  started: number,
): BatchSaid | null {
  const protocol = protocolOf(making, row, told, kind)
  if (protocol === null) return null
  const find = <T>(field: string, look: (name: string) => T | undefined): T | undefined => {
    const name = textIn(row, field)
    if (name === null) return undefined
    const found = look(name)
    if (found === undefined) told.noted(field, 'the nursery has none of this name', 'taken as not said')
    return found
  }
  const bench = find('bench', name => byName(making.benches, name))
  const mother = find('mother', name => byName(making.mothers, name))
  const by = find('by', name => byName(making.people, name))
  const taking = protocol.takes.find(one => one.what === 'material' && one.part !== 'rootstock')
  const name =
    textIn(row, 'batch') ??
    freeId(`${kind.name} ${textIn(row, 'startedOn') ?? making.today}`, id =>
      making.batches.has(id as BatchId),
    )
  return {
    batch: name.slice(0, 120) as BatchId,
    name,
    kind,
    protocol,
    bench: bench?.id ?? null,
    workedBy: by === undefined ? [] : [by.id],
    sources:
      mother === undefined || taking?.what !== 'material'
        ? []
        : [
            {
              from: 'mother',
              mother: mother.id as MotherId,
              material: taking.material,
              number: started * taking.perPlant,
            },
          ],
  }
}

export function tellStart(
  making: Making,
  said: BatchSaid,
  on: string,
  number: number,
  takenOver?: { step: StepId; since: string },
): void {
  const { batch, name, kind, protocol, bench, workedBy, sources } = said
  making.batches.add(batch)
  making.tell(on, {
    kind: 'batch-started/1',
    batch,
    name,
    kindOfTree: kind.id,
    protocol: protocol.id,
    number,
    sources,
    bench,
    workedBy,
    candidates: [],
    ...(takenOver === undefined ? {} : { takenOver }),
  })
}

/** What is told of a step gone by: the look at its end, and that its plants went on. */
export function tellStep(
  making: Making,
  batch: BatchId,
  step: Protocol['steps'][number],
  gone: { readonly left: number; readonly dead: number; readonly until: string },
  next: { readonly step: StepId; readonly bench: BenchId | null } | null,
): void {
  const isLooked = step.sign !== 'alive' && step.sign !== 'saleable'
  if (isLooked)
    making.tell(gone.until, {
      kind: 'counted/1',
      batch,
      step: step.id,
      sign: step.sign,
      taken: gone.left,
      dead: gone.dead,
      undecided: 0,
    })
  else if (gone.dead > 0)
    making.tell(gone.until, { kind: 'lost/1', batch, step: step.id, number: gone.dead, cause: BEFORE })
  if (gone.left === 0) return
  if (next === null) making.tell(gone.until, { kind: 'finished/1', batch, number: gone.left, grade: '' })
  else
    making.tell(gone.until, {
      kind: 'advanced/1',
      batch,
      from: step.id,
      to: next.step,
      number: gone.left,
      bench: next.bench,
    })
}

/** The record has a batch of this name already. */
export const isThere = (making: Making, row: SheetRow): boolean => {
  const name = textIn(row, 'batch')
  return name !== null && making.batches.has(name.slice(0, 120) as BatchId)
}

export const earlierOf = (a: string, b: string): string => (a.localeCompare(b) <= 0 ? a : b)
