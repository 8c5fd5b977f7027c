import { dayNumber, dayText } from '../science/index.ts'
import { BatchId, BenchId, EntryId, KindId, MotherId, OrderId, ProtocolId, StepId } from '../trade/index.ts'
import type { AnyEntry, Body, Entry, Source } from './entry.ts'
import { sortEntries } from './entry-order.ts'

/**
 * A short way to write what happened to batches, used in docs, in the names of tests and where one fails:
 *
 *     B7[120]            batch B7 began with 120
 *     B9[30 on B7]       … on 30 rootstocks of B7
 *     B8[50 of M1]       … from 50 cuttings of mother tree M1
 *     B9:                what follows is of batch B9
 *     -14†               14 died
 *     ✓80†15?5           a count: 80 taken, 15 dead, 5 not yet to tell
 *     »80                80 went on to the next step
 *     »80:weaning        80 went on to the step "weaning"
 *     ■40                40 were finished
 *     -30→B9             30 were split off into the new batch B9
 *     -30⇢B9             30 were put with batch B9
 *     @3:mist-2          3 were moved to bench mist-2
 *     -12✉O3   +2✉O3     12 went out for order O3; 2 came back
 *     ~                  the entry before was struck
 *
 * So `B7[120] -14† -30→B9` reads: batch 7 began with 120, lost 14, and 30 went to batch 9.
 */
export type History = string

const dayAfter = (days: number): string => dayText(dayNumber('2026-01-01') + days)

const exampleSteps = ['mist', 'weaning', 'growing on'].map(step => StepId.parse(step))
const [firstStep] = exampleSteps
const kindOfTree = KindId.parse('tree')
const protocol = ProtocolId.parse('cuttings')

/** The batch that is told of, and the step in which the plants of each batch are. */
interface Telling {
  batch: BatchId
  readonly stepOf: Map<BatchId, StepId>
  readonly last: EntryId | null
}

const stepIn = (telling: Telling): StepId => telling.stepOf.get(telling.batch) ?? firstStep!

type Reader = readonly [sign: RegExp, read: (found: readonly string[], telling: Telling) => Body | null]

const readers: readonly Reader[] = [
  [
    /^(\w+):$/,
    ([, name], telling) => {
      telling.batch = BatchId.parse(name)
      return null
    },
  ],
  [
    /^(\w+)\[(\d+)(?: on (\w+))?(?: of (\w+))?\]$/,
    ([, name, number, rootstock, mother], telling) => {
      telling.batch = BatchId.parse(name)
      return startOf(telling.batch, Number(number), rootstock, mother)
    },
  ],
  [
    /^✓(\d+)†(\d+)\?(\d+)$/,
    (found, telling) => {
      const [taken, dead, undecided] = found.slice(1).map(Number) as [number, number, number]
      const { batch } = telling
      return { kind: 'counted/1', batch, step: stepIn(telling), sign: 'rooted', taken, dead, undecided }
    },
  ],
  [
    /^-(\d+)†$/,
    ([, number], telling) => {
      const { batch } = telling
      return { kind: 'lost/1', batch, step: stepIn(telling), number: Number(number), cause: 'rot' }
    },
  ],
  [
    /^»(\d+)(?::([\w-]+))?$/,
    ([, number, named], telling) => {
      const from = stepIn(telling)
      const to = named ? StepId.parse(named) : (exampleSteps[exampleSteps.indexOf(from) + 1] ?? from)
      telling.stepOf.set(telling.batch, to)
      return { kind: 'advanced/1', batch: telling.batch, from, to, number: Number(number), bench: null }
    },
  ],
  [/^■(\d+)$/, ([, number], { batch }) => ({ kind: 'finished/1', batch, number: Number(number), grade: '' })],
  [
    /^-(\d+)([→⇢])(\w+)$/,
    ([, number, arrow, name], telling) => {
      const into = BatchId.parse(name)
      const step = stepIn(telling)
      if (!telling.stepOf.has(into)) telling.stepOf.set(into, step)
      const body = { batch: telling.batch, step, number: Number(number), into }
      return arrow === '→' ? { kind: 'split/1', ...body, name: into, why: '' } : { kind: 'joined/1', ...body }
    },
  ],
  [
    /^@(\d+):([\w-]+)$/,
    ([, number, bench], telling) => {
      const { batch } = telling
      return {
        kind: 'moved/1',
        batch,
        step: stepIn(telling),
        number: Number(number),
        to: BenchId.parse(bench),
      }
    },
  ],
  [
    /^([-+])(\d+)✉(\w+)$/,
    ([, way, number, name], { batch }) => {
      const body = { batch, order: OrderId.parse(name), number: Number(number) }
      return way === '-'
        ? { kind: 'dispatched/1', ...body, to: '' }
        : { kind: 'returned/1', ...body, why: '' }
    },
  ],
  [/^~$/, (_, { last }) => last && { kind: 'struck/1', entry: last, why: 'wrong' }],
]

