import { afterAll, beforeAll, expect, test } from 'vitest'
import type { ZodType } from 'zod'
import { discard, newFolder, type ServedNursery, serveNursery } from '../../test/served-nursery.ts'
import { routes } from '../api/routes/index.ts'
import { makeDemoEntries } from '../demo/index.ts'

let folder: string
let nursery: ServedNursery
beforeAll(async () => {
  folder = newFolder()
  nursery = await serveNursery(folder, '2026-05-19', makeDemoEntries({ seed: 1, today: '2026-05-19' }))
})
afterAll(async () => {
  await nursery.close()
  discard(folder)
})

interface Description {
  readonly openapi: string
  readonly paths: Record<string, Record<string, { responses: Record<string, { description: string }> }>>
}
const describe = async (): Promise<Description> => (await nursery.ask('/api/openapi.json')).json

test('the published description names every route of the server, each with its answers in words', async () => {
  const { openapi, paths } = await describe()
  expect(openapi).toBe('3.1.0')
  const described = Object.entries(paths).flatMap(([path, methods]) =>
    Object.keys(methods).map(method => `${method.toUpperCase()} ${path}`),
  )
  const served = nursery.app.routes
    .filter(({ method, path }) => method !== 'ALL' && path !== '/api/openapi.json')
    .map(({ method, path }) => `${method} ${path.replace(/:(\w+)/g, '{$1}')}`)
  expect(new Set(described)).toEqual(new Set(served))
  for (const methods of Object.values(paths))
    for (const { responses } of Object.values(methods))
      for (const { description } of Object.values(responses)) expect(description).toMatch(/\w/)
})

test('what the description refers to stands in it', async () => {
  const text = JSON.stringify(await describe())
  const { components } = JSON.parse(text) as { components: { schemas: Record<string, unknown> } }
  for (const [, name] of text.matchAll(/"#\/components\/schemas\/(\w+)"/g))
    expect(components.schemas).toHaveProperty(name!)
})

const shapeOf = (route: { responses: object }, status: number): ZodType =>
  (route.responses as Record<number, { content: { 'application/json': { schema: ZodType } } }>)[status]!
    .content['application/json'].schema

/** The answer is what its shape says, and nothing that the shape is silent about. */
const fits = (json: unknown, shape: ZodType): void => {
  const read = shape.safeParse(json)
  expect(read.error?.issues ?? []).toEqual([])
  expect(json).toEqual(read.data)
}

test.each([
  ['/api/nursery', routes.nursery],
  ['/api/orders', routes.orders],
  ['/api/mothers', routes.mothers],
  ['/api/queries', routes.queries],
  ['/api/rates', routes.rates],
  ['/api/batches?state=all', routes.batches],
  ['/api/batches?find=mist&limit=3', routes.batches],
  ['/api/work', routes.work],
  ['/api/work?week=2026-W24', routes.work],
  ['/api/benches', routes.benches],
  ['/api/benches?week=2026-W40', routes.benches],
  ['/api/entries?after=4000&limit=700', routes.pullEntries],
  ['/api/plan', routes.plan],
])('GET %s answers in the shape that is published for it', async (path, route) => {
  const { status, json } = await nursery.ask(path)
  expect(status).toBe(200)
  fits(json, shapeOf(route, 200))
})

test('every batch, and the family of every batch and mother tree, answers in its published shape', async () => {
  const { batches, mothers } = nursery.memory.nursery()
  const ids = [...batches.keys()].filter((_, index) => index % 15 === 0)
  expect(ids.length).toBeGreaterThan(10)
  for (const id of ids) {
    fits((await nursery.ask(`/api/batches/${id}`)).json, shapeOf(routes.batch, 200))
    fits((await nursery.ask(`/api/batches/${id}/expected`)).json, shapeOf(routes.batchExpected, 200))
    fits((await nursery.ask(`/api/lineage/batch/${id}`)).json, shapeOf(routes.lineage, 200))
  }
  for (const id of [...mothers.keys()].slice(0, 8))
    fits((await nursery.ask(`/api/lineage/mother/${id}`)).json, shapeOf(routes.lineage, 200))
})

test('what is asked for ahead is answered as each page alone has it, without what is not there, and no more than 25 at once', async () => {
  const { batches, mothers, benches } = nursery.memory.nursery()
  const some = { batches: [...batches.keys()].slice(-3), mothers: [...mothers.keys()].slice(-2) }
  const asked = { ...some, benches: [...benches.keys()].slice(0, 2) }
  const post = (body: object) => {
    const headers = { 'content-type': 'application/json' }
    return nursery.ask('/api/ahead', { method: 'POST', headers, body: JSON.stringify(body) })
  }
  const alone = (page: string, ids: readonly string[]) =>
    Promise.all(ids.map(async id => (await nursery.ask(`/api/${page}/${id}`)).json))
  const { status, json } = await post({ ...asked, batches: [...asked.batches, 'no-such'] })
  expect(status).toBe(200)
  fits(json, shapeOf(routes.ahead, 200))
  expect(json).toEqual({
    batches: await alone('batches', asked.batches),
    expected: await Promise.all(
      asked.batches.map(async batch => ({
        batch,
        band: (await nursery.ask(`/api/batches/${batch}/expected`)).json,
      })),
    ),
    mothers: await alone('mothers', asked.mothers),
    benches: await alone('benches', asked.benches),
  })
  expect((await post({ ...asked, batches: [...batches.keys()].slice(0, 26) })).status).toBe(400)
})

test.each([
  ['/api/batches/no-such', 404],
  ['/api/batches/no-such/expected', 404],
  ['/api/batches/%20', 400],
  ['/api/batches/a%0Ab', 400],
  ['/api/lineage/batch/no-such', 404],
  ['/api/lineage/mother/no-such', 404],
  ['/api/lineage/tree/no-such', 400],
  ['/api/batches?state=dead', 400],
  ['/api/batches?limit=0', 400],
  ['/api/batches?limit=many', 400],
  ['/api/entries?after=-1', 400],
  ['/api/work?week=2026-W54', 400],
  ['/api/work?week=2025-W53', 400],
  ['/api/benches?week=2026-W00', 400],
  ['/api/benches?week=may', 400],
  ['/api/nothing', 404],
])('GET %s is refused with %i in the shape of every refusal', async (path, expected) => {
  const { status, json } = await nursery.ask(path)
  expect(status).toBe(expected)
  fits(json, shapeOf(routes.batch, 404))
})
