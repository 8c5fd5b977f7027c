import { aliveIn, type Nursery } from '../../record/index.ts'
import { spansText } from '../cells/spans.ts'
import { suppliesText } from '../cells/supplies.ts'
import type { Written } from '../table/write-table.ts'

export type FieldType = 'string' | 'integer' | 'number' | 'date'

export interface PackageTable {
  readonly name: string
  readonly says: string
  readonly fields: readonly { readonly name: string; readonly type: FieldType; readonly says: string }[]
  readonly key: readonly string[]
  readonly refers: readonly { readonly field: string; readonly table: string; readonly to: string }[]
  readonly rows: readonly (readonly Written[])[]
}

type Column<T> = readonly [name: string, type: FieldType, says: string, value: (thing: T) => Written]

const table = <T>(
  name: string,
  says: string,
  things: Iterable<T>,
  key: readonly string[],
  columns: readonly Column<T>[],
  refers: Readonly<Record<string, string>> = {},
): PackageTable => ({
  name,
  says,
  key,
  fields: columns.map(([field, type, meaning]) => ({ name: field, type, says: meaning })),
  refers: Object.entries(refers).map(([field, to]) => ({ field, table: to, to: 'id' })),
  rows: [...things].map(thing => columns.map(([, , , value]) => value(thing))),
})

const list = (items: readonly string[]): string => items.join('; ')

