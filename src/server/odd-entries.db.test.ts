import { afterEach, expect, test } from 'vitest'
import { nurseryWithFewOrders } from '../../test/few-orders.ts'
import {
  discard,
  entryOf,
  newFolder,
  type ServedNursery,
  serveNursery,
  until,
} from '../../test/served-nursery.ts'
import { type BatchRow, type EntriesPushed, type PlanState, rowsOf, type Table } from '../api/index.ts'
import { bodies, type Entry } from '../record/index.ts'
import { seededRandom } from '../science/index.ts'

const TODAY = '2026-05-19'

let folder: string
let nursery: ServedNursery
const serve = async (entries: readonly Entry[]): Promise<void> => {
  folder = newFolder()
  nursery = await serveNursery(folder, TODAY, entries)
}
afterEach(async () => {
  await nursery.close()
  discard(folder)
})

/** Looks at everything that can be looked at; the paths that did not answer. */
const silent = async (): Promise<string[]> => {
  const paths = [
    ...['nursery', 'orders', 'mothers', 'queries', 'rates', 'batches?state=all', 'work', 'benches', 'plan'],
    ...['holds', 'needs-look', 'rates/compared', 'benches/none', 'lineage/mother/none/affected'],
    ...['entries?limit=10000', 'openapi.json', 'benches?week=2026-W30'],
    ...rowsOf((await nursery.ask('/api/batches?state=all')).json as Table<BatchRow>)
      .slice(0, 40)
      .flatMap(({ id }) => [`batches/${encodeURIComponent(id)}`, `lineage/batch/${encodeURIComponent(id)}`]),
    ...[...nursery.memory.nursery().mothers.keys()].slice(0, 5).map(id => `lineage/mother/${id}`),
  ]
  const failed: string[] = []
  for (const path of paths) {
    const { status, json } = await nursery.ask(`/api/${path}`)
    if (status >= 500) failed.push(`${path}: ${(json as { mend: string }).mend}`)
  }
  return failed
}

const planned = async (): Promise<PlanState> => {
  await nursery.ask('/api/plan', { method: 'POST' })
  return until(
    'the end of the planning job',
    async (): Promise<PlanState> => (await nursery.ask('/api/plan')).json,
    ({ job }) => job?.state !== 'running',
  )
}

const at = { batch: 'none', step: 'none', number: 7 }
const unknown = '019a0000-0000-7000-8000-000000000000'

