import { createRoute, z } from '@hono/zod-openapi'
import { BenchId, MotherId } from '../../trade/index.ts'
import { Ahead, AheadAsked } from '../ahead-shapes.ts'
import { HoldRow } from '../hold-shapes.ts'
import { AffectedView, BenchStand, MotherView } from '../record-shapes.ts'
import { Refusal } from '../shapes.ts'

const json = <S extends z.ZodType>(schema: S, description: string) => ({
  content: { 'application/json': { schema } },
  description,
})
const refused = json(Refusal, 'Refused: what is wrong, where, and how to mend it')
const family = z.object({ what: z.enum(['batch', 'mother']), id: z.string() })

/** One mother tree, one bench, holds, and where something found in a tree may have got to. */
export const recordRoutes = {
  mother: createRoute({
    method: 'get',
    path: '/api/mothers/{id}',
    request: { params: z.object({ id: MotherId }) },
    responses: {
      200: json(MotherView, 'One mother tree: tests, growth, wood in hand, licence, holds and entries'),
      400: refused,
      404: refused,
    },
  }),
  ahead: createRoute({
    method: 'post',
    path: '/api/ahead',
    request: { body: { content: { 'application/json': { schema: AheadAsked } }, required: true } },
    responses: {
      200: json(
        Ahead,
        'Those of the batches, mother trees and benches that there are, as each page has them',
      ),
      400: refused,
      415: refused,
    },
  }),
  holds: createRoute({
    method: 'get',
    path: '/api/holds',
    responses: { 200: json(z.array(HoldRow), 'All holds, those that stand first, then the released') },
  }),
  benchStand: createRoute({
    method: 'get',
    path: '/api/benches/{id}',
    request: { params: z.object({ id: BenchId }) },
    responses: {
      200: json(BenchStand, 'What the record has on a bench now, to be counted against'),
      400: refused,
      404: refused,
    },
  }),
  affected: createRoute({
    method: 'get',
    path: '/api/lineage/{what}/{id}/affected',
    request: { params: family },
    responses: {
      200: json(
        AffectedView,
        'Where something found in it may have got to: what stands, who has trees of it',
      ),
      400: refused,
      404: refused,
    },
  }),
  familyTable: createRoute({
    method: 'get',
    path: '/api/lineage/{what}/{id}/{table}',
    request: {
      params: family.extend({
        table: z.enum(['family.csv', 'carriers.csv', 'letters.csv', 'nearby.csv']).openapi({
          description:
            'The whole family for the authority; what carries it; who is to be written to; the wider circle',
        }),
      }),
    },
    responses: {
      200: { content: { 'text/csv': { schema: z.string() } }, description: 'One table' },
      400: refused,
      404: refused,
    },
  }),
} as const
