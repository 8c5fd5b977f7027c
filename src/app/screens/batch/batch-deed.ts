import type { BatchView } from '../../../api/index.ts'
import type { Body, Source } from '../../../record/index.ts'
import type {
  BatchId,
  BenchId,
  CultivarId,
  KindId,
  Material,
  MaterialLotId,
  MotherId,
  OrderId,
  StepId,
} from '../../../trade/index.ts'
import { shownUnit, type Units } from '../../text/shown-unit.ts'

/** Where finished plants stand. */
const FINISHED = 'finished' as StepId

/** What is said of a batch so often, besides a count, that it has a button of its own. */
export const NEAR_DEEDS = ['advance', 'lost'] as const
/** What else can be said of it. */
export const MORE_DEEDS = [
  'move',
  'pot',
  'measure',
  'grade',
  'split',
  'join',
  'rework',
  'send',
  'back',
  'settle',
  'note',
  'hold',
] as const
export type DeedKind = (typeof NEAR_DEEDS)[number] | (typeof MORE_DEEDS)[number]

/** A deed as it is being typed: text, empty where nothing was said. */
export interface DeedDraft {
  readonly step: StepId | null
  readonly number: string
  readonly bench: string
  readonly words: string
  /** Of the new batch that is split off. */
  readonly name: string
  readonly into: BatchId | null
  readonly litres: string
  readonly calipers: string
  readonly grades: readonly { readonly grade: string; readonly number: string }[]
  readonly order: string
  readonly kind: string | null
  readonly wood: Wood | null
  readonly sticks: string
  readonly cultivar: string
}

/** Where the wood of a rework is from. */
export type Wood =
  | { readonly from: 'mother'; readonly mother: MotherId; readonly material: Material }
  | { readonly from: 'lot'; readonly lot: MaterialLotId }

export type Field =
  | 'step'
  | 'number'
  | 'bench'
  | 'words'
  | 'name'
  | 'into'
  | 'litres'
  | 'calipers'
  | 'grades'
  | 'order'
  | 'wood'
  | 'cultivar'

/** What a field of a form is given. */
export interface Asks {
  readonly view: BatchView
  readonly deed: DeedKind
  readonly draft: DeedDraft
  readonly onChange: (change: Partial<DeedDraft>) => void
}

/** What a deed asks, in the order in which it asks. */
export const ASKS: Readonly<Record<DeedKind, readonly Field[]>> = {
  advance: ['step', 'number', 'bench'],
  lost: ['step', 'number', 'words'],
  move: ['step', 'number', 'bench'],
  pot: ['step', 'number', 'litres'],
  measure: ['step', 'calipers'],
  grade: ['step', 'grades'],
  split: ['step', 'number', 'name', 'words'],
  join: ['step', 'number', 'into'],
  rework: ['step', 'number', 'wood'],
  send: ['number', 'order', 'words'],
  back: ['number', 'order', 'words'],
  settle: ['cultivar', 'words'],
  note: ['words'],
  hold: ['words'],
}

/** May be left empty. */
const FREE: Readonly<Partial<Record<DeedKind, readonly Field[]>>> = {
  advance: ['bench'],
  split: ['words'],
  send: ['order', 'words'],
  back: ['order'],
}

const wholeFromOne = (text: string): number | null => {
  const number = Number(text)
  return text.trim() !== '' && Number.isInteger(number) && number >= 1 ? number : null
}

const aboveNought = (text: string): number | null => {
  const number = Number(text.trim().replace(',', '.'))
  return text.trim() !== '' && number > 0 && Number.isFinite(number) ? number : null
}

const metric = (value: number, unit: string, units: Units): number =>
  units === 'metric' ? value : Number(shownUnit(unit, units).from(value).toPrecision(8))

/** Stems as typed, parted by spaces, semicolons or new lines; the decimal sign may be a comma. Null where one is no size. */
export const readCalipers = (text: string): readonly number[] | null => {
  const parted = text.includes('.') ? text.replaceAll(',', ' ') : text
  const stems = parted.split(/[\s;]+/).filter(Boolean)
  const sizes = stems.map(stem => aboveNought(stem.replace(/,$/, '')))
  return sizes.length > 0 && sizes.every(size => size !== null) ? sizes : null
}

/** Grades with their numbers; lines without either are left out. Null where one of the two lacks. */
export const readGrades = (lines: DeedDraft['grades']): Readonly<Record<string, number>> | null => {
  const grades: Record<string, number> = {}
  for (const { grade, number } of lines) {
    if (number.trim() === '') continue
    const said = Number(number)
    const name = grade.trim()
    if (name === '' || name in grades || !Number.isInteger(said) || said < 0) return null
    grades[name] = said
  }
  return Object.keys(grades).length > 0 ? grades : null
}

/**
 * The entries that a deed makes, or null while something is missing. `newBatch` names what is split off; sizes are typed
 * in the reader's units.
 */
