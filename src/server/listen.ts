import { existsSync, readFileSync, statSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import { extname, join, normalize, sep } from 'node:path'
import { getRequestListener } from '@hono/node-server'

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
}

const decoded = (path: string): string | null => {
  try {
    return decodeURIComponent(path)
  } catch {
    return null
  }
}

/** Whether an `accept-encoding` header takes gzip (RFC 9110, 12.5.3): named, and not with a weight of nothing. */
const takesGzip = (accepted: string | null): boolean =>
  (accepted ?? '').split(',').some(coding => {
    const [name, weight = 'q=1'] = coding.split(';').map(part => part.trim().toLowerCase())
    return name === 'gzip' && Number(weight.replace('q=', '')) > 0
  })

/**
 * A file of the built app, or its first page for any address that is a view; as the build packed it (`x.js.gz`) for those
 * who take that. Names with a hash never change.
 */
const appFile = (folder: string, path: string, accepted: string | null): Response | null => {
  const asked = decoded(path)
  if (asked === null) return null
  const wanted = normalize(join(folder, asked))
  const inside = wanted.startsWith(folder + sep)
  const isFile = inside && existsSync(wanted) && statSync(wanted).isFile()
  const file = isFile ? wanted : join(folder, 'index.html')
  if (!existsSync(file) || (!isFile && extname(asked) in TYPES)) return null
  const isPacked = takesGzip(accepted) && existsSync(`${file}.gz`)
  return new Response(readFileSync(isPacked ? `${file}.gz` : file), {
    headers: {
      'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
      ...(isPacked && { 'content-encoding': 'gzip' }),
      vary: 'accept-encoding',
      'cache-control': path.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache',
    },
  })
}

export type Listening =
  | { readonly kind: 'listening'; readonly address: string; readonly server: Server }
  | { readonly kind: 'port taken'; readonly port: number }

export interface Serving {
  fetch(request: Request): Response | Promise<Response>
}

/** Serves API and app on this computer only. `port` 0 takes any that is free. */
export const listen = async (app: Serving, appFolder: string | null, port: number): Promise<Listening> => {
  const handle = (request: Request): Response | Promise<Response> => {
    const { pathname } = new URL(request.url)
    if (pathname.startsWith('/api/') || appFolder === null) return app.fetch(request)
    return appFile(appFolder, pathname, request.headers.get('accept-encoding')) ?? app.fetch(request)
  }
  const server = createServer(getRequestListener(handle))
  return new Promise((resolve, reject) => {
    server.once('error', (problem: NodeJS.ErrnoException) =>
      problem.code === 'EADDRINUSE' ? resolve({ kind: 'port taken', port }) : reject(problem),
    )
    server.listen(port, '127.0.0.1', () => {
      const at = server.address()
      const taken = typeof at === 'object' && at !== null ? at.port : port
      resolve({ kind: 'listening', address: `http://localhost:${taken}`, server })
    })
  })
}
