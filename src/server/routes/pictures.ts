import type { OpenAPIHono } from '@hono/zod-openapi'
import { pictureFileOf } from '../../api/index.ts'
import { routes } from '../../api/routes/index.ts'
import { refusal, type Served } from '../served.ts'

const MOST_BYTES = 5 * 1024 * 1024

/** Photographs in and out. They are kept in the nursery's one file, so that a backup has them too. */
export const pictureRoutes = (app: OpenAPIHono, { memory: { log } }: Served): void => {
  app.openapi(routes.keepPicture, async c => {
    const { file } = c.req.valid('param')
    const bytes = await c.req.arrayBuffer()
    if (bytes.byteLength > MOST_BYTES)
      return c.json(refusal('The picture is too large', 'picture', 'Send one of at most 5 MB.'), 413)
    const start = new Uint8Array(bytes, 0, Math.min(3, bytes.byteLength))
    if (start[0] !== 0xff || start[1] !== 0xd8 || start[2] !== 0xff)
      return c.json(refusal('This is no photograph', 'picture', 'Send a JPEG.'), 422)
    if ((await pictureFileOf(bytes)) !== file)
      return c.json(
        refusal(
          'The picture did not arrive whole',
          file,
          'Send it again, named by the SHA-256 of its bytes.',
        ),
        422,
      )
    log.keepPicture(file, new Uint8Array(bytes))
    return c.body(null, 204)
  })

  app.openapi(routes.picture, c => {
    const { file } = c.req.valid('param')
    const bytes = log.picture(file)
    if (bytes === undefined)
      return c.json(
        refusal('This picture is not here', file, 'It may still wait on the device that took it.'),
        404,
      )
    return c.body(new Uint8Array(bytes).buffer, 200, {
      'content-type': 'image/jpeg',
      'cache-control': 'public, max-age=31536000, immutable',
      'x-content-type-options': 'nosniff',
    })
  })
}
