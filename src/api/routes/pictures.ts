import { createRoute, z } from '@hono/zod-openapi'
import { PictureFile } from '../picture-file.ts'
import { Refusal } from '../shapes.ts'

const jpeg = { 'image/jpeg': { schema: z.any().openapi({ type: 'string', format: 'binary' }) } }
const refused = {
  content: { 'application/json': { schema: Refusal } },
  description: 'Refused: what is wrong, where, and how to mend it',
}
const params = z.object({ file: PictureFile })

/** Photographs that entries name. A picture never changes: its name is the hash of its bytes. */
export const pictureRoutes = {
  keepPicture: createRoute({
    method: 'put',
    path: '/api/pictures/{file}',
    request: { params, body: { content: jpeg, required: true } },
    responses: { 204: { description: 'The picture is kept' }, 400: refused, 413: refused, 422: refused },
  }),
  picture: createRoute({
    method: 'get',
    path: '/api/pictures/{file}',
    request: { params },
    responses: { 200: { content: jpeg, description: 'The picture' }, 400: refused, 404: refused },
  }),
} as const