export const bodiesOfDeed = (
  view: BatchView,
  deed: DeedKind,
  draft: DeedDraft,
  newBatch: () => BatchId,
  units: Units = 'metric',
): readonly Body[] | null => {
  const { id: batch } = view.row
  const asks = ASKS[deed].filter(field => !FREE[deed]?.includes(field))
  const words = draft.words.trim()
  const number = wholeFromOne(draft.number)
  const { step } = draft
  const bench = draft.bench === '' ? null : (draft.bench as BenchId)
  if (asks.includes('number') && number === null) return null
  if (asks.includes('step') && step === null) return null
  if (asks.includes('bench') && bench === null) return null
  if (asks.includes('words') && words === '') return null
  const some = { batch, step: step!, number: number! }
  const order = draft.order === '' ? null : (draft.order as OrderId)
  switch (deed) {
    case 'advance': {
      const next = view.steps[view.steps.findIndex(one => one.step === step) + 1]
      return next === undefined
        ? [{ kind: 'finished/1', batch, number: number!, grade: words }]
        : [{ kind: 'advanced/1', batch, from: step!, to: next.step, number: number!, bench }]
    }
    case 'lost':
      return [{ kind: 'lost/1', ...some, cause: words }]
    case 'move':
      return [{ kind: 'moved/1', ...some, to: bench! }]
    case 'pot': {
      const potLitres = aboveNought(draft.litres)
      return potLitres === null
        ? null
        : [{ kind: 'potted-on/1', ...some, potLitres: metric(potLitres, 'litres', units) }]
    }
    case 'measure': {
      const calipersMm = readCalipers(draft.calipers)?.map(size => metric(size, 'mm', units))
      return calipersMm === undefined ? null : [{ kind: 'measured/1', batch, step: step!, calipersMm }]
    }
    case 'grade': {
      const grades = readGrades(draft.grades)
      return grades === null ? null : [{ kind: 'graded/1', batch, step: step!, grades }]
    }
    case 'split': {
      const name = draft.name.trim()
      return name === '' ? null : [{ kind: 'split/1', ...some, into: newBatch(), name, why: words }]
    }
    case 'join':
      return draft.into === null || draft.into === batch
        ? null
        : [{ kind: 'joined/1', ...some, into: draft.into }]
    case 'rework':
      return rework(view, draft, some, newBatch)
    case 'send':
      return [{ kind: 'dispatched/1', batch, order, number: number!, to: order === null ? words : '' }]
    case 'back':
      return [{ kind: 'returned/1', batch, order, number: number!, why: words }]
    case 'settle':
      return draft.cultivar === ''
        ? null
        : [{ kind: 'name-settled/1', batch, cultivar: draft.cultivar as CultivarId, how: words }]
    case 'note':
      return [{ kind: 'noted/1', about: batch, text: words }]
    case 'hold':
      return [{ kind: 'hold-placed/1', on: { what: 'batch', batch }, why: words }]
  }
}

/** Whether only a part of the living plants is worked over: that part is split off, so that each keeps its right name. */
export const isPart = ({ row }: Pick<BatchView, 'row'>, number: string): boolean =>
  Number(number) < row.standing + row.finished

const rework = (
  view: BatchView,
  { kind, wood, sticks, name }: DeedDraft,
  some: { readonly batch: BatchId; readonly step: StepId; readonly number: number },
  newBatch: () => BatchId,
): readonly Body[] | null => {
  const given = aboveNought(sticks)
  if (kind === null || (wood !== null && given === null)) return null
  const sources: Source[] = wood === null ? [] : [{ ...wood, number: given! }]
  const kindOfTree = kind as KindId
  if (!isPart(view, String(some.number))) return [{ kind: 'reworked/1', ...some, kindOfTree, sources }]
  if (name.trim() === '') return null
  const into = newBatch()
  return [
    { kind: 'split/1', ...some, into, name: name.trim(), why: '' },
    { kind: 'reworked/1', ...some, batch: into, kindOfTree, sources },
  ]
}

/** Living plants of a batch by step, the finished last; only the former can go on. */
export const standingBySteps = (
  { steps, portions, row }: Pick<BatchView, 'steps' | 'portions' | 'row'>,
  deed: DeedKind,
): readonly { readonly step: StepId; readonly name: string | null; readonly number: number }[] => {
  const standing = steps.map(({ step, name }) => ({
    step,
    name,
    number: portions.reduce((sum, portion) => sum + (portion.step === step ? portion.number : 0), 0),
  }))
  const finished = { step: FINISHED, name: null, number: deed === 'advance' ? 0 : row.finished }
  return [...standing, finished].filter(({ number }) => number > 0)
}

/** What can be said of a batch as it stands. */
export const possible = ({ row, sent, candidates }: BatchView, deed: DeedKind): boolean => {
  if (deed === 'note' || deed === 'hold') return true
  if (deed === 'send') return row.finished > 0
  if (deed === 'back') return sent.length > 0
  if (deed === 'settle') return candidates.length > 0
  return row.standing + row.finished > 0
}

/** Becoming fit to leave, and leaving, is what a hold forbids; all else may be said. */
export const isStopped = (view: BatchView, deed: DeedKind, step: StepId | null): boolean =>
  view.row.onHold && (deed === 'send' || (deed === 'advance' && view.steps.at(-1)?.step === step))

/** A name for what is split off: the batch's own with the first letter that no batch has. */
export const nameForPart = (name: string, taken: ReadonlySet<string>): string => {
  for (const letter of 'abcdefghijklmnopqrstuvwxyz')
    if (!taken.has(`${name}${letter}`)) return `${name}${letter}`
  return ''
}
