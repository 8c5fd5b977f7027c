import type { AffectedView } from '../../api/index.ts'
import { writeCsvForSpreadsheets } from '../../exchange/index.ts'
import { identityOf, identityPhrase, lineageOf, type Nursery } from '../../record/index.ts'
import { type BatchId, type BenchId, inEnglish, type PersonId } from '../../trade/index.ts'
import { named } from './named.ts'

type Cells = readonly (string | number | boolean | null)[]

/** The family as one table, a line for each passing of wood, roots, seed or plants: for the plant-health authority. */
const familyRows = (nursery: Nursery, { of, carriers }: AffectedView): Cells[] => {
  const lineage = lineageOf(nursery)
  const carrier = new Map(carriers.map(one => [one.batch as string, one]))
  const line =
    (way: string) =>
    (link: ReturnType<typeof lineage.descendants>['links'][number]): Cells => {
      const from = named(nursery, link.from)
      const to = named(nursery, link.to)
      const batch = link.to.what === 'batch' ? nursery.batches.get(link.to.id as BatchId) : undefined
      const carries = way === 'came of it' ? carrier.get(link.to.id) : undefined
      return [
        way,
        link.on,
        link.from.what,
        from.name,
        from.detail,
        link.number,
        link.as,
        link.to.what,
        to.name,
        to.detail,
        batch === undefined ? '' : inEnglish(identityPhrase(identityOf(nursery, batch.id), nursery)),
        carries?.alive ?? null,
        carries === undefined ? '' : carries.benches.map(id => benchName(nursery, id)).join('; '),
        carries?.sent ?? null,
        carries === undefined ? '' : carries.onHold ? 'yes' : 'no',
      ]
    }
  return [
    [
      'way',
      'day',
      'from',
      'from name',
      'from kind',
      'number',
      'as',
      'to',
      'to name',
      'to kind',
      'identity',
      'alive',
      'benches',
      'sent out',
      'on hold',
    ],
    ...lineage.ancestors(of).links.map(line('it came from')),
    ...lineage.descendants(of).links.map(line('came of it')),
  ]
}

const benchName = (nursery: Nursery, id: BenchId): string =>
  (nursery.benches.get(id) ?? nursery.former.benches.get(id))?.name ?? id
const personName = (nursery: Nursery, id: PersonId): string =>
  (nursery.people.get(id) ?? nursery.former.people.get(id))?.name ?? id

const tables: Readonly<Record<string, (nursery: Nursery, view: AffectedView) => Cells[]>> = {
  'family.csv': familyRows,
  'carriers.csv': (nursery, { carriers }) => [
    ['batch', 'kind', 'generations', 'came', 'since', 'alive', 'finished', 'sent out', 'benches', 'on hold'],
    ...carriers.map(one => [
      one.name,
      one.kindName,
      one.generation,
      one.came,
      one.since,
      one.alive,
      one.finished,
      one.sent,
      one.benches.map(id => benchName(nursery, id)).join('; '),
      one.onHold ? 'yes' : 'no',
    ]),
  ],
  'letters.csv': (_, { letters }) => [
    [
      'buyer',
      'order',
      'trees',
      'ordered',
      'due',
      'sent out',
      'last sent',
      'promised by the plan',
      'planned with its wood',
      'waits for held trees',
      'batches',
    ],
    ...letters.map(one => [
      one.buyer,
      one.order,
      one.kindNames.join('; '),
      one.wanted,
      one.due,
      one.sent,
      one.lastSent,
      one.promised,
      one.planned,
      one.isWaiting ? 'yes' : 'no',
      one.batches.join('; '),
    ]),
  ],
  'nearby.csv': (nursery, { sharedBenches, sharedBlades }) => [
    ['shared', 'what', 'name', 'where or who', 'from', 'to'],
    ...sharedBenches.map(one => [
      'bench',
      'batch',
      one.name,
      benchName(nursery, one.bench),
      one.from,
      one.to,
    ]),
    ...sharedBlades.map(one => [
      'blade and day',
      one.what,
      one.name,
      personName(nursery, one.person),
      one.on,
      one.on,
    ]),
  ],
}

export const familyTable = (nursery: Nursery, view: AffectedView, table: string): string =>
  writeCsvForSpreadsheets(tables[table]!(nursery, view))
