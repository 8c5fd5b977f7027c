import { createRoute, z } from '@hono/zod-openapi'
import { JournalPage, TaskDeed } from '../journal-shapes.ts'
import { Refusal } from '../shapes.ts'

const json = <S extends z.ZodType>(schema: S, description: string) => ({
  content: { 'application/json': { schema } },
  description,
})
const refused = json(Refusal, 'Refused: what is wrong, where, and how to mend it')

/** All that was said, and what of it belongs to one deed. */
export const journalRoutes = {
  journal: createRoute({
    method: 'get',
    path: '/api/journal',
    request: {
      query: z.object({
        before: z.coerce
          .number()
          .int()
          .min(1)
          .optional()
          .openapi({ description: 'Only entries before this number' }),
        find: z.string().optional().openapi({
          description: 'Words that stand in the entry, in what it is about, in its person or its device',
        }),
        limit: z.coerce.number().int().min(1).max(1_000).default(200),
      }),
    },
    responses: {
      200: json(
        JournalPage,
        'What was said, the newest first. So many entries are looked through at once: where words are looked for, a page may be short or empty and more still follow.',
      ),
      400: refused,
    },
  }),
  deedsOf: createRoute({
    method: 'post',
    path: '/api/journal/deeds',
    request: {
      body: {
        content: { 'application/json': { schema: z.object({ tasks: z.array(z.string()).max(10_000) }) } },
        required: true,
      },
    },
    responses: {
      200: json(
        z.array(TaskDeed),
        'Of those of the tasks that are done: what was said in the same deed, the newest first',
      ),
      400: refused,
      415: refused,
    },
  }),
} as const
