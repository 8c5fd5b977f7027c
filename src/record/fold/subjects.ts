import type { Body, Held } from '../entry.ts'

/** What an entry speaks of. Each subject is folded from its own entries alone. */
export type SubjectType = 'batch' | 'mother' | 'lot' | 'order' | 'register' | 'hold' | 'query'

type Visit = (type: SubjectType, id: string) => void

/** The register key of things that are said anew rather than added to: the last word counts. */
export const registerKey = (body: Body): string | null => {
  switch (body.kind) {
    case 'site-set/1':
      return 'site'
    case 'prices-set/1':
      return 'prices'
    case 'settings-set/1':
      return 'settings'
    case 'bench-set/1':
      return `bench ${body.bench.id}`
    case 'bench-removed/1':
      return `bench ${body.bench}`
    case 'person-set/1':
      return `person ${body.person.id}`
    case 'person-left/1':
      return `person ${body.person}`
    case 'cultivar-set/1':
      return `cultivar ${body.cultivar.id}`
    case 'kind-set/1':
      return `kind ${body.kindOfTree.id}`
    case 'kind-dropped/1':
      return `kind ${body.kindOfTree}`
    case 'protocol-set/1':
      return `protocol ${body.protocol.id}`
    case 'rate-set/1':
      return `rate ${JSON.stringify([body.protocol, body.step, body.kindOfTree])}`
    case 'plan-accepted/1':
      return 'plan'
    case 'task-done/1':
      return `task ${body.task}`
    case 'mother-set/1':
      return `mother ${body.mother.id}`
    case 'order-placed/1':
    case 'order-changed/1':
      return `order ${body.order.id}`
    case 'material-collected/1':
      return `lot ${body.lot}`
    default:
      return null
  }
}

/** Names every subject of an entry, each once. */
export function visitSubjects(body: Body, visit: Visit): void {
  const key = registerKey(body)
  if (key !== null) visit('register', key)
  switch (body.kind) {
    case 'mother-set/1':
      visit('mother', body.mother.id)
      return
    case 'mother-observed/1':
    case 'mother-tested/1':
    case 'mother-retired/1':
      visit('mother', body.mother)
      return
    case 'material-collected/1':
      visit('mother', body.mother)
      visit('lot', body.lot)
      return
    case 'material-discarded/1':
      visit('lot', body.lot)
      return
    case 'batch-started/1':
    case 'reworked/1': {
      visit('batch', body.batch)
      const seen = new Set<string>([`batch ${body.batch}`])
      for (const source of body.sources) {
        if (source.from === 'bought') continue
        const id =
          source.from === 'mother' ? source.mother : source.from === 'lot' ? source.lot : source.batch
        const subject = `${source.from} ${id}`
        if (seen.has(subject)) continue
        seen.add(subject)
        visit(source.from, id)
      }
      return
    }
    case 'split/1':
    case 'joined/1':
      visit('batch', body.batch)
      if (body.into !== body.batch) visit('batch', body.into)
      return
    case 'dispatched/1':
    case 'returned/1':
      visit('batch', body.batch)
      if (body.order !== null) visit('order', body.order)
      return
    case 'counted/1':
    case 'lost/1':
    case 'advanced/1':
    case 'finished/1':
    case 'moved/1':
    case 'measured/1':
    case 'graded/1':
    case 'potted-on/1':
    case 'name-settled/1':
      visit('batch', body.batch)
      return
    case 'order-placed/1':
    case 'order-changed/1':
      visit('order', body.order.id)
      return
    case 'order-cancelled/1':
      visit('order', body.order)
      return
    case 'hold-placed/1':
    case 'hold-released/1':
      visit('hold', '')
      return
    case 'query-settled/1':
      visit('query', body.query)
      return
    default:
      return
  }
}

/** The mother or batch at the root of a hold, or the bench. */
export const heldId = (held: Held): string =>
  held.what === 'mother'
    ? held.mother
    : held.what === 'batch'
      ? held.batch
      : held.what === 'bench'
        ? held.bench
        : 'mother' in held.of
          ? held.of.mother
          : held.of.batch
