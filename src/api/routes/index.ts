import { createRoute, z } from '@hono/zod-openapi'
import { OrderForecast } from '../../planning/index.ts'
import { Week } from '../../record/index.ts'
import { BatchId, OrderId, PersonId, Protocol, ProtocolId } from '../../trade/index.ts'
import { BandPoint, BatchView } from '../batch-shapes.ts'
import { RatesCompared } from '../compared-shapes.ts'
import { FullBench, NeedsLook } from '../look-shapes.ts'
import { PlanJob, PlanState, SeasonPlan } from '../plan-shapes.ts'
import {
  BatchRow,
  BenchView,
  EntriesPulled,
  EntriesPushed,
  EntryIds,
  LineageView,
  MotherRow,
  NurseryView,
  OrderRow,
  PushEntries,
  QueryRow,
  RateRow,
  Refusal,
  ServerEvent,
  ShownEntry,
  WorkList,
} from '../shapes.ts'
import { tableOf } from '../table-shape.ts'
import { exchangeRoutes } from './exchange.ts'
import { journalRoutes } from './journal.ts'
import { pictureRoutes } from './pictures.ts'
import { promiseRoutes } from './promise.ts'
import { recordRoutes } from './record.ts'

/** Every route of the server, with the shapes that it takes and gives: the published description is made from these. */

const json = <S extends z.ZodType>(schema: S, description: string) => ({
  content: { 'application/json': { schema } },
  description,
})
const refused = json(Refusal, 'Refused: what is wrong, where, and how to mend it')

const get = <P extends string, S extends z.ZodType>(path: P, schema: S, description: string) =>
  createRoute({ method: 'get', path, responses: { 200: json(schema, description) } })

/** This week when left out. */
const AskedWeek = Week.optional()

