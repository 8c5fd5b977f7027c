import { afterAll, beforeAll, expect, test } from 'vitest'
import { discard, newFolder, type ServedNursery, serveNursery } from '../../test/served-nursery.ts'

let folder: string
let nursery: ServedNursery
beforeAll(async () => {
  folder = newFolder()
  nursery = await serveNursery(folder, '2026-05-19')
})
afterAll(async () => {
  await nursery.close()
  discard(folder)
})

const askAs = (headers: Record<string, string>, init: RequestInit = {}) =>
  nursery.app.request('/api/queries', { ...init, headers })

test.each(['localhost', 'localhost:7320', '127.0.0.1:7320', '[::1]:7320'])(
  'a page that reaches the server as %s is answered',
  async host => {
    expect((await askAs({ host })).status).toBe(200)
    expect((await askAs({ host, origin: `http://${host}` })).status).toBe(200)
  },
)

test.each([
  ['a name that was made to point here', { host: 'nursery.example:7320' }],
  ['a name that begins like this computer', { host: 'localhost.example' }],
  ['a name that ends like this computer', { host: 'not-localhost' }],
  ['an address of the network', { host: '192.168.1.20:7320' }],
  ['a page of another site', { host: 'localhost:7320', origin: 'https://shop.example' }],
  ['a page without a site of its own', { host: 'localhost:7320', origin: 'null' }],
  ['an origin that is no address', { host: 'localhost:7320', origin: 'localhost:7320' }],
])('%s is refused, with what to do, and nothing is read', async (_, headers) => {
  const answer = await askAs(headers)
  expect(answer.status).toBe(403)
  expect(await answer.json()).toEqual({
    code: 'not-this-computer',
    of: {},
    what: 'Only pages of this computer may ask',
    where: 'Host or Origin header',
    mend: expect.stringContaining('address that was printed'),
  })
})

test('a page of another site cannot write either, whatever it calls its text', async () => {
  const before = nursery.memory.throughSeq()
  for (const type of ['application/json', 'text/plain', 'application/x-www-form-urlencoded']) {
    const answer = await nursery.app.request('/api/entries', {
      method: 'POST',
      headers: { host: 'localhost:7320', origin: 'https://shop.example', 'content-type': type },
      body: JSON.stringify({ entries: [] }),
    })
    expect(answer.status).toBe(403)
  }
  expect(nursery.memory.throughSeq()).toBe(before)
})