/** What the nursery holds now, as plain tables: for other programs to read. The entries are the record itself. */
export function tablesOf(nursery: Nursery): readonly PackageTable[] {
  const stands = [...nursery.batches.values()].flatMap(batch => [
    ...batch.portions.map(portion => ({ batch, ...portion, step: String(portion.step) })),
    ...batch.finishedPortions.map(portion => ({ batch, ...portion, step: 'finished' })),
  ])
  return [
    table(
      'benches',
      'Places that hold plants',
      nursery.benches.values(),
      ['id'],
      [
        ['id', 'string', 'name by which others refer to it', bench => bench.id],
        ['name', 'string', 'as people call it', bench => bench.name],
        ['place', 'string', 'kind of place', bench => bench.place],
        ['area_square_metres', 'number', 'net of paths', bench => bench.areaSquareMetres],
        ['length_metres', 'number', 'length', bench => bench.lengthMetres],
        ['width_metres', 'number', 'width', bench => bench.widthMetres],
        [
          'closed_days',
          'string',
          'first to last day, how much of it where not all, and why; parted by semicolons',
          ({ areaSquareMetres: all, closed }) =>
            spansText(
              closed.map(({ areaSquareMetres: part, ...span }) => ({
                ...span,
                squareMetres: part === all ? null : part,
              })),
            ),
        ],
      ],
    ),
    table(
      'people',
      'Who works, and what each can do',
      nursery.people.values(),
      ['id'],
      [
        ['id', 'string', 'name by which others refer to them', person => person.id],
        ['name', 'string', 'as people call them', person => person.name],
        ['skills', 'string', 'parted by semicolons', person => list(person.skills)],
        ['hours_per_week', 'number', 'usual hours', person => person.hoursPerWeek],
        ['overtime_hours_per_week', 'number', 'at most', person => person.overtimeHoursPerWeek],
        ['pace', 'number', '1 is the protocol’s own', person => person.pace],
        [
          'days_away',
          'string',
          'first to last day; parted by semicolons',
          ({ away }) => spansText(away.map(span => ({ ...span, squareMetres: null, why: '' }))),
        ],
      ],
    ),
    table(
      'cultivars',
      'Cultivars',
      nursery.cultivars.values(),
      ['id'],
      [
        ['id', 'string', 'name by which others refer to it', cultivar => cultivar.id],
        ['name', 'string', 'epithet without quotation marks', cultivar => cultivar.name],
        ['species', 'string', 'fruit', cultivar => cultivar.species],
        ['synonyms', 'string', 'parted by semicolons', cultivar => list(cultivar.synonyms)],
        ['licence_owner', 'string', 'of a protected cultivar', cultivar => cultivar.licence?.owner ?? null],
        [
          'licence_trees_per_year',
          'integer',
          'trees allowed',
          cultivar => cultivar.licence?.treesPerYear ?? null,
        ],
        ['licence_fee', 'number', 'for each tree', cultivar => cultivar.licence?.feePerTree ?? null],
        ['licence_until', 'date', 'last day', cultivar => cultivar.licence?.until ?? null],
      ],
    ),
    table(
      'kinds',
      'Kinds of tree and of rootstock',
      nursery.kinds.values(),
      ['id'],
      [
        ['id', 'string', 'name by which others refer to it', kind => kind.id],
        ['name', 'string', 'as the trade calls it', kind => kind.name],
        ['species', 'string', 'fruit', kind => kind.species],
        ['cultivars', 'string', 'ids, parted by semicolons', kind => list(kind.cultivars)],
        ['form', 'string', 'how it stands on its roots', kind => kind.form],
        ['rootstock', 'string', 'kind that it is worked on', kind => kind.rootstock],
        ['interstem', 'string', 'cultivar between stock and scion', kind => kind.interstem],
        ['size', 'string', 'as it is sold', kind => kind.size],
        ['price', 'number', 'in the nursery’s unit of money', kind => kind.price],
        ['holding_cost_per_week', 'number', 'to keep one another week', kind => kind.holdingCostPerWeek],
        ['buy_in_price', 'number', 'ready-made from elsewhere', kind => kind.buyIn?.price ?? null],
        ['buy_in_weeks_notice', 'integer', 'before it comes', kind => kind.buyIn?.weeksNotice ?? null],
        ['buy_in_most_per_week', 'number', 'at most', kind => kind.buyIn?.mostPerWeek ?? null],
        [
          'protocols',
          'string',
          'ids of the ways to make it',
          kind => list(kind.ways.map(({ protocol }) => protocol)),
        ],
      ],
      { rootstock: 'kinds' },
    ),
    table(
      'mothers',
      'Mother trees',
      nursery.mothers.values(),
      ['id'],
      [
        ['id', 'string', 'name by which others refer to it', ({ mother }) => mother.id],
        ['name', 'string', 'as people call it', ({ mother }) => mother.name],
        ['cultivar', 'string', 'what it is', ({ mother }) => mother.cultivar],
        [
          'gives_rootstock',
          'string',
          'kind that a stool bed or seed tree gives',
          ({ mother }) => mother.rootstockKind,
        ],
        ['block', 'string', 'where it stands', ({ mother }) => mother.block],
        ['planted', 'date', 'day', ({ mother }) => mother.planted],
        ['provenance', 'string', 'where its wood came from', ({ mother }) => mother.provenance],
        [
          'metres_east',
          'number',
          'on the plan of the block',
          ({ mother }) => mother.position?.xMetres ?? null,
        ],
        [
          'metres_north',
          'number',
          'on the plan of the block',
          ({ mother }) => mother.position?.yMetres ?? null,
        ],
        [
          'gives',
          'string',
          'number a year, material, months and most in a week; parted by semicolons',
          ({ mother }) => suppliesText(mother.gives),
        ],
        ['retired', 'date', 'day on which it was given up', ({ retired }) => retired?.on ?? null],
      ],
      { cultivar: 'cultivars' },
    ),
    table(
      'batches',
      'Batches, past and present',
      nursery.batches.values(),
      ['id'],
      [
        ['id', 'string', 'name by which others refer to it', batch => batch.id],
        ['name', 'string', 'as people call it', batch => batch.name],
        ['kind', 'string', 'what it becomes', batch => batch.kind],
        ['protocol', 'string', 'how it is made', batch => batch.protocol],
        ['started_on', 'date', 'day', batch => batch.startedOn],
        ['started', 'integer', 'plants begun with', batch => batch.number],
        ['alive', 'integer', 'plants alive and here', batch => aliveIn(batch)],
        [
          'lost',
          'integer',
          'plants lost',
          batch => batch.losses.reduce((sum, { number }) => sum + number, 0),
        ],
        [
          'dispatched',
          'integer',
          'plants sent out',
          batch => batch.dispatched.reduce((sum, { number }) => sum + number, 0),
        ],
      ],
    ),
    table(
      'stands',
      'What stands where: living plants by batch, step and bench',
      stands,
      [],
      [
        ['batch', 'string', 'whose', ({ batch }) => batch.id],
        ['step', 'string', 'step of its protocol, or finished', ({ step }) => step],
        ['bench', 'string', 'where', ({ bench }) => bench],
        ['since', 'date', 'day on which they came into the step', ({ since }) => since],
        ['number', 'integer', 'plants', ({ number }) => number],
      ],
      { batch: 'batches' },
    ),
    table(
      'orders',
      'Orders',
      nursery.orders.values(),
      ['id'],
      [
        ['id', 'string', 'name by which others refer to it', ({ order }) => order.id],
        ['buyer', 'string', 'who asks', ({ order }) => order.buyer],
        ['kind', 'string', 'what is asked for', ({ order }) => order.kind],
        ['number', 'integer', 'trees', ({ order }) => order.number],
        ['earliest', 'date', 'not before', ({ order }) => order.earliest],
        ['due', 'date', 'needed by', ({ order }) => order.due],
        ['latest', 'date', 'not after', ({ order }) => order.latest],
        ['sure', 'number', 'chance asked, 0.5 to 0.99', ({ order }) => order.sure],
        ['price', 'number', 'for each tree', ({ order }) => order.price],
        ['placed', 'date', 'day', ({ order }) => order.placed],
        ['dispatched', 'integer', 'sent, less what came back', ({ dispatched }) => dispatched],
        [
          'status',
          'string',
          'open, sent or cancelled',
          ({ order, cancelled, dispatched }) =>
            cancelled ? 'cancelled' : dispatched >= order.number ? 'sent' : 'open',
        ],
        ['note', 'string', 'anything else', ({ order }) => order.note],
      ],
    ),
  ]
}
