import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { connect } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { OpenAPIHono } from '@hono/zod-openapi'
import { afterAll, beforeAll, expect, test } from 'vitest'
import type { App } from './app.ts'
import { type Listening, listen } from './listen.ts'

/** A built app of a few files, with something beside it that is nobody's business. */
let house: string
let port: number
let listening: Extract<Listening, { kind: 'listening' }>

beforeAll(async () => {
  house = mkdtempSync(join(tmpdir(), 'budstick-pages-'))
  mkdirSync(join(house, 'app/assets'), { recursive: true })
  mkdirSync(join(house, 'app-secret'))
  writeFileSync(join(house, 'app/index.html'), '<title>first page</title>')
  writeFileSync(join(house, 'app/assets/main-a1b2.js'), 'console.log(1)')
  writeFileSync(join(house, 'app/assets/large-c3d4.js'), 'console.log(2)')
  writeFileSync(join(house, 'app/assets/large-c3d4.js.gz'), gzipSync('console.log(2)'))
  writeFileSync(join(house, 'app/budstick.svg'), '<svg/>')
  writeFileSync(join(house, 'app-secret/key.txt'), 'secret')
  writeFileSync(join(house, 'nursery.sqlite'), 'secret')
  const api = new OpenAPIHono()
  api.get('/api/hello', c => c.json({ hello: 'nursery' }))
  api.notFound(c => c.json({ what: 'Nothing is here' }, 404))
  const begun = await listen(api as unknown as App, join(house, 'app'), 0)
  if (begun.kind !== 'listening') throw new Error('any free port was asked for, and none was given')
  listening = begun
  port = Number(new URL(begun.address).port)
})
afterAll(() => {
  listening.server.close()
  listening.server.closeAllConnections()
  rmSync(house, { recursive: true })
})

const get = (path: string) => fetch(`http://127.0.0.1:${port}${path}`)

/** The first line and the body of the answer to a path sent as it is, which no well-behaved caller would send. */
const rawGet = (path: string) =>
  new Promise<string>((resolve, reject) => {
    let text = ''
    const socket = connect(port, '127.0.0.1', () =>
      socket.write(`GET ${path} HTTP/1.1\r\nHost: localhost:${port}\r\nConnection: close\r\n\r\n`),
    )
    socket.on('data', data => {
      text += data
    })
    socket.on('end', () => resolve(text))
    socket.on('error', reject)
  })

test('a file of the app is served with its type; one with a hash in its name may be kept for ever, others are asked for anew', async () => {
  const script = await get('/assets/main-a1b2.js')
  expect(await script.text()).toBe('console.log(1)')
  expect(script.headers.get('content-type')).toMatch(/javascript/)
  expect(script.headers.get('cache-control')).toContain('immutable')
  const drawing = await get('/budstick.svg')
  expect(drawing.headers.get('content-type')).toBe('image/svg+xml')
  expect(drawing.headers.get('cache-control')).toBe('no-cache')
  await drawing.body?.cancel()
})

test.each([
  ['gzip, deflate, br', 'gzip'],
  ['br, GZIP;q=0.5', 'gzip'],
  ['gzip;q=0, identity', null],
  ['identity', null],
  ['', null],
])('to whom “%s” is welcome, a packed file goes with the coding %s', async (accepted, coding) => {
  const script = await fetch(`http://127.0.0.1:${port}/assets/large-c3d4.js`, {
    headers: { 'accept-encoding': accepted },
  })
  expect(script.headers.get('content-encoding')).toBe(coding)
  expect(script.headers.get('vary')).toBe('accept-encoding')
  expect(script.headers.get('content-type')).toMatch(/javascript/)
  expect(await script.text()).toBe('console.log(2)')
})

test.each(['/', '/work', '/batches/26-018/count?step=mist', '/lineage/mother/M1'])(
  '%s is a view: the app’s first page opens it',
  async path => {
    const page = await get(path)
    expect(page.status).toBe(200)
    expect(await page.text()).toBe('<title>first page</title>')
  },
)

test('a file that the app does not have is missing, and is no page', async () => {
  for (const path of ['/assets/gone-ffff.js', '/nothing.png']) expect((await get(path)).status).toBe(404)
})

test('what begins with /api/ goes to the API and never to a file', async () => {
  expect(await (await get('/api/hello')).json()).toEqual({ hello: 'nursery' })
  expect((await get('/api/index.html')).status).toBe(404)
})

test.each([
  '/../nursery.sqlite',
  '/assets/../../nursery.sqlite',
  '/%2e%2e/nursery.sqlite',
  '/..%2fnursery.sqlite',
  '/assets/..%2f..%2fnursery.sqlite',
  '/..%5cnursery.sqlite',
  '/..%2fapp-secret%2fkey.txt',
  '//nursery.sqlite',
  '/%2fetc%2fpasswd',
  '/%00',
  '/assets%00.js',
])('a way out of the app’s folder (%s) leads nowhere', async path => {
  const answer = await rawGet(path)
  expect(answer).toMatch(/^HTTP\/1\.1 (200|404) /)
  expect(answer).not.toMatch(/secret|root:/)
  if (answer.startsWith('HTTP/1.1 200')) expect(answer).toContain('<title>first page</title>')
})

test.each(['/%', '/%E0%A4%A', '/assets/%zz.js'])(
  'a path that is no text (%s) is missing, and breaks nothing',
  async path => {
    expect(await rawGet(path)).toMatch(/^HTTP\/1\.1 404 /)
    expect((await get('/')).status).toBe(200)
  },
)

test('a port that is taken is said by its number', async () => {
  expect(await listen(new OpenAPIHono() as unknown as App, null, port)).toEqual({ kind: 'port taken', port })
})

test('the server listens on this computer alone', () => {
  expect(listening.server.address()).toMatchObject({ address: '127.0.0.1' })
})
