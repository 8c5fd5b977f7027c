import type { OpenAPIHono } from '@hono/zod-openapi'
import { pictureFileOf, refusal } from '../../api/index.ts'
import { routes } from '../../api/routes/index.ts'
import type { Served } from '../served.ts'

const MOST_BYTES = 5 * 1024 * 1024

/** Photographs in and out. They are kept in the nursery's one file, so that a backup has them too. */
export const pictureRoutes = (app: OpenAPIHono, { memory: { log } }: Served): void => {
  app.openapi(routes.keepPicture, async c => {
    const { file } = c.req.valid('param')
    const bytes = await c.req.arrayBuffer()
    if (bytes.byteLength > MOST_BYTES) return c.json(refusal('picture-too-large', {}), 413)
    const start = new Uint8Array(bytes, 0, Math.min(3, bytes.byteLength))
    if (start[0] !== 0xff || start[1] !== 0xd8 || start[2] !== 0xff)
      return c.json(refusal('no-photograph', {}), 422)
    if ((await pictureFileOf(bytes)) !== file) return c.json(refusal('picture-not-whole', { file }), 422)
    log.keepPicture(file, new Uint8Array(bytes))
    return c.body(null, 204)
  })

  app.openapi(routes.picture, c => {
    const { file } = c.req.valid('param')
    const bytes = log.picture(file)
    if (bytes === undefined) return c.json(refusal('no-such-picture', { file }), 404)
    return c.body(new Uint8Array(bytes).buffer, 200, {
      'content-type': 'image/jpeg',
      'cache-control': 'public, max-age=31536000, immutable',
      'x-content-type-options': 'nosniff',
    })
  })
}
