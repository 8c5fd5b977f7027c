import { createRoute, z } from '@hono/zod-openapi'
import { Supposed, WeekText, WhatIf } from '../../planning/index.ts'
import { BatchId, KindId } from '../../trade/index.ts'
import { CouldBePromised, StartMoved, WorkAgain } from '../promise-shapes.ts'
import { Refusal } from '../shapes.ts'

const json = <S extends z.ZodType>(schema: S, description: string) => ({
  content: { 'application/json': { schema } },
  description,
})
const refused = json(Refusal, 'Refused: what is wrong, where, and how to mend it')

/** What the latest plan lets say to a buyer, and to the one who has just counted. */
export const promiseRoutes = {
  promise: createRoute({
    method: 'get',
    path: '/api/promise',
    request: {
      query: z.object({
        kind: KindId,
        number: z.coerce.number().int().min(1).max(1_000_000),
        sure: z.coerce.number().min(0.5).max(0.99).default(0.9).openapi({
          description: 'Chance that the whole number is there',
        }),
      }),
    },
    responses: {
      200: json(
        CouldBePromised,
        'What could be promised of a kind beside all orders: by week, and the earliest week for a number',
      ),
      400: refused,
      404: refused,
    },
  }),
  startMoved: createRoute({
    method: 'get',
    path: '/api/what-if/start',
    request: {
      query: z.object({
        start: z.string().min(1).openapi({ description: 'A start of the latest plan' }),
        week: WeekText,
        number: z.coerce.number().int().min(0).max(1_000_000),
      }),
    },
    responses: {
      200: json(
        StartMoved,
        'What a start in another week or of another number does to the orders that it can touch, and what it lacks; nothing is kept',
      ),
      400: refused,
      404: refused,
    },
  }),
  whatIf: createRoute({
    method: 'post',
    path: '/api/what-if',
    request: {
      body: { content: { 'application/json': { schema: z.object({ suppose: Supposed }) } }, required: true },
    },
    responses: {
      200: json(
        WhatIf,
        'What would change if one bench, person, order or rate were as supposed, said as its entry; nothing is entered. A later question ends an earlier one.',
      ),
      400: refused,
      404: refused,
      409: refused,
      503: refused,
    },
  }),
  workAgain: createRoute({
    method: 'get',
    path: '/api/batches/{id}/again',
    request: { params: z.object({ id: BatchId }) },
    responses: {
      200: json(
        WorkAgain.nullable(),
        'What still takes in a counted batch, and whether to work its failed again; null where nothing is open',
      ),
      400: refused,
      404: refused,
    },
  }),
} as const