/** Of every kind of entry that names a thing, one that names a thing nobody has told of. */
const unheardOf: readonly object[] = [
  { kind: 'bench-removed/1', bench: 'none', why: '' },
  { kind: 'person-left/1', person: 'none' },
  { kind: 'kind-dropped/1', kindOfTree: 'none', why: '' },
  {
    kind: 'rate-set/1',
    protocol: 'none',
    step: 'none',
    kindOfTree: null,
    survival: { low: 0.1, typical: 0.2, high: 0.3, basis: 'set by the nursery' },
    why: 'seen',
  },
  {
    kind: 'fact-set/1',
    species: 'none',
    set: {
      fact: 'orchard.chillHours',
      value: { low: 500, typical: 800, high: 1000, basis: 'set by the nursery', sources: [] },
    },
    why: 'seen',
  },
  { kind: 'mother-observed/1', mother: 'none', bbch: '65', health: '' },
  {
    kind: 'mother-tested/1',
    mother: 'none',
    test: 'virus',
    result: 'positive',
    laboratory: '',
    validUntil: null,
  },
  { kind: 'mother-retired/1', mother: 'none', why: '' },
  {
    kind: 'material-collected/1',
    lot: 'L1',
    mother: 'none',
    material: 'budwood',
    number: 3,
    stored: '',
    goodUntil: null,
  },
  { kind: 'material-discarded/1', lot: 'none', number: 3, why: 'dry' },
  {
    kind: 'batch-started/1',
    batch: 'odd',
    name: 'odd',
    kindOfTree: 'none',
    protocol: 'none',
    number: 10,
    sources: [
      { from: 'mother', mother: 'none', material: 'cuttings', number: 10 },
      { from: 'batch', batch: 'none', as: 'rootstock', number: 10 },
      { from: 'lot', lot: 'none', number: 10 },
      { from: 'bought', supplier: 'Far', material: 'sticks', number: 10 },
    ],
    bench: 'none',
    workedBy: ['none'],
    candidates: ['none', 'nor this'],
  },
  { kind: 'counted/1', batch: 'none', step: 'none', sign: 'rooted', taken: 3, dead: 4, undecided: 5 },
  {
    kind: 'bench-counted/1',
    bench: 'none',
    lines: [{ batch: 'none', step: 'none', stood: 7, counted: 5, cause: 'mice' }],
  },
  { kind: 'lost/1', ...at, cause: 'mice' },
  { kind: 'advanced/1', batch: 'none', from: 'none', to: 'nor this', number: 7, bench: 'none' },
  { kind: 'finished/1', batch: 'none', number: 7, grade: '' },
  { kind: 'moved/1', ...at, to: 'none' },
  { kind: 'split/1', ...at, into: 'new', name: 'new', why: '' },
  { kind: 'joined/1', ...at, into: 'nor this' },
  { kind: 'measured/1', batch: 'none', step: 'none', calipersMm: [6.5] },
  { kind: 'graded/1', batch: 'none', step: 'none', grades: { first: 3 } },
  { kind: 'potted-on/1', ...at, potLitres: 2 },
  { kind: 'reworked/1', ...at, kindOfTree: 'none', sources: [] },
  { kind: 'name-settled/1', batch: 'none', cultivar: 'none', how: '' },
  { kind: 'dispatched/1', batch: 'none', order: 'none', number: 7, to: '' },
  { kind: 'returned/1', batch: 'none', order: 'none', number: 7, why: '' },
  { kind: 'hold-placed/1', on: { what: 'lineage', of: { mother: 'none' } }, why: 'virus' },
  { kind: 'hold-placed/1', on: { what: 'bench', bench: 'none' }, why: 'virus' },
  { kind: 'hold-released/1', hold: unknown, why: 'clean' },
  { kind: 'order-cancelled/1', order: 'none', why: '' },
  {
    kind: 'plan-accepted/1',
    plan: 'none',
    starts: [
      { start: 'none', kindOfTree: 'none', protocol: 'none', week: '2026-W20', number: 5, bench: null },
    ],
    chances: { none: 0.5 },
  },
  {
    kind: 'start-set/1',
    kindOfTree: 'none',
    protocol: 'none',
    week: '2026-W20',
    number: 5,
    insteadOf: 'none',
  },
  { kind: 'task-done/1', task: 'none', minutes: null },
  { kind: 'task-done/2', task: 'none', number: 1, minutes: null },
  { kind: 'noted/1', about: 'none', text: 'hm' },
  { kind: 'photographed/1', about: 'none', file: 'none.jpg', caption: '' },
  { kind: 'struck/1', entry: unknown, why: 'wrong' },
  { kind: 'query-settled/1', query: 'none', how: 'looked' },
]
/** Entries that set up a thing name nothing else that could be missing but what the others above miss already. */
const setUp =
  /^(site|prices|settings|bench|person|cultivar|kind|protocol|species|mother)-set\/1$|^order-(placed|changed)\/1$/

test('entries of every kind about things that nobody has told of are taken, and every view still answers', async () => {
  const kinds = Object.values(bodies).map(schema => schema.unwrap().shape.kind.value as string)
  const odd = new Set(unheardOf.map(body => (body as { kind: string }).kind))
  expect(kinds.filter(kind => !odd.has(kind) && !setUp.test(kind))).toEqual([])

  await serve([])
  const entries = unheardOf.map(body => entryOf(body))
  const pushed: EntriesPushed = (await nursery.push(entries)).json
  expect(pushed.refused).toEqual([])
  expect(await silent()).toEqual([])
  expect((await planned()).job).toMatchObject({ state: 'done', why: null })
})

test.each([1, 2, 3])('whichever half of a log has arrived (%i), every view answers', async seed => {
  const random = seededRandom(seed)
  await serve(nurseryWithFewOrders(TODAY, 120).filter(() => random.uniform() < 0.5))
  expect(await silent()).toEqual([])
})

test('a season can be planned from half a log', async () => {
  const random = seededRandom(4)
  await serve(nurseryWithFewOrders(TODAY, 8).filter(() => random.uniform() < 0.5))
  expect((await planned()).job).toMatchObject({ state: 'done', why: null })
  expect(await silent()).toEqual([])
})