/**
 * Reads a history, one entry a day from 2026-01-01. Its batches are of the kind "tree" by the protocol
 * "cuttings" with the steps mist, weaning and growing on. Throws on a sign that it does not know.
 */
export function readHistory(history: History): Entry[] {
  const entries: Entry[] = []
  const telling = {
    batch: BatchId.parse('?'),
    stepOf: new Map<BatchId, StepId>(),
    last: null as EntryId | null,
  }
  for (const sign of history.match(/\w+\[[^\]]*\]|\S+/g) ?? []) {
    const reader = readers.find(([form]) => form.test(sign))
    if (!reader) throw new RangeError(`readHistory: no history is written with "${sign}"`)
    const body = reader[1](reader[0].exec(sign)!, telling)
    if (!body) continue
    const id = EntryId.parse(`019b0000-0000-7000-8000-${String(entries.length + 1).padStart(12, '0')}`)
    entries.push({ id, on: dayAfter(entries.length), at: null, by: null, device: 'example', body })
    telling.last = id
  }
  return entries
}

function startOf(
  batch: BatchId,
  number: number,
  rootstock: string | undefined,
  mother: string | undefined,
): Body {
  const sources: Source[] = []
  if (rootstock) sources.push({ from: 'batch', batch: BatchId.parse(rootstock), as: 'rootstock', number })
  if (mother) sources.push({ from: 'mother', mother: MotherId.parse(mother), material: 'cuttings', number })
  const rest = { bench: null, workedBy: [], candidates: [] }
  return { kind: 'batch-started/1', batch, name: batch, kindOfTree, protocol, number, sources, ...rest }
}

/** Writes the history of the batches in the entries, in the order in which they count, a batch a line. */
export function historyText(entries: Iterable<AnyEntry>): History {
  const lines = new Map<string, string[]>()
  const signs = new Map<string, string[]>()
  for (const entry of sortEntries([...entries])) {
    const body = entry.body as Body
    if (body.kind === 'struck/1') {
      const line = signs.get(body.entry)
      if (line) line[line.length - 1] += ' ~'
      continue
    }
    const sign = 'batch' in body ? signOf(body) : null
    if (sign === null || !('batch' in body)) continue
    const line = lines.get(body.batch) ?? []
    if (line.length === 0 && body.kind !== 'batch-started/1') line.push(`${body.batch}:`)
    line.push(sign)
    lines.set(body.batch, line)
    signs.set(entry.id, line)
  }
  return [...lines.values()].map(line => line.join(' ')).join('\n')
}

function signOf(body: Extract<Body, { readonly batch: BatchId }>): string | null {
  switch (body.kind) {
    case 'batch-started/1': {
      const from = body.sources.map(source => {
        if (source.from === 'batch')
          return ` ${source.as === 'rootstock' ? 'on' : `with ${source.as}`} ${source.batch}`
        return ` of ${source.from === 'mother' ? source.mother : source.from === 'lot' ? source.lot : source.supplier}`
      })
      return `${body.batch}[${body.number}${from.join('')}]`
    }
    case 'counted/1':
      return `✓${body.taken}†${body.dead}?${body.undecided}`
    case 'lost/1':
      return `-${body.number}†`
    case 'advanced/1':
      return `»${body.number}:${body.to}`
    case 'finished/1':
      return `■${body.number}`
    case 'split/1':
      return `-${body.number}→${body.into}`
    case 'joined/1':
      return `-${body.number}⇢${body.into}`
    case 'moved/1':
      return `@${body.number}:${body.to}`
    case 'dispatched/1':
      return `-${body.number}✉${body.order ?? ''}`
    case 'returned/1':
      return `+${body.number}✉${body.order ?? ''}`
    default:
      return null
  }
}
