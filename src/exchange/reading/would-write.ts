import type { Body } from '../../record/index.ts'
import type { NurseryReading } from './reading.ts'

const words: Partial<Readonly<Record<Body['kind'], readonly [one: string, many: string]>>> = {
  'site-set/1': ['place of the nursery', 'places of the nursery'],
  'bench-set/1': ['bench', 'benches'],
  'person-set/1': ['person', 'people'],
  'cultivar-set/1': ['cultivar', 'cultivars'],
  'kind-set/1': ['kind of tree', 'kinds of tree'],
  'protocol-set/1': ['protocol', 'protocols'],
  'mother-set/1': ['mother tree', 'mother trees'],
  'batch-started/1': ['batch begun', 'batches begun'],
  'counted/1': ['count', 'counts'],
  'lost/1': ['loss', 'losses'],
  'advanced/1': ['step on', 'steps on'],
  'finished/1': ['batch finished', 'batches finished'],
  'dispatched/1': ['dispatch of the past', 'dispatches of the past'],
  'order-placed/1': ['order placed', 'orders placed'],
  'order-changed/1': ['order changed', 'orders changed'],
}

const SHOWN = 20

/** How many entries of each kind would be written, and the first of them in words. */
export function wouldWrite(
  told: readonly { readonly body: Body }[],
  inWords: (body: Body) => string,
): NurseryReading['would'] {
  const byKind = new Map<Body['kind'], Body[]>()
  for (const { body } of told) {
    const list = byKind.get(body.kind)
    if (list) list.push(body)
    else byKind.set(body.kind, [body])
  }
  return [...byKind].map(([kind, bodies]) => {
    const [one, many] = words[kind] ?? [kind, kind]
    const number = bodies.length
    return {
      kind,
      number,
      says: `${number} ${number === 1 ? one : many}`,
      first: bodies.slice(0, SHOWN).map(inWords),
    }
  })
}
