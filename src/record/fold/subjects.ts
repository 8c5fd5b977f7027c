import type { Body, BodyOf, Held, Source } from '../entry.ts'

/** What an entry speaks of. Each subject is folded from its own entries alone. */
export type SubjectType = 'batch' | 'mother' | 'lot' | 'order' | 'register' | 'hold' | 'query' | 'note'

type Visit = (type: SubjectType, id: string) => void
type Visitors = { readonly [K in Body['kind']]?: (body: BodyOf<K>, visit: Visit) => void }

const ofBatch = ({ batch }: { readonly batch: string }, visit: Visit): void => visit('batch', batch)
const ofMother = ({ mother }: { readonly mother: string }, visit: Visit): void => visit('mother', mother)
const hold = (_: Body, visit: Visit): void => visit('hold', '')

const ofOrder = ({ order }: BodyOf<'order-placed/1'> | BodyOf<'order-changed/1'>, visit: Visit): void => {
  visit('register', `order ${order.id}`)
  visit('order', order.id)
}

const ofBatchAndOrder = (
  { batch, order }: BodyOf<'dispatched/1'> | BodyOf<'returned/1'>,
  visit: Visit,
): void => {
  visit('batch', batch)
  if (order !== null) visit('order', order)
}

const ofTwoBatches = ({ batch, into }: BodyOf<'split/1'> | BodyOf<'joined/1'>, visit: Visit): void => {
  visit('batch', batch)
  if (into !== batch) visit('batch', into)
}

const ofNote = ({ about }: BodyOf<'noted/1'> | BodyOf<'photographed/1'>, visit: Visit): void =>
  visit('note', about)

const ofBenchAndBatches = ({ bench, lines }: BodyOf<'bench-counted/1'>, visit: Visit): void => {
  visit('register', `bench-count ${bench}`)
  for (const batch of new Set(lines.map(line => line.batch))) visit('batch', batch)
}

const ofBatchAndSources = (
  { batch, sources }: BodyOf<'batch-started/1'> | BodyOf<'reworked/1'>,
  visit: Visit,
): void => {
  visit('batch', batch)
  for (const [i, source] of sources.entries()) {
    const id = sourceId(source)
    if (source.from === 'bought' || id === batch) continue
    if (sources.findIndex(other => other.from === source.from && sourceId(other) === id) === i)
      visit(source.from, id)
  }
}

/** Of a kind by a protocol, one start a week is set. */
export const startKey = ({ kindOfTree, protocol, week }: BodyOf<'start-set/1'>): string =>
  JSON.stringify([kindOfTree, protocol, week])

/**
 * Names every subject of an entry, each once. A register key is of things that are said anew rather than added
 * to: the last word counts.
 */
const visitors: Visitors = {
  'site-set/1': (_, visit) => visit('register', 'site'),
  'prices-set/1': (_, visit) => visit('register', 'prices'),
  'settings-set/1': (_, visit) => visit('register', 'settings'),
  'bench-set/1': ({ bench }, visit) => visit('register', `bench ${bench.id}`),
  'bench-removed/1': ({ bench }, visit) => visit('register', `bench ${bench}`),
  'person-set/1': ({ person }, visit) => visit('register', `person ${person.id}`),
  'person-left/1': ({ person }, visit) => visit('register', `person ${person}`),
  'cultivar-set/1': ({ cultivar }, visit) => visit('register', `cultivar ${cultivar.id}`),
  'kind-set/1': ({ kindOfTree }, visit) => visit('register', `kind ${kindOfTree.id}`),
  'kind-dropped/1': ({ kindOfTree }, visit) => visit('register', `kind ${kindOfTree}`),
  'protocol-set/1': ({ protocol }, visit) => visit('register', `protocol ${protocol.id}`),
  'rate-set/1': ({ protocol, step, kindOfTree }, visit) =>
    visit('register', `rate ${JSON.stringify([protocol, step, kindOfTree])}`),
  'species-set/1': ({ species }, visit) => visit('register', `species ${species.id}`),
  'fact-set/1': ({ species, set }, visit) => visit('register', `fact ${JSON.stringify([species, set.fact])}`),
  'start-set/1': (body, visit) => visit('register', `start ${startKey(body)}`),
  'plan-accepted/1': (_, visit) => visit('register', 'plan'),
  'task-done/1': ({ task }, visit) => visit('register', `task ${task}`),
  'task-done/2': ({ task }, visit) => visit('register', `task ${task}`),

  'mother-set/1': ({ mother }, visit) => {
    visit('register', `mother ${mother.id}`)
    visit('mother', mother.id)
  },
  'mother-observed/1': ofMother,
  'mother-tested/1': ofMother,
  'mother-retired/1': ofMother,
  'material-collected/1': ({ lot, mother }, visit) => {
    visit('register', `lot ${lot}`)
    visit('mother', mother)
    visit('lot', lot)
  },
  'material-discarded/1': ({ lot }, visit) => visit('lot', lot),

  'batch-started/1': ofBatchAndSources,
  'counted/1': ofBatch,
  'bench-counted/1': ofBenchAndBatches,
  'lost/1': ofBatch,
  'advanced/1': ofBatch,
  'finished/1': ofBatch,
  'moved/1': ofBatch,
  'split/1': ofTwoBatches,
  'joined/1': ofTwoBatches,
  'measured/1': ofBatch,
  'graded/1': ofBatch,
  'potted-on/1': ofBatch,
  'reworked/1': ofBatchAndSources,
  'name-settled/1': ofBatch,
  'dispatched/1': ofBatchAndOrder,
  'returned/1': ofBatchAndOrder,

  'order-placed/1': ofOrder,
  'order-changed/1': ofOrder,
  'order-cancelled/1': ({ order }, visit) => visit('order', order),
  'hold-placed/1': hold,
  'hold-released/1': hold,
  'noted/1': ofNote,
  'photographed/1': ofNote,
  'query-settled/1': ({ query }, visit) => visit('query', query),
}

export function visitSubjects(body: Body, visit: Visit): void {
  const visitor = visitors[body.kind] as ((body: Body, visit: Visit) => void) | undefined
  visitor?.(body, visit)
}

/** The mother, lot or batch of a source; the supplier of what was bought. */
export function sourceId(source: Source): string {
  switch (source.from) {
    case 'mother':
      return source.mother
    case 'lot':
      return source.lot
    case 'batch':
      return source.batch
    case 'bought':
      return source.supplier
  }
}

/** The mother or batch at the root of a hold, or the bench. */
export function heldId(held: Held): string {
  switch (held.what) {
    case 'mother':
      return held.mother
    case 'batch':
      return held.batch
    case 'bench':
      return held.bench
    case 'lineage':
      return 'mother' in held.of ? held.of.mother : held.of.batch
  }
}