export const routes = {
  ...exchangeRoutes,
  ...promiseRoutes,
  ...pictureRoutes,
  ...recordRoutes,
  ...journalRoutes,
  nursery: get(
    '/api/nursery',
    NurseryView,
    'The nursery: places, people, kinds, and how much there is of everything',
  ),
  orders: get('/api/orders', z.array(OrderRow), 'All orders with the chance of each'),
  mothers: get(
    '/api/mothers',
    z.array(MotherRow),
    'All mother trees with what each may still give this year',
  ),
  queries: get('/api/queries', z.array(QueryRow), 'What does not add up and waits to be settled'),
  rates: get(
    '/api/rates',
    z.array(RateRow),
    'What takes: the rate behind every step, and where it comes from',
  ),
  ratesCompared: get(
    '/api/rates/compared',
    RatesCompared,
    'People and months beside each other, with kinds, steps and years allowed for',
  ),
  needsLook: get('/api/needs-look', NeedsLook, 'What wants eyes: late, poor, stale, overflowing'),
  protocol: createRoute({
    method: 'get',
    path: '/api/protocols/{id}',
    request: { params: z.object({ id: ProtocolId }) },
    responses: { 200: json(Protocol, 'One protocol, whole'), 400: refused, 404: refused },
  }),
  plan: get('/api/plan', PlanState, 'What the latest plan came to, and the planning job if one runs'),
  seasonPlan: createRoute({
    method: 'get',
    path: '/api/plan/season',
    responses: {
      200: json(SeasonPlan, 'The latest plan: its starts, what it asks of the nursery, what limits it'),
      404: refused,
    },
  }),
  orderPlanned: createRoute({
    method: 'get',
    path: '/api/plan/orders/{id}',
    request: { params: z.object({ id: OrderId }) },
    responses: {
      200: json(
        OrderForecast.nullable(),
        'How the latest plan fills an order; null where it does not know it',
      ),
      400: refused,
    },
  }),
  batches: createRoute({
    method: 'get',
    path: '/api/batches',
    request: {
      query: z.object({
        find: z.string().optional().openapi({ description: 'Text in the name, kind, cultivar or bench' }),
        state: z.enum(['alive', 'past', 'all']).default('alive'),
        limit: z.coerce.number().int().min(1).max(100_000).default(10_000),
      }),
    },
    responses: { 200: json(tableOf(BatchRow), 'Batches, newest first, column by column'), 400: refused },
  }),
  batch: createRoute({
    method: 'get',
    path: '/api/batches/{id}',
    request: { params: z.object({ id: BatchId }) },
    responses: {
      200: json(BatchView, 'One batch: its life, counts, family and entries'),
      400: refused,
      404: refused,
    },
  }),
  batchExpected: createRoute({
    method: 'get',
    path: '/api/batches/{id}/expected',
    request: { params: z.object({ id: BatchId }) },
    responses: {
      200: json(
        z.array(BandPoint),
        'In what its counts are expected to run; waits until what takes is learnt from the counts',
      ),
      400: refused,
      404: refused,
    },
  }),
  work: createRoute({
    method: 'get',
    path: '/api/work',
    request: {
      query: z.object({
        week: AskedWeek,
        known: z.string().optional().openapi({ description: 'The mark of what the asker has already' }),
      }),
    },
    responses: { 200: json(WorkList, 'What is to be done in a week'), 400: refused },
  }),
  benches: createRoute({
    method: 'get',
    path: '/api/benches',
    request: { query: z.object({ week: AskedWeek }) },
    responses: {
      200: json(z.array(BenchView), 'What stands on every bench in a week, or is expected to'),
      400: refused,
    },
  }),
  fullBenches: get('/api/full-benches', z.array(FullBench), 'Benches that overflow in the weeks to come'),
  lineage: createRoute({
    method: 'get',
    path: '/api/lineage/{what}/{id}',
    request: { params: z.object({ what: z.enum(['batch', 'mother']), id: z.string() }) },
    responses: {
      200: json(LineageView, 'The family of a batch or mother tree, both ways'),
      400: refused,
      404: refused,
    },
  }),
  pullEntries: createRoute({
    method: 'get',
    path: '/api/entries',
    request: {
      query: z.object({
        after: z.coerce.number().int().min(0).default(0),
        limit: z.coerce.number().int().min(1).max(10_000).default(1_000),
      }),
    },
    responses: { 200: json(EntriesPulled, 'Entries after a number, oldest first'), 400: refused },
  }),
  entriesShown: createRoute({
    method: 'post',
    path: '/api/entries/shown',
    request: { body: { content: { 'application/json': { schema: EntryIds } }, required: true } },
    responses: {
      200: json(
        z.array(ShownEntry),
        'Those of the entries that the log has, in the order in which they happened',
      ),
      400: refused,
      415: refused,
    },
  }),
  pushEntries: createRoute({
    method: 'post',
    path: '/api/entries',
    request: { body: { content: { 'application/json': { schema: PushEntries } }, required: true } },
    responses: {
      200: json(EntriesPushed, 'Which were taken, which were known, which were refused and why'),
      400: refused,
      415: refused,
    },
  }),
  startPlan: createRoute({
    method: 'post',
    path: '/api/plan',
    responses: { 202: json(PlanJob, 'The job, begun'), 409: refused },
  }),
  stopPlan: createRoute({
    method: 'delete',
    path: '/api/plan/job',
    responses: { 200: json(PlanJob, 'The job, asked to stop with its best answer'), 404: refused },
  }),
  acceptPlan: createRoute({
    method: 'post',
    path: '/api/plan/accept',
    request: {
      body: {
        content: {
          'application/json': { schema: z.object({ plan: z.string(), by: PersonId.nullable() }) },
        },
        required: true,
      },
    },
    responses: {
      200: json(PlanState, 'The plan is accepted: the season is measured against it'),
      400: refused,
      409: refused,
    },
  }),
  events: createRoute({
    method: 'get',
    path: '/api/events',
    responses: {
      200: {
        content: { 'text/event-stream': { schema: ServerEvent } },
        description:
          'What the server tells on its own for as long as the caller listens, one `data:` line of JSON each',
      },
    },
  }),
} as const
